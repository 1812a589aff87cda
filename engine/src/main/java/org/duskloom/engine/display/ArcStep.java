package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;

/**
 * {@code arc}: pixels evenly on a piece of a circle, one at each end.
 *
 * <p>Pixel i of n, from 0, is at the angle {@code from + (to - from)·i/(n-1)}: from 180 to 0 runs over the top to the
 * right.
 */
record ArcStep(int count, double radius, double fromDegrees, double toDegrees, Point centre) implements Step {
    static final DeclaredField<Long> COUNT =
            StepFields.count("count", 2, MOST_PIXELS, "how many pixels, one at each end among them");
    static final DeclaredField<Double> RADIUS =
            DeclaredField.required("radius", StepFields.LENGTH, "radius of the circle");
    static final DeclaredField<Double> FROM =
            DeclaredField.required("from", StepFields.DEGREES, "angle of the first pixel");
    static final DeclaredField<Double> TO = DeclaredField.required(
            "to",
            StepFields.DEGREES,
            "angle of the last pixel, less than 360 from the first; falling angles run clockwise");
    static final DeclaredObject FIELDS = DeclaredObject.of("arc", COUNT, RADIUS, FROM, TO, StepFields.CENTRE);

    static Optional<Step> read(StepFields fields) {
        int count = fields.count(COUNT);
        double radius = fields.length(RADIUS);
        double from = fields.value(FROM, 0.0);
        double to = fields.value(TO, 0.0);
        Point centre = fields.point(StepFields.CENTRE);
        if (fields.sound() && from == to) {
            fields.error(TO, "an arc begins and ends at the same angle", "make \"to\" another angle than \"from\"");
        } else if (fields.sound() && Math.abs(to - from) >= 360) {
            fields.error(TO, "an arc goes round once or more", "for a full circle use \"ring\"");
        }
        return fields.finish(() -> new ArcStep(count, radius, from, to, centre));
    }

    @Override
    public long pixelCount() {
        return count;
    }

    @Override
    public void lay(Strand strand) {
        for (int i = 0; i < count; i++) {
            strand.add(centre.polar(radius, fromDegrees + (toDegrees - fromDegrees) * i / (count - 1)));
        }
    }
}
