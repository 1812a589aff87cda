package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;

class PolarTest {
    private static final Offset<Double> ROUNDING = within(1e-15);

    /** Right, up, left and down, the four diagonals, and 60° on the unit circle. */
    private static final Canvas ROUND = Canvases.of(
            new double[] {1, 0},
            new double[] {0, 1},
            new double[] {-1, 0},
            new double[] {0, -1},
            new double[] {1, 1},
            new double[] {-1, 1},
            new double[] {-1, -1},
            new double[] {1, -1},
            new double[] {0.5, StrictMath.sqrt(0.75)});

    @Test
    void countsTurnsFromTheRightUpward() {
        assertThat(still(ROUND, 0, 0).angleTurns())
                .containsExactly(new double[] {0, 0.25, 0.5, 0.75, 0.125, 0.375, 0.625, 0.875, 1 / 6.0}, ROUNDING);
    }

    /** 1 on the axes, √2 at the corners. */
    @Test
    void measuresDistances() {
        double corner = Math.sqrt(2);
        assertThat(still(ROUND, 0, 0).radii())
                .containsExactly(new double[] {1, 1, 1, 1, corner, corner, corner, corner, 1}, ROUNDING);
    }

    /** At the centre, and nearer to it than anything is built, there is no direction. */
    @Test
    void hasNoAngleAtTheCentre() {
        Canvas centre =
                Canvases.of(new double[] {0.3, -0.7}, new double[] {0.3 - 1e-10, -0.7}, new double[] {0.2, -0.7});
        Polar polar = still(centre, 0.3, -0.7);
        assertThat(polar.angleTurns()).containsExactly(new double[] {0, 0, 0.5}, ROUNDING);
        assertThat(polar.radii()[0]).isZero();
    }

    /** Just below the way to the right the angle is nearly a whole turn, never one. */
    @Test
    void staysBelowAWholeTurn() {
        double[] angles = still(Canvases.of(new double[] {1, -1e-17}, new double[] {1, -1e-12}), 0, 0)
                .angleTurns();
        assertThat(angles[0]).isZero();
        assertThat(angles[1]).isLessThan(1).isCloseTo(1, within(1e-12));
    }

    /** Turned by a quarter, every angle is a quarter more and no distance another. */
    @Test
    void turnsWithTheStage() {
        double[][] places = Canvases.scattered(100);
        Polar before = still(Canvases.of(places), 0, 0);
        Polar after = still(Canvases.of(Canvases.moved(places, 0, -1, 1, 0)), 0, 0);
        for (int i = 0; i < places.length; i++) {
            double turned = after.angleTurns()[i] - before.angleTurns()[i] - 0.25;
            assertThat(turned - Math.rint(turned)).isCloseTo(0, ROUNDING);
            assertThat(after.radii()[i]).isCloseTo(before.radii()[i], ROUNDING);
        }
    }

    /** From (0, 0) at 0 s to (2, 0) at 2 s: at 1 s it is what a centre that stays at (1, 0) sees, to the bit. */
    @Test
    void followsAMovingCentre() {
        Polar moving = of(ROUND, track(0, 2), NumberTrack.constant(0));
        assertThat(moving.isConstant()).isFalse();
        moving.begin(new CueTime().set(1, 100));
        assertThat(moving.angleTurns()).containsExactly(still(ROUND, 1, 0).angleTurns());
        assertThat(moving.radii()).containsExactly(still(ROUND, 1, 0).radii());
        moving.begin(new CueTime().set(0, 100));
        assertThat(moving.radii()).containsExactly(still(ROUND, 0, 0).radii());
    }

    @Test
    void isConstantOnlyIfNeitherCoordinateMoves() {
        assertThat(still(ROUND, 3, 4).isConstant()).isTrue();
        assertThat(of(ROUND, NumberTrack.constant(0), track(0, 1)).isConstant()).isFalse();
    }

    /** Distances 5, 10 and 0 about the centre: 3-4-5 triangles. The nearest is at 0, the farthest at the end. */
    @Test
    void placesDistancesInTheRangeOfTheMember() {
        Canvas canvas = Canvases.of(new double[] {4, 5}, new double[] {7, -7}, new double[] {1, 1});
        float[] shares = new float[3];
        still(canvas, 1, 1).placeRadii(shares);
        assertThat(shares).containsExactly(0.5f, SharePlane.LAST, 0);
    }

    /** From the middle of the canvas, whatever the centre: 1, 3 and 2. */
    @Test
    void placesDistancesFromTheMiddle() {
        Canvas canvas = Canvases.of(new double[] {0, -1}, new double[] {3, 0}, new double[] {-2, 0});
        assertThat(Polar.radiiFromTheMiddle(canvas)).containsExactly(0, SharePlane.LAST, 0.5f);
    }

    private static NumberTrack track(double from, double to) {
        return NumberTrack.keyed(List.of(new NumberKey(0, from, Easing.LINEAR), new NumberKey(2, to, Easing.LINEAR)));
    }

    private static Polar still(Canvas canvas, double x, double y) {
        return of(canvas, NumberTrack.constant(x), NumberTrack.constant(y));
    }

    private static Polar of(Canvas canvas, NumberTrack x, NumberTrack y) {
        return Polar.of(canvas, Settings.of(Map.of(Polar.CENTRE_X, x, Polar.CENTRE_Y, y)));
    }
}
