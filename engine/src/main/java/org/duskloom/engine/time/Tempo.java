package org.duskloom.engine.time;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Objects;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * A steady beat.
 *
 * @param beat how long one beat is: 60 / beats per minute seconds; above 0
 */
public record Tempo(ExactTime beat) {
    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,4}(?:\\.[0-9]{1,6})?");
    private static final BigDecimal SLOWEST = BigDecimal.ONE;
    private static final BigDecimal FASTEST = new BigDecimal(1000);

    /**
     * @throws IllegalArgumentException if the beat is not above 0
     */
    public Tempo {
        Objects.requireNonNull(beat, "beat");
        if (beat.isNegative() || beat.isZero()) {
            throw new IllegalArgumentException("a beat cannot last " + beat);
        }
    }

    /**
     * Reads beats per minute, such as {@code 128} or {@code 127.5}; the decimals are exact.
     *
     * @throws TextFormatException if it is no decimal number from 1 to 1000
     */
    public static Tempo parse(String beatsPerMinute) throws TextFormatException {
        String text = beatsPerMinute.strip();
        if (DECIMAL.matcher(text).matches()) {
            BigDecimal value = new BigDecimal(text);
            if (value.compareTo(SLOWEST) >= 0 && value.compareTo(FASTEST) <= 0) {
                BigInteger scale = BigInteger.TEN.pow(value.scale());
                return new Tempo(ExactTime.reduced(scale.multiply(BigInteger.valueOf(60)), value.unscaledValue()));
            }
        }
        String message = Quoted.of(beatsPerMinute) + " is not a tempo in beats per minute";
        throw new TextFormatException(message, "write a number from 1 to 1000 with at most six decimals, such as 128");
    }
}
