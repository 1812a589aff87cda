package org.duskloom.engine.effect;

import java.math.BigDecimal;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.timeline.KeyFields;

/**
 * A number, which may move over the cue unless it is {@link #steady}. A whole number that moves is rounded to the
 * nearest.
 */
public final class NumberSetting extends Setting<NumberTrack> {
    private final String unit;
    private final double min;
    private final double max;
    private final NumberTrack track;
    private final double standard;
    private final boolean whole;
    /** Empty if it may move. */
    private final String whyNot;

    private NumberSetting(
            String name,
            String meaning,
            String unit,
            double min,
            double max,
            double standard,
            boolean whole,
            String whyNot) {
        super(name, meaning);
        this.unit = unit;
        this.min = min;
        this.max = max;
        this.standard = standard;
        this.track = NumberTrack.constant(standard);
        this.whole = whole;
        this.whyNot = whyNot;
        if (!(min <= standard && standard <= max)) {
            throw new IllegalArgumentException(name + ": " + standard + " is not from " + min + " to " + max);
        }
    }

    /** Any number from min to max. */
    public static NumberSetting of(String name, String unit, double min, double max, double standard, String meaning) {
        return new NumberSetting(name, meaning, unit, min, max, standard, false, "");
    }

    /** A whole number from min to max. */
    public static NumberSetting whole(String name, String unit, int min, int max, int standard, String meaning) {
        return new NumberSetting(name, meaning, unit, min, max, standard, true, "");
    }

    /**
     * The same setting, which does not move.
     *
     * @param why it does not, or what to do instead, in one phrase
     */
    public NumberSetting steady(String why) {
        return new NumberSetting(name(), meaning(), unit, min, max, standard, whole, why);
    }

    @Override
    public boolean moves() {
        return whyNot.isEmpty();
    }

    @Override
    public String whyNot() {
        return whyNot;
    }

    /** The least value allowed. */
    public double min() {
        return min;
    }

    /** The greatest value allowed. */
    public double max() {
        return max;
    }

    /** Whether only whole numbers are allowed. */
    public boolean isWhole() {
        return whole;
    }

    @Override
    public ValueKind<?> kind() {
        ValueKind<?> still =
                whole ? new ValueKind.Whole(unit, (long) min, (long) max) : new ValueKind.Number(unit, min, max);
        return moves() ? KeyFields.moving(still) : still;
    }

    @Override
    public String unit() {
        return unit;
    }

    @Override
    public String range() {
        return (whole ? "whole number " : "") + text(min) + " to " + text(max) + (moves() ? "" : "; does not move");
    }

    @Override
    public String standardText() {
        return text(standard);
    }

    @Override
    public NumberTrack standard() {
        return track;
    }

    private static String text(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
