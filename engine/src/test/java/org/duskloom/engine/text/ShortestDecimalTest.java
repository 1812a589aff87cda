package org.duskloom.engine.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShortestDecimalTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "-0.0, -0.0", "1, 1", "-2400, -2400", "0.1, 0.1", "1e9, 1000000000", "1e-7, 1E-7", "2e23, 2E+23"
    })
    void writesWhatPeopleWrite(double value, String text) {
        assertThat(ShortestDecimal.of(value)).isEqualTo(text);
    }

    /** A decimal of 15 digits comes back from a double unchanged: IEEE 754-2019, 5.12.2; C17 5.2.4.2.2, DBL_DIG. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void givesBackEveryDecimalOfFifteenDigits(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 10_000; i++) {
            long digits = random.nextLong(1_000_000_000_000_000L);
            BigDecimal decimal = BigDecimal.valueOf(digits, random.nextInt(12));
            assertThat(new BigDecimal(ShortestDecimal.of(decimal.doubleValue())))
                    .isEqualByComparingTo(decimal);
        }
    }

    /**
     * No decimal with one digit less reads back as the same double: both neighbours with that many digits are tried.
     */
    @ParameterizedTest
    @ValueSource(longs = {3, 4})
    void readsBackAndIsShortest(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 10_000; i++) {
            double value = i % 2 == 0 ? Double.longBitsToDouble(random.nextLong()) : random.nextGaussian() * 3000;
            if (Double.isFinite(value)) {
                String text = ShortestDecimal.of(value);
                assertThat(Double.doubleToRawLongBits(Double.parseDouble(text)))
                        .isEqualTo(Double.doubleToRawLongBits(value));
                assertNoShorter(value, new BigDecimal(text).stripTrailingZeros().precision() - 1);
            }
        }
    }

    private static void assertNoShorter(double value, int digits) {
        if (digits > 0) {
            BigDecimal exact = new BigDecimal(value);
            assertThat(exact.round(new MathContext(digits, RoundingMode.FLOOR)).doubleValue())
                    .isNotEqualTo(value);
            assertThat(exact.round(new MathContext(digits, RoundingMode.CEILING))
                            .doubleValue())
                    .isNotEqualTo(value);
        }
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThatIllegalArgumentException().isThrownBy(() -> ShortestDecimal.of(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> ShortestDecimal.of(Double.NEGATIVE_INFINITY));
    }
}
