package org.duskloom.engine.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes a double as the decimal of the fewest significant digits that reads back as the same double. {@link
 * Double#toString(double)} does not promise the shortest before JDK 19 (JDK-4511638), so its text depends on the JDK;
 * this one does not.
 */
public final class ShortestDecimal {
    /** Every decimal of so many digits survives a double; 17 digits tell all doubles apart (IEEE 754-2019, 5.12.2). */
    private static final int SAFE_DIGITS = 15;

    private static final int ENOUGH_DIGITS = 17;
    private static final double WHOLE_BELOW = 1e15;

    private ShortestDecimal() {}

    /**
     * The text: digits with a dot, and with an exponent where the value is below a millionth or has many zeros.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static String of(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not finite: " + value);
        }
        if (value == 0) {
            return 1 / value < 0 ? "-0.0" : "0";
        }
        if (value == Math.rint(value) && Math.abs(value) < WHOLE_BELOW) {
            return Long.toString((long) value);
        }
        BigDecimal exact = new BigDecimal(value);
        for (int digits = SAFE_DIGITS; digits < ENOUGH_DIGITS; digits++) {
            String text = rounded(exact, digits);
            if (Double.parseDouble(text) == value) {
                return text;
            }
        }
        return rounded(exact, ENOUGH_DIGITS);
    }

    private static String rounded(BigDecimal exact, int digits) {
        return exact.round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toString();
    }
}
