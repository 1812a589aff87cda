package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.kit.area.AreaKernel.Style;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What brushes of pictures leave in a patch beside light: a row of four lights, a third of the row's width apart. */
class SightTest {
    private static final Canvas ROW = Canvases.of(Canvases.row(4));
    private static final Laid LAID = Laid.of(8 / 3.0, 2 / 3.0);
    private static final Style ONCE = new Style(false, true);
    private static final Style REPEATING = new Style(true, true);

    /** Four pixels in a row, the last with this alpha. */
    private static Reel reel(float lastAlpha) {
        float[] light = new float[16];
        Arrays.fill(light, 1);
        Arrays.fill(light, 12, 16, lastAlpha);
        return Reel.of(new LightImage(4, 1, light));
    }

    private static Patch painted(Kernel kernel) {
        Patch patch = new Patch();
        Arrays.fill(patch.alpha, -7);
        patch.reset(3, 7);
        Brush brush = kernel.open();
        brush.begin(new CueTime());
        brush.paint(0, patch);
        return patch;
    }

    private static float[] shares(Laid laid, Style style) {
        Patch patch = painted(AreaKernel.looking(ROW, reel(1), time -> 0, laid, style));
        return Arrays.copyOfRange(patch.first, 3, 7);
    }

    /** The middles of four pixels are at 1/8, 3/8, 5/8 and 7/8 of the width, turned by half from the other end. */
    @Test
    void tellsWhereInThePictureALightIs() {
        assertThat(shares(LAID, ONCE)).containsExactly(new float[] {0.125f, 0.375f, 0.625f, 0.875f}, within(1e-6f));
        assertThat(shares(LAID.turned(180), ONCE))
                .containsExactly(new float[] {0.875f, 0.625f, 0.375f, 0.125f}, within(1e-6f));
    }

    /** Beyond an edge it is the edge, or, where the picture repeats, the place on the next one. */
    @Test
    void staysWithinThePicture() {
        assertThat(shares(LAID.moved(4 / 3.0, 0), ONCE))
                .containsExactly(new float[] {0, 0, 0.125f, 0.375f}, within(1e-6f));
        assertThat(shares(LAID.moved(-4 / 3.0, 0), ONCE))
                .containsExactly(new float[] {0.625f, 0.875f, 1, 1}, within(1e-6f));
        assertThat(shares(LAID.moved(4 / 3.0, 0), REPEATING))
                .containsExactly(new float[] {0.625f, 0.875f, 0.125f, 0.375f}, within(1e-6f));
    }

    /**
     * Only what is opaque on every light says so, and then leaves the plane of alpha alone. What moves says so if its
     * pictures are opaque and repeat, as it might move over the edge.
     */
    @ParameterizedTest
    @CsvSource({
        "true, false, 0, 1, true",
        "true, false, 0, 0.99, false",
        "true, false, 0.1, 1, false",
        "true, true, 0.1, 1, true",
        "false, true, 0.1, 1, true",
        "false, true, 0, 0.99, false",
        "false, false, 0, 1, false"
    })
    void saysThatItIsOpaqueIfItIs(boolean still, boolean repeats, double moved, float lastAlpha, boolean opaque) {
        Laid laid = still ? LAID.moved(moved, 0) : LAID.moved(moved, 0).moving();
        Style style = repeats ? REPEATING : ONCE;
        Patch patch = painted(AreaKernel.of(ROW, reel(lastAlpha), time -> 0, laid, style));
        assertThat(patch.isOpaque()).isEqualTo(opaque);
        assertThat(patch.alpha[2]).isEqualTo(-7);
        assertThat(patch.alpha[7]).isEqualTo(-7);
        patch.fill();
        for (int cell = 3; cell < 7; cell++) {
            assertThat(patch.alpha[cell]).isBetween(0.5f, 1f);
        }
    }

    /** Turned by quarters it is exact, so that upright lights stay upright; by anything else it keeps its size. */
    @ParameterizedTest
    @CsvSource({"0, 1, 0", "90, 0, 1", "-90, 0, -1", "180, -1, 0", "270, 0, -1", "720, 1, 0", "-630, 0, 1"})
    void quarterTurnsAreExact(double degrees, double cosine, double sine) {
        Pose pose = new Pose();
        pose.turn(degrees);
        assertThat(pose.cosine() + 0.0).isEqualTo(cosine);
        assertThat(pose.sine() + 0.0).isEqualTo(sine);
        pose.turn(degrees + 33);
        assertThat(pose.cosine() * pose.cosine() + pose.sine() * pose.sine()).isCloseTo(1, within(1e-12));
    }
}
