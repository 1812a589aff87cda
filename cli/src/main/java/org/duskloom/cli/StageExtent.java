package org.duskloom.cli;

import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.map.Positions;

/**
 * How large a display is, in words: a slip of a unit is seen at once. Inches stay inches, other units are told as
 * metres, and lengths whose unit is not written as they stand.
 */
final class StageExtent {
    private final double unitsEach;
    private final String unit;

    private StageExtent(double unitsEach, String unit) {
        this.unitsEach = unitsEach;
        this.unit = unit;
    }

    /** {@code 2.9 m wide, 1.4 m high, 0 to 0.9 m deep}; a depth only where not all pixels hang at 0. */
    static String of(Display display) {
        return in(display).words(display.map().stage());
    }

    private static StageExtent in(Display display) {
        if (!display.unitsWritten()) {
            return new StageExtent(1, "");
        }
        return display.units() == Units.INCHES
                ? new StageExtent(1, " " + Units.INCHES.word())
                : new StageExtent(display.units().millimetres() / Units.METRES.millimetres(), " m");
    }

    private String words(Positions stage) {
        double nearest = most(stage, stage::z);
        double farthest = -most(stage, pixel -> -stage.z(pixel));
        String flat = number(size(stage, stage::x)) + unit + " wide, " + number(size(stage, stage::y)) + unit + " high";
        return nearest == 0 && farthest == 0
                ? flat
                : flat + ", " + number(farthest) + " to " + number(nearest) + unit + " deep";
    }

    private static double size(Positions stage, IntToDoubleFunction axis) {
        return most(stage, axis) + most(stage, pixel -> -axis.applyAsDouble(pixel));
    }

    private static double most(Positions stage, IntToDoubleFunction axis) {
        return IntStream.range(0, stage.size()).mapToDouble(axis).max().orElse(0);
    }

    private String number(double length) {
        double value = length * unitsEach;
        int decimals = Math.abs(value) < 0.1 ? 4 : Math.abs(value) < 1 ? 2 : Math.abs(value) < 100 ? 1 : 0;
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.replaceFirst("\\.?0+$", decimals == 0 ? "$0" : "").replaceFirst("^-0$", "0");
    }
}
