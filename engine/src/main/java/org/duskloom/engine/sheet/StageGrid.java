package org.duskloom.engine.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.label.Area;

/**
 * Lines at round coordinates of the display, so that places can be read off.
 *
 * @param step from line to line, in the unit of the display: 1, 2 or 5 times a power of ten
 * @param millimetres how many millimetres the unit is
 */
record StageGrid(BigDecimal step, double millimetres) {
    private static final double LINES_OF_LONGER_SIDE = 12;

    /**
     * A coordinate at which a line runs.
     *
     * @param words the coordinate as a person writes it
     * @param place where it is on the stage, in millimetres
     */
    record Tick(String words, double place) {}

    /** A grid with about a dozen lines along the longer side of a stage of so many millimetres. */
    static StageGrid of(double longerSide, double millimetres) {
        BigDecimal wanted = new BigDecimal(longerSide / millimetres / LINES_OF_LONGER_SIDE);
        BigDecimal decade = BigDecimal.ONE.scaleByPowerOfTen(wanted.precision() - wanted.scale() - 1);
        for (int times : new int[] {1, 2, 5}) {
            BigDecimal step = decade.multiply(BigDecimal.valueOf(times));
            if (step.compareTo(wanted) >= 0) {
                return new StageGrid(step, millimetres);
            }
        }
        return new StageGrid(decade.multiply(BigDecimal.TEN), millimetres);
    }

    /** The lines between two places in millimetres. */
    List<Tick> between(double from, double to) {
        BigDecimal first = new BigDecimal(from / millimetres).divide(step, 0, RoundingMode.CEILING);
        BigDecimal last = new BigDecimal(to / millimetres).divide(step, 0, RoundingMode.FLOOR);
        List<Tick> ticks = new ArrayList<>();
        for (BigDecimal i = first; i.compareTo(last) <= 0; i = i.add(BigDecimal.ONE)) {
            BigDecimal value = i.multiply(step);
            ticks.add(new Tick(text(value), value.doubleValue() * millimetres));
        }
        return ticks;
    }

    /** The step as a person writes it. */
    String stepText() {
        return text(step);
    }

    /** The area that it covers: a little more than the stage. */
    static Area around(Area stage, double letters) {
        return stage.grown(2 * letters);
    }

    private static String text(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
