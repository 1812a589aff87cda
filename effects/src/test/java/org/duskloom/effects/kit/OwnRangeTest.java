package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.Canvas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OwnRangeTest {
    private static final float LAST = 1 - 0x1p-20f;

    /** (3 - 1)/4 = 1/2 and (2 - 1)/4 = 1/4 of the way from 1 to 5. */
    @Test
    void goesFromTheLeastToTheGreatest() {
        assertThat(shares(Canvases.of(Canvases.row(4)), 3, 1, 5, 2)).containsExactly(0.5f, 0, LAST, 0.25f);
    }

    /** The second member runs from -8 to -4 and knows nothing of the first. */
    @Test
    void measuresEachMemberByItself() {
        Canvas two = new Canvases()
                .member("arch", Canvases.row(2))
                .member("fence", Canvases.row(3))
                .build();
        assertThat(shares(two, 100, 300, -4, -8, -5)).containsExactly(0, LAST, LAST, 0, 0.75f);
    }

    /** Turned round, what was a share s is 1 - s, but for what the last keeps away from 1. */
    @Test
    void isMirroredWithTheValues() {
        Canvas canvas = Canvases.of(Canvases.scattered(60));
        float[] along = shares(canvas, canvas.x());
        float[] against = shares(canvas, negated(canvas.x()));
        for (int i = 0; i < along.length; i++) {
            assertThat(along[i] + against[i]).isCloseTo(1, within(1e-6f));
        }
    }

    @Test
    void isNoughtWithoutARange() {
        assertThat(shares(Canvases.of(Canvases.row(1)), 42)).containsExactly(0);
        assertThat(shares(Canvases.of(Canvases.row(3)), -2, -2, -2)).containsOnly(0f);
        assertThat(shares(Canvases.of(new double[] {0, 0}, new double[] {0, 0}), 0, 0))
                .containsOnly(0f);
        assertThat(shares(new Canvases().build())).isEmpty();
    }

    /** In a member that reaches 1 from the middle, a billionth is rounding and ten billionths are not. */
    @Test
    void takesRoundingForNothing() {
        Canvas canvas = Canvases.of(Canvases.row(2));
        assertThat(shares(canvas, 0.5, 0.5 + 0.9e-9)).containsExactly(0, 0);
        assertThat(shares(canvas, 0.5, 0.5 + 1e-8)).containsExactly(0, LAST);
    }

    /** In units of a power of two every bit stays; at the ends of reason the shares stay in range. */
    @ParameterizedTest
    @ValueSource(doubles = {0x1p-40, 0x1p-3, 0x1p40})
    void doesNotDependOnTheUnit(double unit) {
        double[][] places = Canvases.scattered(40);
        Canvas canvas = Canvases.of(places);
        Canvas scaled = Canvases.of(Canvases.moved(places, unit, 0, 0, unit));
        assertThat(shares(scaled, scaled.y())).containsExactly(shares(canvas, canvas.y()));
    }

    private static double[] negated(double[] values) {
        double[] negated = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            negated[i] = -values[i];
        }
        return negated;
    }

    private static float[] shares(Canvas canvas, double... values) {
        float[] shares = new float[values.length];
        new OwnRange(canvas).place(values, shares);
        return shares;
    }
}
