package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Random;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class FrameRateTest {
    private static final FrameRate BROADCAST = new FrameRate(30000, 1001);

    /** Time of frame n is n * den / num seconds; worked in exact fractions. */
    @ParameterizedTest
    @CsvSource({
        "40/1, 1, 1, 40, 25000, 25000",
        "60/1, 1, 1, 60, 16666, 16667",
        "60/1, 2, 1, 30, 33333, 33333",
        "30000/1001, 1, 1001, 30000, 33366, 33367",
        "30000/1001, 30, 1001, 1000, 1001000, 1001000",
        "30000/1001, 1000, 1001, 30, 33366666, 33366667"
    })
    void timeOfAFrameIsExact(
            String rate, long frame, long numerator, long denominator, long microsecondsFloor, long microsecondsNearest)
            throws TextFormatException {
        ExactTime time = FrameRate.parse(rate).timeOf(frame);

        assertThat(time).isEqualTo(new ExactTime(numerator, denominator));
        assertThat(Math.floorDiv(time.numerator() * 1_000_000, time.denominator()))
                .isEqualTo(microsecondsFloor);
        assertThat(Math.round(FrameRate.parse(rate).secondsOf(frame) * 1e6)).isEqualTo(microsecondsNearest);
    }

    /**
     * SMPTE ST 12-1:2014, drop-frame counting, as asserted in the OpenTimelineIO tests: ten minutes of labels are 17982
     * frames, an hour 107892, a day 2589408; the clock time of each, worked as frames * 1001 / 30000.
     */
    @ParameterizedTest
    @CsvSource({"17982, 5999994", "107892, 35999964", "2589408, 863999136"})
    void broadcastFramesDriftFromTheClock(long frame, long tenthsOfMilliseconds) {
        assertThat(BROADCAST.timeOf(frame)).isEqualTo(new ExactTime(tenthsOfMilliseconds, 10_000));
    }

    /** IEEE 754 doubles: floor(0.29 * 100) is 28 and floor(4.35 * 100) is 434; the exact answers are 29 and 435. */
    @ParameterizedTest
    @CsvSource({"29, 29", "435, 435"})
    void isNotCaughtByDoubles(long hundredths, long frame) {
        ExactTime instant = new ExactTime(hundredths, 100);

        assertThat(FrameRate.of(100).firstFrameAtOrAfter(instant)).isEqualTo(frame);
        assertThat((long) Math.floor(hundredths / 100.0 * 100)).isEqualTo(frame - 1);
    }

    /** One beat at 40 frames per second: 20 frames at 120 a minute, 75/4 at 128, 80/3 at 90; worked in fractions. */
    @ParameterizedTest
    @CsvSource({"120, 20", "128, 19", "90, 27"})
    void framesOfABeat(String beatsPerMinute, long ceiling) throws TextFormatException {
        ExactTime beat = Tempo.parse(beatsPerMinute).beat();

        assertThat(FrameRate.of(40).firstFrameAtOrAfter(beat)).isEqualTo(ceiling);
    }

    @ParameterizedTest
    @ValueSource(strings = {"40", "1", "1000", "30000/1001", "60000/1001", "7/3", "1/10"})
    void everyFrameIsTheFirstAtItsOwnInstant(String text) throws TextFormatException {
        FrameRate rate = FrameRate.parse(text);
        ExactTime moment = new ExactTime(1, 1_000_000_007);
        for (long frame : new long[] {-1000, -1, 0, 1, 2, 3, 999, 107892, 1_000_000_000_000L}) {
            ExactTime instant = rate.timeOf(frame);

            assertThat(rate.firstFrameAtOrAfter(instant)).isEqualTo(frame);
        }
        assertThat(rate.firstFrameAtOrAfter(moment)).isEqualTo(1);
        assertThat(rate.firstFrameAtOrAfter(moment.negated())).isZero();
    }

    @Test
    void isExactWhereProductsDoNotFit() {
        ExactTime late = new ExactTime(Long.MAX_VALUE, 1001);

        // 143/2 * (2^63 - 1)/1001 = (2^63 - 1)/14, of which the upper part is odd and divisible by 7.
        assertThat(new FrameRate(143, 2).firstFrameAtOrAfter(late)).isEqualTo(Long.MAX_VALUE / 14 + 1);
        assertThatThrownBy(() -> FrameRate.of(40).firstFrameAtOrAfter(ExactTime.ofSeconds(Long.MAX_VALUE)))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> BROADCAST.timeOf(Long.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> BROADCAST.secondsOf(Long.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
    }

    @ParameterizedTest
    @CsvSource({"40, 40", "' 40 ', 40", "60/2, 30", "30000/1001, 30000/1001", "120000/4004, 30000/1001", "1000, 1000"})
    void readsRates(String text, String shown) throws TextFormatException {
        assertThat(FrameRate.parse(text)).hasToString(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "29.97, 30000/1001",
        "23.976, 24000/1001",
        "23.98, 24000/1001",
        "59.94, 60000/1001",
        "119.88, 120000/1001",
        "'29,97', 30000/1001",
        "12.5, 25/2",
        "40.0, 40",
        "0.5, 1/2"
    })
    void saysHowToWriteADecimal(String text, String meant) {
        assertThat(refusal(text).hint()).startsWith("write " + meant + ":");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "0",
                "-40",
                "+40",
                "0/1",
                "1/0",
                "0/0",
                "1001",
                "2001/2",
                "40fps",
                "4e1",
                "NaN",
                "1/",
                "/1",
                "1/2/3",
                "40 / 1",
                "99999999999999999999",
                "٤٠",
                "0.0",
                "5000.5",
                "40\u0000",
                "1000.5",
                "."
            })
    void refusesEverythingElse(String text) {
        assertThat(refusal(text).hint()).startsWith("write a whole number such as 40 or a ratio");
    }

    @Test
    void namesWhatIsWrong() {
        assertThat(refusal("0")).hasMessage("the frame rate \"0\" has a part that is 0");
        assertThat(refusal("1001")).hasMessage("the frame rate \"1001\" is above 1000 frames per second");
        assertThat(refusal("fast")).hasMessage("\"fast\" is not a frame rate");
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-1, 1", "1, 0", "1, -1", "-1, -1", "1001, 1", "2147483647, 2147483"})
    void hasNoOtherRates(int numerator, int denominator) {
        assertThatThrownBy(() -> new FrameRate(numerator, denominator)).isInstanceOf(IllegalArgumentException.class);
    }

    private static TextFormatException refusal(String text) {
        return catchThrowableOfType(TextFormatException.class, () -> FrameRate.parse(text));
    }

    /** Against whole numbers of any size, on both sides of where products stop to fit into 64 bits. */
    @ParameterizedTest
    @CsvSource({"40, 1", "30000, 1001", "7, 3", "999999999, 1000000"})
    void findsFramesAsWithNumbersOfAnySize(int numerator, int denominator) {
        FrameRate rate = new FrameRate(numerator, denominator);
        Random random = new Random(numerator);
        for (int i = 0; i < 5000; i++) {
            long above = random.nextLong() >> 12 + random.nextInt(52);
            long below = 1 + (random.nextLong() >>> 12 + random.nextInt(52));
            ExactTime instant = new ExactTime(above, below);
            BigDecimal frames = new BigDecimal(
                    BigInteger.valueOf(instant.numerator()).multiply(BigInteger.valueOf(rate.numerator())));
            BigDecimal divisor = new BigDecimal(
                    BigInteger.valueOf(instant.denominator()).multiply(BigInteger.valueOf(rate.denominator())));
            BigInteger first = frames.divide(divisor, 0, RoundingMode.CEILING).toBigInteger();
            if (first.bitLength() < 63) {
                assertThat(rate.firstFrameAtOrAfter(instant)).isEqualTo(first.longValue());
            }
        }
    }
}
