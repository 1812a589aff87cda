package org.duskloom.engine.time;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * Frames per second as an exact, reduced ratio above 0 and at most {@value #FASTEST}. Frame n is the instant
 * n * denominator / numerator seconds.
 *
 * @param numerator frames, above 0
 * @param denominator in so many seconds, above 0
 */
public record FrameRate(int numerator, int denominator) implements Fingerprinted {
    /** The highest rate in frames per second. */
    public static final int FASTEST = 1000;

    private static final Pattern RATIO = Pattern.compile("([0-9]{1,9})(?:/([0-9]{1,9}))?");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]{0,4}[.,][0-9]{1,6}");
    private static final String ALLOWED = "write a whole number such as 40 or a ratio such as 30000/1001, at most 1000";

    /**
     * Reduces the ratio.
     *
     * @throws IllegalArgumentException if the rate is not above 0 or is above {@value #FASTEST}
     */
    public FrameRate {
        if (numerator <= 0 || denominator <= 0 || numerator > (long) FASTEST * denominator) {
            throw new IllegalArgumentException("not a frame rate: " + numerator + "/" + denominator);
        }
        ExactTime reduced = new ExactTime(numerator, denominator);
        numerator = (int) reduced.numerator();
        denominator = (int) reduced.denominator();
    }

    /** So many whole frames per second, 1 to {@value #FASTEST}. */
    public static FrameRate of(int framesPerSecond) {
        return new FrameRate(framesPerSecond, 1);
    }

    /**
     * Reads {@code 40} or {@code 30000/1001}.
     *
     * @throws TextFormatException if it is something else, 0, or above {@value #FASTEST}
     */
    public static FrameRate parse(String text) throws TextFormatException {
        String rate = text.strip();
        Matcher matcher = RATIO.matcher(rate);
        if (!matcher.matches()) {
            throw new TextFormatException(Quoted.of(text) + " is not a frame rate", hint(rate));
        }
        int numerator = Integer.parseInt(matcher.group(1));
        int denominator = matcher.group(2) == null ? 1 : Integer.parseInt(matcher.group(2));
        if (numerator == 0 || denominator == 0) {
            throw new TextFormatException("the frame rate " + Quoted.of(text) + " has a part that is 0", ALLOWED);
        }
        if (numerator > (long) FASTEST * denominator) {
            String message = "the frame rate " + Quoted.of(text) + " is above 1000 frames per second";
            throw new TextFormatException(message, ALLOWED);
        }
        return new FrameRate(numerator, denominator);
    }

    /**
     * The first frame whose instant is not before the given one: ceil(instant * rate), exact.
     *
     * @throws ArithmeticException if the frame number does not fit
     */
    public long firstFrameAtOrAfter(ExactTime instant) {
        return -floorOfFrames(-instant.numerator(), instant.denominator());
    }

    /**
     * The exact instant of a frame.
     *
     * @throws ArithmeticException if it does not fit
     */
    public ExactTime timeOf(long frame) {
        return new ExactTime(Math.multiplyExact(frame, (long) denominator), numerator);
    }

    /**
     * The instant of a frame in seconds, rounded once.
     *
     * @throws ArithmeticException if frame * denominator does not fit
     */
    public double secondsOf(long frame) {
        return (double) Math.multiplyExact(frame, (long) denominator) / numerator;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.whole(numerator).whole(denominator);
    }

    /** {@code 40} or {@code 30000/1001}. */
    @Override
    public String toString() {
        return denominator == 1 ? Integer.toString(numerator) : numerator + "/" + denominator;
    }

    private long floorOfFrames(long secondsNumerator, long secondsDenominator) {
        // Both products fit: those of a time of usual size with the parts of the rate.
        if (secondsNumerator == (int) secondsNumerator && secondsDenominator == (int) secondsDenominator) {
            return Math.floorDiv(secondsNumerator * numerator, secondsDenominator * denominator);
        }
        BigInteger frames = BigInteger.valueOf(secondsNumerator).multiply(BigInteger.valueOf(numerator));
        BigInteger divisor = BigInteger.valueOf(secondsDenominator).multiply(BigInteger.valueOf(denominator));
        BigInteger[] parts = frames.divideAndRemainder(divisor);
        long floor = parts[0].longValueExact();
        return parts[1].signum() < 0 ? Math.decrementExact(floor) : floor;
    }

    private static String hint(String rate) {
        if (!DECIMAL.matcher(rate).matches()) {
            return ALLOWED;
        }
        BigDecimal decimal = new BigDecimal(rate.replace(',', '.'));
        boolean inRange = decimal.signum() > 0 && decimal.compareTo(BigDecimal.valueOf(FASTEST)) <= 0;
        return inRange ? "write " + meantBy(decimal) + ": a decimal would drift from the sound" : ALLOWED;
    }

    /** The rates of broadcasting are n * 1000 / 1001 and are known by a rounded decimal; any other decimal is exact. */
    private static String meantBy(BigDecimal decimal) {
        int nominal = decimal.add(new BigDecimal("0.5")).intValue();
        double broadcast = nominal * 1000 / 1001.0;
        boolean whole = decimal.stripTrailingZeros().scale() <= 0;
        if (!whole && nominal % 6 == 0 && Math.abs(decimal.doubleValue() - broadcast) < 0.006) {
            return nominal * 1000 + "/1001";
        }
        ExactTime exact = new ExactTime(
                decimal.unscaledValue().longValueExact(),
                BigInteger.TEN.pow(decimal.scale()).longValueExact());
        return exact.denominator() == 1
                ? Long.toString(exact.numerator())
                : exact.numerator() + "/" + exact.denominator();
    }
}
