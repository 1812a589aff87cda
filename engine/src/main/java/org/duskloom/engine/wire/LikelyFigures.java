package org.duskloom.engine.wire;

import java.math.BigDecimal;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * Tells figures that are possible, but mostly were written in a unit of another size: amperes for milliamperes, or
 * the other way round. The limits are common practice, no source: a colour of a pixel draws a few milliamperes to some
 * tens, never less than a lamp could be seen by; idle pixels some tenths of a milliampere; the largest supplies for
 * pixels some 100 A.
 */
final class LikelyFigures {
    private static final double LEAST_MILLIAMPS = 0.5;
    private static final double LEAST_IDLE_MILLIAMPS = 0.02;
    private static final double MOST_AMPS = 300;

    private LikelyFigures() {}

    /** Adds a warning if a colour of a kind draws less than half a milliampere, but not nothing; one for all. */
    static void warnOfColors(double[] milliamps, Fields kind, Problems problems) {
        for (double color : milliamps) {
            if (color > 0 && color < LEAST_MILLIAMPS) {
                warnOfSmall(color, "a colour of a pixel mostly draws 5 to 60 mA", PowerFields.COLORS, kind, problems);
                return;
            }
        }
    }

    /** Adds a warning if a pixel draws next to nothing while it is dark, but not nothing. */
    static void warnOfIdle(double milliamps, Fields kind, Problems problems) {
        if (milliamps > 0 && milliamps < LEAST_IDLE_MILLIAMPS) {
            warnOfSmall(milliamps, "a dark pixel mostly draws 0.3 to 1.5 mA", PowerFields.IDLE, kind, problems);
        }
    }

    private static void warnOfSmall(
            double milliamps, String usual, DeclaredField<?> field, Fields kind, Problems problems) {
        problems.warn(
                kind.location(field),
                kind.label(field) + " has " + ShortestDecimal.of(milliamps) + ", and " + usual,
                "if these are amperes, write " + moved(milliamps, 3) + ", which is as many milliamperes");
    }

    /** Adds a warning if a supply gives more than one does. */
    static void warnOfAmps(double amps, Fields supply, Problems problems) {
        if (amps > MOST_AMPS) {
            problems.warn(
                    supply.location(PowerFields.AMPS),
                    supply.label(PowerFields.AMPS) + " is " + ShortestDecimal.of(amps)
                            + ", and a supply for pixels mostly gives 1 to 100 A",
                    "if these are milliamperes, write " + moved(amps, -3) + ", which is as many amperes");
        }
    }

    private static String moved(double value, int places) {
        return BigDecimal.valueOf(value)
                .scaleByPowerOfTen(places)
                .stripTrailingZeros()
                .toPlainString();
    }
}
