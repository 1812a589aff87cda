package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;

/**
 * {@code ring}: pixels evenly on a full circle.
 *
 * <p>Pixel i of n, from 0, is at the angle {@code start ± 360·i/n}.
 */
record RingStep(int count, double radius, double startDegrees, Turning turning, Point centre) implements Step {
    static final DeclaredField<Long> COUNT = StepFields.count("count", 1, MOST_PIXELS, "how many pixels");
    static final DeclaredField<Double> RADIUS =
            DeclaredField.required("radius", StepFields.LENGTH, "radius of the circle");
    static final DeclaredField<Double> START = StepFields.start("the first pixel");
    static final DeclaredObject FIELDS =
            DeclaredObject.of("ring", COUNT, RADIUS, START, StepFields.DIRECTION, StepFields.CENTRE);

    static Optional<Step> read(StepFields fields) {
        int count = fields.count(COUNT);
        double radius = fields.length(RADIUS);
        double start = fields.value(START);
        Turning turning = fields.value(StepFields.DIRECTION);
        Point centre = fields.point(StepFields.CENTRE);
        return fields.finish(() -> new RingStep(count, radius, start, turning, centre));
    }

    @Override
    public long pixelCount() {
        return count;
    }

    @Override
    public void lay(Strand strand) {
        for (int i = 0; i < count; i++) {
            strand.add(centre.polar(radius, startDegrees + turning.sign() * (360.0 * i / count)));
        }
    }
}
