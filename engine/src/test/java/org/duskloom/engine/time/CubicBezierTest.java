package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W3C CSS Easing Functions Level 1, "Cubic Bezier Easing Functions". */
final class CubicBezierTest {
    private static final Easing STANDING = new CubicBezier(0.5, 1, 0.5, 0);
    private static final Easing SWINGING = new CubicBezier(0.68, -0.55, 0.265, 1.55);

    /** Solved from the definition by bisection to 1e-40. */
    @ParameterizedTest
    @CsvSource({
        "0.1,  0.094796, 0.017027, 0.160572, 0.019722, 0.185378, -0.066291",
        "0.2,  0.295244, 0.062282, 0.308366, 0.081660, 0.335505, -0.092702",
        "0.25, 0.408511, 0.093465, 0.378138, 0.129162, 0.394107, -0.082807",
        "0.3,  0.513315, 0.129577, 0.445186, 0.187396, 0.439973, -0.049317",
        "0.4,  0.682541, 0.214861, 0.570880, 0.331884, 0.491135,  0.142923",
        "0.5,  0.802403, 0.315357, 0.684643, 0.5,      0.5,       0.606680",
        "0.6,  0.885229, 0.429120, 0.785139, 0.668116, 0.508865,  0.947542",
        "0.7,  0.940765, 0.554814, 0.870423, 0.812604, 0.560027,  1.069261",
        "0.75, 0.960459, 0.621862, 0.906535, 0.870838, 0.605893,  1.089166",
        "0.8,  0.975625, 0.691634, 0.937718, 0.918340, 0.664495,  1.092090",
        "0.9,  0.994316, 0.839428, 0.982973, 0.980278, 0.814622,  1.062373"
    })
    void solvesTheCurve(
            double x, double ease, double easeIn, double easeOut, double easeInOut, double standing, double swinging) {
        assertThat(Easing.EASE.at(x)).isCloseTo(ease, within(1e-6));
        assertThat(Easing.EASE_IN.at(x)).isCloseTo(easeIn, within(1e-6));
        assertThat(Easing.EASE_OUT.at(x)).isCloseTo(easeOut, within(1e-6));
        assertThat(Easing.EASE_IN_OUT.at(x)).isCloseTo(easeInOut, within(1e-6));
        assertThat(STANDING.at(x)).isCloseTo(standing, within(1e-6));
        assertThat(SWINGING.at(x)).isCloseTo(swinging, within(1e-6));
    }

    /**
     * The chained case of the web platform tests, css-easing "timing functions output": the outer curve leaves [0, 1],
     * where this renderer clamps; so only the outer one is compared.
     */
    @ParameterizedTest
    @CsvSource({
        "0.23368794, 1.0000000006, 1e-9",
        "0.23, 0.9943318, 1e-7",
        "0.24, 1.0095034, 1e-7",
        "0.7, 1.2990182, 1e-7",
        "0.99, 1.0829460, 1e-7"
    })
    void mayOvershoot(double x, double y, double tolerance) {
        Easing over = new CubicBezier(0, 1.5, 1, 1.5);
        Easing under = new CubicBezier(0, -0.5, 1, -0.5);

        assertThat(over.at(x)).isCloseTo(y, within(tolerance));
        assertThat(under.at(1 - x)).isCloseTo(1 - y, within(tolerance * 2));
    }

    /** Inner of the same chained case, where the outer output is within [0, 1]. */
    @Test
    void chainsInsideTheRange() {
        assertThat(STANDING.at(new CubicBezier(0, 1.5, 1, 1.5).at(0.23))).isCloseTo(0.9887067, within(1e-6));
    }

    /** The curve is given by its parameter: at x(t) the output is y(t), with no equation to solve. */
    @ParameterizedTest
    @CsvSource({
        "0.25, 0.1, 0.25, 1",
        "0.42, 0, 1, 1",
        "0.5, 1, 0.5, 0",
        "0, 0, 0, 0",
        "1, 1, 1, 1",
        "1, 0, 0, 1",
        "0, 1, 1, 0",
        "0, 1, 0, 1",
        "1, 0, 1, 0",
        "0.68, -0.55, 0.265, 1.55",
        "0.999, 0, 0.001, 1",
        "0, 50, 1, -50"
    })
    void passesThroughEveryPointOfTheCurve(double x1, double y1, double x2, double y2) {
        Easing easing = new CubicBezier(x1, y1, x2, y2);
        for (int i = 0; i <= 1000; i++) {
            double t = i / 1000.0;
            double slope = 3 * (1 - t) * (1 - t) * x1 + 6 * (1 - t) * t * (x2 - x1) + 3 * t * t * (1 - x2);
            if (slope < 1e-3) {
                continue;
            }
            double tolerance = 1e-12 * (1 + Math.abs(y1) + Math.abs(y2)) / slope;
            assertThat(easing.at(bezier(x1, x2, t))).isCloseTo(bezier(y1, y2, t), within(tolerance));
        }
    }

    /** A vertical tangent in the middle: the curve is its own half-turn about (1/2, 1/2), so 1/2 gives 1/2. */
    @Test
    void standsUprightWithoutFailing() {
        for (Easing easing : new Easing[] {STANDING, new CubicBezier(1, 0, 0, 1)}) {
            assertThat(easing.at(0.5)).isCloseTo(0.5, within(1e-5));
            for (int i = 1; i < 100; i++) {
                double nearby = 0.5 + i * 1e-12;
                assertThat(easing.at(nearby) + easing.at(1 - nearby)).isCloseTo(1, within(1e-4));
            }
        }
    }

    @Test
    void easeInMirrorsEaseOut() {
        for (int i = 0; i <= 1000; i++) {
            double x = i / 1000.0;
            assertThat(Easing.EASE_IN.at(x) + Easing.EASE_OUT.at(1 - x)).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void keywordsNeverFall() {
        for (Easing easing : new Easing[] {Easing.EASE, Easing.EASE_IN, Easing.EASE_OUT, Easing.EASE_IN_OUT}) {
            double before = 0;
            for (int i = 0; i <= 10_000; i++) {
                double y = easing.at(i / 10_000.0);
                assertThat(y).isGreaterThanOrEqualTo(before);
                before = y;
            }
        }
    }

    @Test
    void endsAreExactAndNothingLiesBeyond() {
        for (Easing easing : new Easing[] {Easing.EASE, STANDING, SWINGING, new CubicBezier(0, 1.5, 1, 1.5)}) {
            for (double before : new double[] {0, -0.0, -0.5, Double.NEGATIVE_INFINITY, Double.NaN}) {
                assertThat(easing.at(before)).isZero();
            }
            for (double after : new double[] {1, 1.5, Double.POSITIVE_INFINITY}) {
                assertThat(easing.at(after)).isEqualTo(1);
            }
            assertThat(easing.at(Double.MIN_VALUE)).isCloseTo(0, within(1e-12));
            assertThat(easing.at(Math.nextDown(1.0))).isCloseTo(1, within(1e-7));
        }
    }

    @Test
    void refusesCurvesThatTurnBack() {
        assertThatThrownBy(() -> new CubicBezier(-0.1, 0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CubicBezier(0, 0, 1.1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CubicBezier(Double.NaN, 0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The polynomial of Bernstein with the ends 0 and 1. */
    private static double bezier(double first, double second, double t) {
        return 3 * (1 - t) * (1 - t) * t * first + 3 * (1 - t) * t * t * second + t * t * t;
    }
}
