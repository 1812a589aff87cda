package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.assign.Clouds;
import org.duskloom.effects.assign.Points;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;

/** Six pixels on a line, of which two grids hold 1, 3 and 5 and 0 and 2; 4 is on none. */
class LightTest {
    private static final Points PLACES = Clouds.line(6, 1);
    private static final PixelGrid ODD = new PixelGrid(PLACES, new int[] {1, 3, 5}, 0.5, true);
    private static final PixelGrid EVEN = new PixelGrid(PLACES, new int[] {0, 2}, 0.5, true);

    /** Two dots: the first red and a quarter of blue, the second green and half of blue. */
    private static final float[] COLORS = {1, 0, 0.25f, 1, 0, 1, 0.5f, 1};

    private final ColorLight light = new ColorLight(6, List.of(ODD, EVEN));

    /** Lights a pixel of the grid turned to; the square of a dot's reach is 4. */
    private void light(PixelGrid grid, int pixel, int dot, double square) {
        int place = grid.ranks(new int[] {pixel})[0];
        DotFrame frame = new DotFrame(2, true);
        System.arraycopy(COLORS, 0, frame.colors, 0, COLORS.length);
        Found found = frame.found;
        found.begin(place / 2, dot / 2);
        found.words[0] = Found.word(place - place / 2, dot - dot / 2);
        found.squares[0] = square;
        found.count = 1;
        light.add(found, frame, 4);
        assertThat(found.count).isZero();
    }

    private float[] shown(int pixel) {
        Patch patch = new Patch();
        patch.reset(3, 4);
        light.paint(pixel, patch);
        return new float[] {patch.red[3], patch.green[3], patch.blue[3], patch.alpha[3]};
    }

    /** A quarter of the square away: (1 - 1/4)² = 9/16 of the colour; on the spot all of it; at the reach none. */
    @Test
    void fallsWithTheSquareOfTheDistance() {
        light.turnTo(0);
        light(ODD, 3, 0, 1);
        light(ODD, 1, 0, 0);
        light(ODD, 5, 0, 4);
        assertThat(shown(3)).containsExactly(9 / 16f, 0, 9 / 64f, 9 / 16f);
        assertThat(shown(1)).containsExactly(1, 0, 0.25f, 1);
        assertThat(shown(5)).containsOnly(0);
    }

    /** Of two dots each channel has the greater light, whichever comes first; a third, fainter one adds nothing. */
    @Test
    void isTheGreatestOfAllDots() {
        light.turnTo(1);
        light(EVEN, 2, 0, 0);
        light(EVEN, 2, 1, 0);
        light(EVEN, 0, 1, 0);
        light(EVEN, 0, 0, 0);
        light(EVEN, 0, 0, 3);
        assertThat(shown(2)).containsExactly(1, 1, 0.5f, 1);
        assertThat(shown(0)).containsExactly(1, 1, 0.5f, 1);
    }

    /** What is lit on one grid is dark on the other, and pixels of none are always dark. */
    @Test
    void staysOnItsGrid() {
        light.turnTo(1);
        light(EVEN, 0, 0, 0);
        light.turnTo(0);
        light(ODD, 1, 1, 0);
        assertThat(IntStream.range(0, 6).filter(pixel -> shown(pixel)[3] > 0)).containsExactly(0, 1);
        assertThat(shown(4)).containsOnly(0);
        light.begin(COLORS);
        assertThat(IntStream.range(0, 6).filter(pixel -> shown(pixel)[3] > 0)).isEmpty();
    }

    /** Only what is nearer than the reach counts, not what is as far, nor what comes next after it. */
    @Test
    void isWithinReachBelowItOnly() {
        double reach = 0.3;
        for (double square : new double[] {0, 1e-300, Math.nextDown(reach)}) {
            assertThat(Found.isWithin(square, reach)).isEqualTo(1);
        }
        for (double square : new double[] {reach, Math.nextUp(reach), 1e300, Double.POSITIVE_INFINITY}) {
            assertThat(Found.isWithin(square, reach)).isZero();
        }
    }

    /** Pixels of two members in turn, and a member without any between them: each in the order of the canvas. */
    @Test
    void membersKnowTheirPixels() {
        Canvas built = new Canvases()
                .member("a", Canvases.row(3))
                .member("none")
                .member("b", Canvases.row(2))
                .build();
        // The builder has members one after the other only.
        System.arraycopy(new int[] {2, 0, 0, 2, 0}, 0, built.memberOf(), 0, 5);
        MemberPixels members = MemberPixels.of(built);
        assertThat(members.numbers()).containsExactly(0, 2);
        assertThat(Arrays.deepToString(members.pixels().toArray())).isEqualTo("[[1, 2, 4], [0, 3]]");
        assertThat(MemberPixels.of(Canvases.of()).pixels()).isEmpty();
    }
}
