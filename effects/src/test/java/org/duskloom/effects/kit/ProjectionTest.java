package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.geometry.Degrees;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProjectionTest {
    /** The greatest share is 2^-20 below 1, so that it does not begin the next period. */
    private static final Offset<Float> ROUNDING = within(0x1.1p-20f);

    /** The corners of a square; toward 45 degrees their shares are 0, 1/2, 1/2 and 1. */
    private static final double[][] SQUARE = {{-1, -1}, {1, -1}, {-1, 1}, {1, 1}};

    @ParameterizedTest
    @CsvSource({
        "0, 0, 1, 0, 1",
        "90, 0, 0, 1, 1",
        "180, 1, 0, 1, 0",
        "270, 1, 1, 0, 0",
        "-90, 1, 1, 0, 0",
        "450, 0, 0, 1, 1",
        "45, 0, 0.5, 0.5, 1",
        "225, 1, 0.5, 0.5, 0"
    })
    void runsAlongADirection(double toward, float a, float b, float c, float d) {
        assertThat(Projection.shares(Canvases.of(SQUARE), toward)).containsExactly(new float[] {a, b, c, d}, ROUNDING);
    }

    /** Neither where the square is nor how large it is matters; powers of two, so to the bit. */
    @Test
    void measuresInItsOwnRange() {
        double[][] places = Canvases.scattered(50);
        double[][] far = Canvases.moved(places, 1024, 0, 0, 1024);
        assertThat(Projection.shares(Canvases.of(far), 30)).containsExactly(Projection.shares(Canvases.of(places), 30));
        for (double[] place : far) {
            place[0] += 5000;
            place[1] -= 300;
        }
        assertThat(Projection.shares(Canvases.of(far), 30))
                .containsExactly(Projection.shares(Canvases.of(places), 30), within(1e-6f));
    }

    /** Pixels side by side in the direction, but for rounding, are all at 0. */
    @Test
    void isNoughtWithoutARange() {
        Canvas column = Canvases.of(new double[] {0.3, -1}, new double[] {Math.nextUp(0.3), 0}, new double[] {0.3, 1});
        assertThat(Projection.shares(column, 0)).containsOnly(0f);
        assertThat(Projection.shares(column, 90)).containsExactly(0, 0.5f, 1 - 0x1p-20f);
    }

    /** A right angle has no rounding; 60 degrees has the cosine 1/2 (a closed form). */
    @Test
    void isExactAtQuarterTurns() {
        assertThat(vector(90)).containsExactly(0, 1);
        assertThat(vector(-180)).containsExactly(-1, 0);
        assertThat(vector(630)).containsExactly(0, -1);
        assertThat(Degrees.cosine(60)).isCloseTo(0.5, within(1e-15));
        assertThat(Degrees.sine(30)).isCloseTo(0.5, within(1e-15));
    }

    private static double[] vector(double degrees) {
        return new double[] {Degrees.cosine(degrees), Degrees.sine(degrees)};
    }
}
