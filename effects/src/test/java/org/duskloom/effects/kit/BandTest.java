package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BandTest {
    /** The band is [0, width): its own last float is lit, the width itself is not. */
    @ParameterizedTest
    @ValueSource(floats = {1e-6f, 0.1f, 0.3333333f, 0.5f, 0.9f, 0.99999f})
    void endsAtTheVeryFloat(float width) {
        float[] u = {0, Math.nextDown(width), width, Math.nextUp(width), Math.nextDown(1f)};
        Band.levels(u, width, 0, 0, 5, u);
        assertThat(u).containsExactly(1, 1, 0, 0, 0);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 1"})
    void canBeNothingOrAll(float width, float level) {
        float[] u = {0, 1e-30f, 0.5f, Math.nextDown(1f)};
        Band.levels(u, width, 0, 0, 4, u);
        assertThat(u).containsOnly(level);
    }

    /**
     * Width 0.8, soft 0.25: each edge takes 0.2. smoothstep(t) = 3 t² - 2 t³: 5/32 at 1/4, 1/2 at 1/2, 27/32 at 3/4.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "0.05, 0.15625",
        "0.1, 0.5",
        "0.15, 0.84375",
        "0.2, 1",
        "0.4, 1",
        "0.6, 1",
        "0.7, 0.5",
        "0.75, 0.15625",
        "0.8, 0",
        "0.9, 0"
    })
    void isSoftInside(float u, float expected) {
        float[] plane = {u};
        Band.levels(plane, 0.8f, 0.25f, 0, 1, plane);
        assertThat(plane[0]).isCloseTo(expected, within(2e-6f));
    }

    /** Both edges meet at the middle of the band. */
    @ParameterizedTest
    @ValueSource(floats = {1, 0.5f, 0.125f})
    void isFullInTheMiddleWhenAllSoft(float width) {
        float[] plane = {width / 2};
        Band.levels(plane, width, 0.5f, 0, 1, plane);
        assertThat(plane[0]).isEqualTo(1f);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.5, 0",
        "0.125, 0.5, 0.25",
        "0.5, 0.5, 1",
        "0.9, 0.5, 1",
        "0.3, 0, 0",
        "0, 1e-40, 0",
        "0.5, 1e-40, 1"
    })
    void hasPlacesAcross(float u, float width, float expected) {
        float[] plane = {u};
        Band.positions(plane, width, 0, 1, plane);
        assertThat(plane[0]).isEqualTo(expected);
    }
}
