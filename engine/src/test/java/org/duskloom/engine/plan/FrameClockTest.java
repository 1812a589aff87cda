package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameClockTest {
    /** Frame n of a rate is the instant n * den / num (SMPTE ST 12-1): published instants, as the nearest doubles. */
    @ParameterizedTest
    @CsvSource({
        "40, 1, 1, 0.025",
        "60, 1, 1, 0.016666666666666666",
        "60, 1, 2, 0.03333333333333333",
        "30000, 1001, 1, 0.03336666666666667",
        "30000, 1001, 30, 1.001",
        "30000, 1001, 1000, 33.36666666666667",
        "30000, 1001, 17982, 599.9994",
        "30000, 1001, 107892, 3599.9964"
    })
    void tellsTheInstantOfAFrame(int numerator, int denominator, long frame, double seconds) {
        assertThat(clock(numerator, denominator, ExactTime.ZERO).secondsAt(frame))
                .isEqualTo(seconds);
    }

    @Test
    void countsFromTheStart() {
        FrameClock clock = clock(40, 1, ExactTime.ofMilliseconds(1500));
        assertThat(clock.secondsAt(60)).isZero();
        assertThat(clock.secondsAt(61)).isEqualTo(0.025);
        assertThat(clock.secondsAt(0)).isEqualTo(-1.5);
    }

    /**
     * Every second frame of 40 is one of 20, every 1001st of 60 is a thousandth one of 60000/1001, three of 24 are an
     * eighth of a second as 125 of 1000 are: the same bits at both rates.
     */
    @ParameterizedTest
    @CsvSource({"20, 1, 1, 40, 1, 2", "30, 1, 1, 60, 1, 2", "24, 1, 3, 1000, 1, 125", "60000, 1001, 1000, 60, 1, 1001"})
    void agreesAtTheInstantsThatTwoRatesShare(int numA, int denA, int stepA, int numB, int denB, int stepB) {
        for (ExactTime start : new ExactTime[] {
            ExactTime.ZERO,
            ExactTime.ofMilliseconds(333),
            new ExactTime(1, 3),
            new ExactTime(123_456_789, 1_000_000_000)
        }) {
            FrameClock a = clock(numA, denA, start);
            FrameClock b = clock(numB, denB, start);
            for (long k = 0; k < 5_000; k++) {
                assertThat(a.secondsAt(k * stepA)).isEqualTo(b.secondsAt(k * stepB));
            }
        }
    }

    /**
     * The nearest double of the exact quotient, against decimal arithmetic of a hundred digits. Where a denominator, a
     * frame or a start has more than the 53 bits of a double, or more than the 64 of a long, nothing is cut off.
     */
    @ParameterizedTest
    @CsvSource({
        "40, 1, 1, 3",
        "30000, 1001, 123456789, 1000000000",
        "999999937, 1000003, 1, 1",
        "999999937, 1000003, 999999999999, 1000000000",
        "1, 999999999, 1, 7",
        "999999937, 1000003, 1, 999999999",
        "999999937, 1000003, 9007211, 9100000001",
        "999999937, 1000003, 9007239, 9100000001",
        "1, 536870912, 1, 34359738369",
        "536870912, 536871, 34359738367, 7",
        "1000, 1, 1, 999999999999999989"
    })
    void roundsOnceHoweverLongTheFractions(int numerator, int denominator, long startNumerator, long startDenominator) {
        ExactTime start = new ExactTime(startNumerator, startDenominator);
        FrameClock clock = clock(numerator, denominator, start);
        MathContext hundred = new MathContext(100);
        BigDecimal from = new BigDecimal(start.numerator()).divide(new BigDecimal(start.denominator()), hundred);
        Random random = new Random(7);
        for (int i = 0; i < 2_000; i++) {
            long frame = random.nextLong(1L << (1 + random.nextInt(36)));
            BigDecimal at = new BigDecimal(frame)
                    .multiply(new BigDecimal(denominator))
                    .divide(new BigDecimal(numerator), hundred);
            assertThat(clock.secondsAt(frame)).isEqualTo(at.subtract(from).doubleValue());
        }
    }

    private static FrameClock clock(int numerator, int denominator, ExactTime start) {
        return new FrameClock(new FrameRate(numerator, denominator), start);
    }
}
