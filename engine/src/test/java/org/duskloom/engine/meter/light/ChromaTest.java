package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Chromaticities by the definition in WCAG 2.2 ("general flash and red flash thresholds"), with its matrix; the
 * distances are worked out from it to fifteen digits.
 */
class ChromaTest {
    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource({
        "ff0000, 808080, 0.258681584838397, true",
        "ff0000, ff00ff, 0.241908512954005, true",
        "dc143c, 0000ff, 0.423216846110623, true",
        "ff0000, c80000, 0, false",
        "460000, 000000, 0.258681584838397, true",
        "ff6347, 000000, 0.159766347296009, false"
    })
    void measuresDistances(String one, String other, double distance, boolean far) {
        Chroma first = Chroma.of(color(one));

        Chroma second = Chroma.of(color(other));
        assertThat(first.distance(second.u(), second.v())).isCloseTo(distance, within(1e-14));
        assertThat(Chroma.isFar(first.square(second))).isEqualTo(far);
    }

    /** What is near to every saturated red, as orange is, and what is far from some. */
    @Test
    void knowsWhatIsNearToReds() {
        assertThat(Chroma.of(color("ffa500")).isFarFromSomeRed()).isFalse();
        assertThat(Chroma.of(color("ff6347")).isFarFromSomeRed()).isFalse();
        assertThat(Chroma.of(color("ffff00")).isFarFromSomeRed()).isTrue();
        assertThat(Chroma.of(color("000000")).isFarFromSomeRed()).isTrue();
    }

    private static double[] color(String hex) {
        return PlainFlashes.linear(Integer.parseInt(hex, 16));
    }
}
