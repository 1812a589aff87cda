package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DotStampTest {
    /** A disc covers pi r^2 dots, whatever its place; its smooth rim, a dot wide, adds pi/12 on average. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 3.3, 6, 12})
    void aDiscCoversItsArea(double radius) {
        DotStamp disc = DotStamp.disc(radius);
        for (double phase = 0.1; phase < 1; phase += 0.25) {
            assertThat(sum(disc.weights(phase, phase)))
                    .isCloseTo(StrictMath.PI * radius * radius, within(radius * 0.6));
        }
    }

    @Test
    void aDiscIsFullInsideAndEmptyOutside() {
        DotStamp disc = DotStamp.disc(4);
        float[] weights = disc.weights(0.6, 0.6);
        int middle = disc.reach() * disc.side() + disc.reach();
        assertThat(weights[middle]).isEqualTo(1);
        assertThat(weights[middle + 2]).isEqualTo(1);
        assertThat(weights[0]).isZero();
        assertThat(weights).hasSize(disc.side() * disc.side());
    }

    /** Strength s over (1 - d/R)^3 adds up to 2 pi s R^2 (1/2 - 1 + 3/4 - 1/5) = pi s R^2 / 10. */
    @Test
    void aGlowHasItsSum() {
        for (double radius : new double[] {8, 15, 30}) {
            double expected = StrictMath.PI * 0.4 * radius * radius / 10;
            assertThat(sum(DotStamp.glow(radius, 0.4).weights(0.4, 0.9))).isCloseTo(expected, within(expected * 0.02));
        }
    }

    private static double sum(float[] weights) {
        double sum = 0;
        for (float weight : weights) {
            assertThat(weight).isBetween(0f, 1f);
            sum += weight;
        }
        return sum;
    }
}
