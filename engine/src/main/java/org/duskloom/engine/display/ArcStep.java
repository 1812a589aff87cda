package org.duskloom.engine.display;

import java.util.Optional;

/**
 * {@code arc}: pixels evenly on a piece of a circle, one at each end.
 *
 * <p>Pixel i of n, from 0, is at the angle {@code from + (to - from)·i/(n-1)}: from 180 to 0 runs over the top to the right.
 *
 * <table>
 * <caption>Fields</caption>
 * <tr><td>{@code count}</td><td>how many pixels; required, 2 to 1,000,000</td></tr>
 * <tr><td>{@code radius}</td><td>required, above 0</td></tr>
 * <tr><td>{@code from}, {@code to}</td><td>angles of the first and the last pixel in degrees; required, different, less than
 *     360 apart</td></tr>
 * <tr><td>{@code centre}</td><td>{@code [x, y]} or {@code [x, y, z]}; {@code [0, 0]}</td></tr>
 * </table>
 */
record ArcStep(int count, double radius, double fromDegrees, double toDegrees, Point centre) implements Step {
    static Optional<Step> read(StepFields fields) {
        fields.require("count", "radius", "from", "to");
        int count = fields.count("count", 2, MOST_PIXELS);
        double radius = fields.length("radius");
        double from = fields.angle("from");
        double to = fields.angle("to");
        Point centre = fields.point("centre");
        if (fields.sound() && from == to) {
            fields.error("to", "an arc begins and ends at the same angle", "make \"to\" another angle than \"from\"");
        } else if (fields.sound() && Math.abs(to - from) >= 360) {
            fields.error("to", "an arc goes round once or more", "for a full circle use \"ring\"");
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
