package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CubicTest {
    private static final Offset<Double> ROUNDING = within(1e-12);

    /** 1 + 2·2 + 3·4 + 4·8 = 49; at -1, 1 - 2 + 3 - 4 = -2. */
    @Test
    void addsUpItsTerms() {
        Cubic cubic = Cubic.of(new double[] {1, 2, 3, 4});
        assertThat(cubic.at(0)).isEqualTo(1);
        assertThat(cubic.at(2)).isEqualTo(49);
        assertThat(cubic.at(-1)).isEqualTo(-2);
    }

    @ParameterizedTest
    @CsvSource({
        // x - x³ turns at 1/√3, where it is 2/(3√3); at 2 it is -6.
        "0, 1, 0, -1, 1, 0, 0.3849001794597505",
        "0, 1, 0, -1, 2, -6, 0.3849001794597505",
        "0, 1, 0, -1, 0.5, 0, 0.375",
        // The polynomial T3(2x - 1) of Chebyshev, 32x³ - 48x² + 18x - 1, swings between -1 and 1: at 1/4 up, at 3/4
        // down.
        "-1, 18, -48, 32, 1, -1, 1",
        "-1, 18, -48, 32, 0.5, -1, 1",
        "-1, 18, -48, 32, 0.2, -1, 0.936",
        // 3x² - 2x³ starts level, turns at 1 with the value 1, and falls to -4 at 2.
        "0, 0, 3, -2, 2, -4, 1",
        "0, 0, 3, -2, 1.5, 0, 1",
        "0, 0, -3, 2, 2, -1, 4",
        // x - x² turns at 1/2; (x - 1)² is 0 at 1.
        "0, 1, -1, 0, 1, 0, 0.25",
        "1, -2, 1, 0, 3, 0, 4",
        // (x - 1)³ is level at 1 but does not turn; x³ + x never is.
        "-1, 3, -3, 1, 2, -1, 1",
        "0, 1, 0, 1, 2, 0, 10",
        // Straight lines, and nothing at all.
        "0.25, -0.5, 0, 0, 1, -0.25, 0.25",
        "0.75, 0, 0, 0, 1, 0.75, 0.75",
        "0.5, 9, -9, 9, 0, 0.5, 0.5"
    })
    void knowsItsLeastAndGreatest(
            double c0, double c1, double c2, double c3, double width, double least, double greatest) {
        Cubic cubic = new Cubic(c0, c1, c2, c3);
        assertThat(cubic.least(width)).isCloseTo(least, ROUNDING);
        assertThat(cubic.greatest(width)).isCloseTo(greatest, ROUNDING);
    }

    /**
     * No value lies beyond them, and one of 4096 even steps comes near: a step h from where it turns, a cubic is below
     * its greatest by at most h²/2 times the greatest second derivative, which is at most 2·9 + 6·9 here, so by 3e-6.
     */
    @Test
    void hasNoValueBeyondThem() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            Cubic cubic = new Cubic(0, i % 4 == 0 ? 0 : whole(random), whole(random), whole(random));
            double most = Double.NEGATIVE_INFINITY;
            for (int step = 0; step <= 4096; step++) {
                most = Math.max(most, cubic.at(step / 4096.0));
            }
            assertThat(cubic.greatest(1)).as("%s", cubic).isBetween(most - 1e-12, most + 3e-6);
        }
    }

    private static int whole(Random random) {
        return random.nextInt(19) - 9;
    }

    /** Values times -2 plus 1: what was greatest is least. */
    @Test
    void canBeStretched() {
        Cubic cubic = new Cubic(0.5, 1, -3, 1);
        Cubic stretched = cubic.stretched(-2, 1);
        assertThat(stretched.at(0.3)).isCloseTo(1 - 2 * cubic.at(0.3), ROUNDING);
        assertThat(stretched.least(1)).isCloseTo(1 - 2 * cubic.greatest(1), ROUNDING);
        assertThat(stretched.greatest(1)).isCloseTo(1 - 2 * cubic.least(1), ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0, true", "1e-10, -1e-10, 1e-10, true", "1e-8, 0, 0, false", "0, -1, 0, false", "0, 0, 1, false"
    })
    void isConstantButForRounding(double c1, double c2, double c3, boolean constant) {
        assertThat(new Cubic(0.7, c1, c2, c3).isConstant()).isEqualTo(constant);
    }
}
