package org.duskloom.effects.festoon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The expected values are computed with 30 digits from the classical formulas (J. Bernoulli, Leibniz, Huygens 1691; any
 * handbook of mechanics): y = a cosh(x/a), sag = a (cosh(S/2a) - 1), length = 2a sinh(S/2a), end slope = sinh(S/2a).
 */
class CatenaryTest {
    /** Span, sag, a, length. */
    @ParameterizedTest
    @CsvSource({
        "10, 0.5, 25.082893176, 10.0663584629",
        "10, 1, 12.663243604, 10.2618686813",
        "10, 2, 6.55862586753, 10.9971820882",
        "4, 1, 2.14864037652, 4.60316445634",
        "30, 3, 37.989730812, 30.7856060439"
    })
    void hangsWithASag(double span, double sag, double a, double length) {
        Catenary chain = hung(0, sag / span);

        assertThat(chain.a() * span).isCloseTo(a, within(1e-8));
        assertThat(chain.length() * span).isCloseTo(length, within(1e-9));
        assertThat(chain.heightAt(0.5) * span).isCloseTo(-sag, within(1e-12));
        assertThat(chain.heightAt(1)).isZero();
    }

    /** Span, length, a, sag, end slope: the same chains told by their length. */
    @ParameterizedTest
    @CsvSource({
        "10, 10.1, 20.442962365, 0.614511611163, 0.247028777426",
        "10, 11, 6.54963947637, 2.00300790736, 0.839740877318",
        "10, 12, 4.69541523127, 2.92343797601, 1.27784225771",
        "4, 5, 1.69100939543, 1.3271875457, 1.47840692474"
    })
    void isAsLongAsItHangsThrough(double span, double length, double a, double sag, double slope) {
        Catenary chain = hung(0, sag / span);

        assertThat(chain.length() * span).isCloseTo(length, within(1e-9));
        assertThat(chain.a() * span).isCloseTo(a, within(1e-8));
        assertThat((chain.heightAt(1) - chain.heightAt(1 - 1e-7)) / 1e-7).isCloseTo(slope, within(1e-5));
    }

    /** Span 10, length 12, marked every 3: x and the height above the lowest point. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 2.923437976",
        "3, 2.17377412904, 0.876561455154",
        "6, 5, 0",
        "9, 7.82622587096, 0.876561455154",
        "12, 10, 2.923437976"
    })
    void isMarkedEvenly(double arc, double x, double height) {
        Catenary chain = hung(0, 0.292343797601);

        assertThat(chain.xAtArc(arc / 10) * 10).isCloseTo(x, within(1e-9));
        assertThat((chain.heightAt(chain.xAtArc(arc / 10)) + 0.292343797601) * 10)
                .isCloseTo(height, within(1e-9));
    }

    /**
     * Unequal supports: 10 apart, the second 2 higher, length 12. At x = 5 the chain lies at -1.82319727118, the
     * straight line between the ends at 1, so the sag is 2.82319727118.
     */
    @Test
    void hangsBetweenUnequalEnds() {
        Catenary chain = hung(0.2, 0.282319727118);

        assertThat(chain.length() * 10).isCloseTo(12, within(1e-9));
        assertThat(chain.a() * 10).isCloseTo(4.89471925395, within(1e-9));
        assertThat(chain.lowestX() * 10).isCloseTo(4.1765314325, within(1e-9));
        assertThat(chain.heightAt(chain.lowestX()) * 10).isCloseTo(-1.89262938104, within(1e-9));
        assertThat(chain.heightAt(0.5) * 10).isCloseTo(-1.82319727118, within(1e-9));
        assertThat(chain.heightAt(1) * 10).isCloseTo(2, within(1e-12));
    }

    /**
     * The chain of least tension at its ends: u tanh u = 1, u = 1.19967864026, sag/S = 0.337661500969, L/S =
     * 1.25773645617.
     */
    @Test
    void hangsWithTheLeastTension() {
        Catenary chain = hung(0, 0.337661500969);

        assertThat(1 / (2 * chain.a())).isCloseTo(1.19967864026, within(1e-10));
        assertThat(chain.length()).isCloseTo(1.25773645617, within(1e-10));
    }

    /** A taut chain is a parabola: length S + 8 sag² / 3S, but for terms of the fourth order. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-5, 1e-4, 1e-3, 1e-2})
    void isAParabolaWhenTaut(double sag) {
        assertThat(hung(0, sag).length() - 1).isCloseTo(8 * sag * sag / 3, within(10 * sag * sag * sag * sag + 1e-15));
        assertThat(hung(0, sag).heightAt(0.25)).isCloseTo(-0.75 * sag, within(sag * sag));
    }

    /** Without sag there is no catenary, as a would be infinite: a straight line. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.75, -2})
    void isStraightWithoutSag(double rise) {
        Catenary chain = hung(rise, 0);

        assertThat(chain.length()).isEqualTo(Math.sqrt(1 + rise * rise));
        assertThat(chain.heightAt(0.25)).isEqualTo(rise / 4);
        assertThat(chain.xAtArc(chain.length() / 4)).isCloseTo(0.25, within(1e-15));
    }

    /** From the straight line to the least sag that is drawn as a chain there is no jump. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.75, -2})
    void becomesStraightWithoutAJump(double rise) {
        Catenary taut = hung(rise, 1.1e-6);
        for (double x = 0; x <= 1; x += 0.125) {
            assertThat(taut.heightAt(x)).isCloseTo(rise * x, within(2e-6));
            assertThat(taut.xAtArc(taut.length() * x)).isCloseTo(x, within(1e-5));
        }
    }

    /** Marks by arc length and heights agree: a short piece of the chain is as long as it is between its ends. */
    @ParameterizedTest
    @CsvSource({"0, 0.3", "0.5, 0.3", "-2, 0.05", "2, 2", "0, 2"})
    void measuresAlongItself(double rise, double sag) {
        Catenary chain = hung(rise, sag);
        int pieces = 1000;
        double x = 0;
        for (int i = 1; i <= pieces; i++) {
            double next = chain.xAtArc(chain.length() * i / pieces);
            double up = chain.heightAt(next) - chain.heightAt(x);
            double piece = Math.sqrt((next - x) * (next - x) + up * up);
            assertThat(piece).isCloseTo(chain.length() / pieces, within(2e-4 * chain.length() / pieces));
            x = next;
        }
        assertThat(x).isCloseTo(1, within(1e-9));
        assertThat((1 + chain.heightAt(1) - rise)).isCloseTo(1, within(1e-9));
    }

    private static Catenary hung(double rise, double sag) {
        Catenary chain = new Catenary();
        chain.hang(rise, sag);
        return chain;
    }
}
