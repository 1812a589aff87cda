package org.duskloom.engine.display;

import java.util.Optional;

/**
 * {@code line}: pixels evenly on a straight line, one at each end.
 *
 * <table>
 * <caption>Fields</caption>
 * <tr><td>{@code from}, {@code to}</td><td>places of the first and the last pixel, {@code [x, y]} or {@code [x, y, z]};
 *     required, different</td></tr>
 * <tr><td>{@code count}</td><td>how many pixels; required, 2 to 1,000,000</td></tr>
 * </table>
 */
record LineStep(int count, Point from, Point to) implements Step {
    static Optional<Step> read(StepFields fields) {
        fields.require("from", "to", "count");
        Point from = fields.point("from");
        Point to = fields.point("to");
        int count = fields.count("count", 2, MOST_PIXELS);
        if (fields.sound() && from.distance(to) == 0) {
            fields.error("to", "a line begins and ends at the same place", "for a single pixel use \"points\"");
        }
        return fields.finish(() -> new LineStep(count, from, to));
    }

    @Override
    public long pixelCount() {
        return count;
    }

    @Override
    public void lay(Strand strand) {
        for (int i = 0; i < count; i++) {
            strand.add(from.toward(to, i, count - 1));
        }
    }
}
