package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;

/**
 * {@code spokes}: straight lines of pixels from a middle outwards, evenly round it.
 *
 * <p>Spoke k of n, from 0, is at the angle {@code start ± 360·k/n}; its pixels stand evenly between the two radii, one
 * at each. The spokes are numbered parts, and all of them run from {@code from} to {@code to}, however the wire snakes.
 */
record SpokesStep(
        int count,
        int pixels,
        double from,
        double to,
        double startDegrees,
        Turning turning,
        boolean serpentine,
        Point centre)
        implements Step {
    static final DeclaredField<Long> COUNT = StepFields.count("count", 1, MOST_LINES, "how many spokes");
    static final DeclaredField<Long> PIXELS =
            StepFields.count("pixels", 1, MOST_LINES, "how many pixels each spoke has");
    static final DeclaredField<Double> FROM =
            DeclaredField.required("from", StepFields.DISTANCE, "distance of a spoke's first pixel from the middle");
    static final DeclaredField<Double> TO = DeclaredField.optional(
            "to",
            StepFields.DISTANCE,
            "left out where a spoke has 1 pixel",
            "distance of a spoke's last pixel from the middle, another than `from`");
    static final DeclaredField<Double> START = StepFields.start("the first spoke");
    static final DeclaredObject FIELDS = DeclaredObject.of(
            "spokes", COUNT, PIXELS, FROM, TO, START, StepFields.DIRECTION, StepFields.PATH, StepFields.CENTRE);

    static Optional<Step> read(StepFields fields) {
        int count = fields.count(COUNT);
        int pixels = fields.count(PIXELS);
        double from = fields.value(FROM, 0.0);
        if (pixels > 1) {
            fields.require(TO);
        }
        double to = fields.value(TO, from);
        checkLength(fields, pixels, from == to);
        double start = fields.value(START);
        Turning turning = fields.value(StepFields.DIRECTION);
        boolean serpentine = fields.serpentine();
        Point centre = fields.point(StepFields.CENTRE);
        return fields.finish(() -> new SpokesStep(count, pixels, from, to, start, turning, serpentine, centre));
    }

    private static void checkLength(StepFields fields, int pixels, boolean endsWhereItBegins) {
        if (fields.sound() && pixels > 1 && endsWhereItBegins) {
            fields.error(TO, "spokes begin and end at the same distance", "make \"to\" another distance than \"from\"");
        } else if (fields.sound() && pixels == 1 && !endsWhereItBegins) {
            fields.error(TO, "spokes of 1 pixel have one distance only", "leave \"to\" out, or raise \"pixels\"");
        }
    }

    @Override
    public long pixelCount() {
        return (long) count * pixels;
    }

    @Override
    public void lay(Strand strand) {
        for (int spoke = 0; spoke < count; spoke++) {
            double degrees = startDegrees + turning.sign() * (360.0 * spoke / count);
            Point inner = centre.polar(from, degrees);
            Point outer = centre.polar(to, degrees);
            boolean back = serpentine && spoke % 2 == 1;
            int first = strand.size();
            for (int i = 0; i < pixels; i++) {
                strand.add(inner.toward(outer, back ? pixels - 1 - i : i, pixels - 1));
            }
            strand.closeLine(first, back);
        }
    }
}
