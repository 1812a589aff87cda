package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What somebody buys by. */
class PartLineTest {
    private static double enough(double metres) {
        return new PartLine("supply wire", "1.5 mm2", metres, PartLine.METRES, "").enough();
    }

    /** Whoever buys what is told has enough, and less than a tenth of a metre is left. */
    @Test
    void wireIsNeverTooShort() {
        Random random = new Random(3);
        for (int i = 0; i < 10_000; i++) {
            double metres = random.nextDouble() * Math.pow(10, random.nextInt(5));
            assertThat(enough(metres)).isBetween(metres - 1e-9, metres + 0.1);
        }
    }

    /** By the decimals of the library, for every length in whole centimetres to 20 m. */
    @Test
    void wireIsToldInTenths() {
        for (int centimetres = 0; centimetres <= 2000; centimetres++) {
            BigDecimal exact = BigDecimal.valueOf(centimetres, 2);
            assertThat(enough(centimetres / 100.0))
                    .isEqualTo(exact.setScale(1, RoundingMode.CEILING).doubleValue());
        }
    }

    /** Tenths that were added up are no more than they are: of floating point (IEEE 754) 0.1 + 0.2 is more than 0.3. */
    @Test
    void sumsOfTenthsAreNoMoreThanTheyAre() {
        double sum = 0;
        for (int tenths = 1; tenths <= 300; tenths++) {
            sum += 0.1;
            assertThat(enough(sum)).isEqualTo(tenths / 10.0);
        }
    }

    @Test
    void whatWasRoundedStaysAsItIs() {
        for (double metres = 0; metres < 30; metres += 0.37) {
            assertThat(enough(enough(metres))).isEqualTo(enough(metres));
        }
    }

    @Test
    void needsAllItsWords() {
        assertThatNullPointerException()
                .isThrownBy(() -> new PartLine(null, "a", 1, "m", ""))
                .withMessage("group");
        assertThatNullPointerException()
                .isThrownBy(() -> new PartLine("a", null, 1, "m", ""))
                .withMessage("item");
        assertThatNullPointerException()
                .isThrownBy(() -> new PartLine("a", "b", 1, null, ""))
                .withMessage("unit");
        assertThatNullPointerException()
                .isThrownBy(() -> new PartLine("a", "b", 1, "m", null))
                .withMessage("note");
    }
}
