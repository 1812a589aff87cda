package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a mask leaves of the light under it, to more digits than a code has: W3C WCAG 2.2, "relative luminance", L =
 * 0.2126 R + 0.7152 G + 0.0722 B in linear light.
 */
class LuminanceTest {
    private static final float CLOSE = 1e-6f;

    @ParameterizedTest
    @CsvSource({
        "1, 0, 0, 0.2126",
        "0, 1, 0, 0.7152",
        "0, 0, 1, 0.0722",
        "1, 1, 1, 1",
        // 0.10630 + 0.17880 + 0.00722
        "0.5, 0.25, 0.1, 0.29232"
    })
    void leavesTheLuminance(float red, float green, float blue, float left) {
        assertThat(gated(red, green, blue, 1, 1)).containsOnly(new float[] {left}, within(CLOSE));
        // Where the mask reaches half, half of what it takes is left: 1 - (0.5 - L), L being what it shows there.
        assertThat(gated(red / 2, green / 2, blue / 2, 0.5f, 1))
                .containsOnly(new float[] {0.5f + left / 2}, within(CLOSE));
        assertThat(gated(red, green, blue, 1, 0.25f)).containsOnly(new float[] {0.75f + left / 4}, within(CLOSE));
    }

    /** The three channels of an opaque white pixel behind a mask. */
    private static float[] gated(float red, float green, float blue, float reach, float opacity) {
        Patch backdrop = new Patch();
        backdrop.reset(0, 1);
        backdrop.red[0] = 1;
        backdrop.green[0] = 1;
        backdrop.blue[0] = 1;
        backdrop.makeOpaque();
        Patch mask = new Patch();
        mask.reset(0, 1);
        mask.red[0] = red;
        mask.green[0] = green;
        mask.blue[0] = blue;
        mask.alpha[0] = reach;
        float[] reaches = new float[Patch.CAPACITY];
        Arrays.fill(reaches, reach);
        Compositor.gate(mask, reaches, opacity, backdrop);
        return new float[] {backdrop.red[0], backdrop.green[0], backdrop.blue[0]};
    }
}
