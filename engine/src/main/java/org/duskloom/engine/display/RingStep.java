package org.duskloom.engine.display;

import java.util.Optional;

/**
 * {@code ring}: pixels evenly on a full circle.
 *
 * <p>Pixel i of n, from 0, is at the angle {@code start ± 360·i/n}.
 *
 * <table>
 * <caption>Fields</caption>
 * <tr><td>{@code count}</td><td>how many pixels; required, 1 to 1,000,000</td></tr>
 * <tr><td>{@code radius}</td><td>required, above 0</td></tr>
 * <tr><td>{@code start}</td><td>angle of the first pixel in degrees, 0 right, 90 up; 0</td></tr>
 * <tr><td>{@code direction}</td><td>{@code "counter-clockwise"} (default) or {@code "clockwise"}</td></tr>
 * <tr><td>{@code centre}</td><td>{@code [x, y]} or {@code [x, y, z]}; {@code [0, 0]}</td></tr>
 * </table>
 */
record RingStep(int count, double radius, double startDegrees, Turning turning, Point centre) implements Step {
    static Optional<Step> read(StepFields fields) {
        fields.require("count", "radius");
        int count = fields.count("count", 1, MOST_PIXELS);
        double radius = fields.length("radius");
        double start = fields.angle("start");
        Turning turning = fields.turning();
        Point centre = fields.point("centre");
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
