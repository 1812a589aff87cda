package org.duskloom.engine.display;

import java.util.Optional;

/**
 * {@code spokes}: straight lines of pixels from a middle outwards, evenly round it.
 *
 * <p>Spoke k of n, from 0, is at the angle {@code start ± 360·k/n}; its pixels stand evenly between the two radii, one at each.
 * The spokes are numbered parts, and all of them run from {@code from} to {@code to}, however the wire snakes.
 *
 * <table>
 * <caption>Fields</caption>
 * <tr><td>{@code count}</td><td>how many spokes; required, 1 to 10,000</td></tr>
 * <tr><td>{@code pixels}</td><td>how many pixels each has; required, 1 to 10,000</td></tr>
 * <tr><td>{@code from}</td><td>distance of a spoke's first pixel from the middle; required, from 0</td></tr>
 * <tr><td>{@code to}</td><td>distance of its last pixel; required with 2 pixels or more, different from {@code from}</td></tr>
 * <tr><td>{@code start}</td><td>angle of the first spoke in degrees, 0 right, 90 up; 0</td></tr>
 * <tr><td>{@code direction}</td><td>{@code "counter-clockwise"} (default) or {@code "clockwise"}</td></tr>
 * <tr><td>{@code path}</td><td>{@code "straight"} (default): the wire enters every spoke at {@code from}; {@code "serpentine"}: every
 *     second one at {@code to}</td></tr>
 * <tr><td>{@code centre}</td><td>{@code [x, y]} or {@code [x, y, z]}; {@code [0, 0]}</td></tr>
 * </table>
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
    static Optional<Step> read(StepFields fields) {
        fields.require("count", "pixels", "from");
        int count = fields.count("count", 1, MOST_LINES);
        int pixels = fields.count("pixels", 1, MOST_LINES);
        double from = fields.number("from", 0, StepFields.LARGEST_LENGTH, 0);
        if (pixels > 1) {
            fields.require("to");
        }
        double to = fields.number("to", 0, StepFields.LARGEST_LENGTH, from);
        checkLength(fields, pixels, from == to);
        double start = fields.angle("start");
        Turning turning = fields.turning();
        boolean serpentine = fields.serpentine();
        Point centre = fields.point("centre");
        return fields.finish(() -> new SpokesStep(count, pixels, from, to, start, turning, serpentine, centre));
    }

    private static void checkLength(StepFields fields, int pixels, boolean endsWhereItBegins) {
        if (fields.sound() && pixels > 1 && endsWhereItBegins) {
            fields.error(
                    "to", "spokes begin and end at the same distance", "make \"to\" another distance than \"from\"");
        } else if (fields.sound() && pixels == 1 && !endsWhereItBegins) {
            fields.error("to", "spokes of 1 pixel have one distance only", "leave \"to\" out, or raise \"pixels\"");
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
