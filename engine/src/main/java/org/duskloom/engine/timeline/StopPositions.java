package org.duskloom.engine.timeline;

import java.util.Arrays;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/** The positions of a palette's stops while they are read; those not written lie evenly between their neighbours. */
final class StopPositions {
    private final double[] positions;
    private final boolean openEnd;
    private int count;

    /**
     * @param style decides where the last of the stops lies if it has no position
     * @param stops how many stops there will be
     */
    StopPositions(PaletteStyle style, int stops) {
        positions = new double[stops];
        Arrays.fill(positions, Double.NaN);
        // Hard bands and cycles need room behind the last stop; a smooth palette ends on it.
        openEnd = style.stepped() || style.cyclic();
    }

    /** A stop without a position. */
    void open() {
        count++;
    }

    /** A stop with a position, which must not lie before that of an earlier stop. */
    void place(double position, Location location, String what, Problems problems) {
        for (int i = 0; i < count; i++) {
            if (positions[i] > position) {
                problems.error(
                        location,
                        "the position " + position + " of a stop of " + what + " lies before that of an earlier stop, "
                                + positions[i],
                        "list the stops from 0 to 1");
                break;
            }
        }
        if (count < positions.length) {
            positions[count] = position;
        }
        count++;
    }

    /** The position of a stop, once all are known. */
    double at(int index) {
        if (!Double.isNaN(positions[index])) {
            return positions[index];
        }
        int before = index;
        while (before >= 0 && Double.isNaN(positions[before])) {
            before--;
        }
        int after = index;
        while (after < positions.length && Double.isNaN(positions[after])) {
            after++;
        }
        int first = Math.max(before, 0);
        int last = after < positions.length || openEnd ? after : after - 1;
        double from = before < 0 ? 0 : positions[before];
        double to = after < positions.length ? positions[after] : 1;
        // Rounding must not carry a stop beyond the one that it leads up to.
        return last == first ? from : Math.min(to, from + (to - from) * (index - first) / (last - first));
    }
}
