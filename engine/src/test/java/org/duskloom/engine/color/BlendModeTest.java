package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * W3C Compositing and Blending: the blend functions and source-over are those of Level 1; plus-lighter, the cross-fade
 * and the expanded formula stand in Level 2 (draft).
 */
final class BlendModeTest {
    private static final float CLOSE = 1e-6f;

    /**
     * B(Cb, Cs) for the pairs (.2,.6) (.6,.2) (.25,.75) (.8,.5) (0,1) (1,0), computed from Level 1, "Separable blend
     * modes"; then source-over of Cs .6, as .4 on Cb .2, ab .5; then of Cs .2, as .5 on an opaque Cb .6, computed from
     * Level 1, "General Formula".
     */
    @ParameterizedTest
    @CsvSource({
        "normal,      .6,    .2,   .75,   .5, 1, 0, .3,     .4",
        "multiply,    .12,   .12,  .1875, .4, 0, 0, .204,   .36",
        "screen,      .68,   .68,  .8125, .9, 1, 1, .316,   .64",
        "overlay,     .24,   .36,  .375,  .8, 0, 1, .228,   .48",
        "darken,      .2,    .2,   .25,   .5, 0, 0, .22,    .4",
        "lighten,     .6,    .6,   .75,   .8, 1, 1, .3,     .6",
        "color-dodge, .5,    .75,  1,     1,  0, 1, .28,    .675",
        "color-burn,  0,     0,    0,     .6, 0, 1, .18,    .3",
        "hard-light,  .36,   .24,  .625,  .8, 1, 0, .252,   .42",
        "soft-light,  .2496, .456, .375,  .8, 0, 1, .22992, .528",
        "difference,  .4,    .4,   .5,    .3, 1, 1, .26,    .5",
        "exclusion,   .56,   .56,  .625,  .5, 1, 1, .292,   .58"
    })
    void followsTheSpecification(
            String word, float b1, float b2, float b3, float b4, float b5, float b6, float caseA, float caseB) {
        BlendMode mode = BlendMode.of(word).orElseThrow();

        assertThat(mode.blend(0.2f, 0.6f)).isEqualTo(b1, within(CLOSE));
        assertThat(mode.blend(0.6f, 0.2f)).isEqualTo(b2, within(CLOSE));
        assertThat(mode.blend(0.25f, 0.75f)).isEqualTo(b3, within(CLOSE));
        assertThat(mode.blend(0.8f, 0.5f)).isEqualTo(b4, within(CLOSE));
        assertThat(mode.blend(0, 1)).isEqualTo(b5);
        assertThat(mode.blend(1, 0)).isEqualTo(b6);
        assertThat(mode.over(0.2f * 0.5f, 0.5f, 0.6f * 0.4f, 0.4f)).isEqualTo(caseA, within(CLOSE));
        assertThat(mode.alphaOver(0.5f, 0.4f)).isEqualTo(0.7f, within(CLOSE));
        assertThat(mode.over(0.6f, 1, 0.2f * 0.5f, 0.5f)).isEqualTo(caseB, within(CLOSE));
        assertThat(mode.alphaOver(1, 0.5f)).isEqualTo(1);
    }

    /**
     * Level 1, "soft-light", with Cs = 1 is D(Cb), which is ((16 Cb - 12) Cb + 4) Cb up to a quarter and the root of Cb
     * above: 0.489984 (and not the root, 0.489898) at 0.24, 0.5 at 0.25 either way, 0.509902 (and not 0.510016) at
     * 0.26; with Cs = 0.75 half of the way from Cb to it.
     */
    @ParameterizedTest
    @CsvSource({
        "0.1, 1, 0.296",
        "0.24, 1, 0.489984",
        "0.25, 1, 0.5",
        "0.26, 1, 0.509902",
        "0.81, 1, 0.9",
        "0.24, 0.75, 0.364992",
        "0.26, 0.75, 0.384951"
    })
    void softLightChangesItsCurveAtAQuarter(float cb, float cs, float blended) {
        assertThat(BlendMode.SOFT_LIGHT.blend(cb, cs)).isEqualTo(blended, within(CLOSE));
    }

    /** Level 1: the order of the tests in "color-dodge" and "color-burn" decides at the corners. */
    @Test
    void cornersOfDodgeAndBurn() {
        assertThat(BlendMode.COLOR_DODGE.blend(0, 1)).isZero();
        assertThat(BlendMode.COLOR_DODGE.blend(0.3f, 1)).isEqualTo(1);
        assertThat(BlendMode.COLOR_BURN.blend(1, 0)).isEqualTo(1);
        assertThat(BlendMode.COLOR_BURN.blend(0.3f, 0)).isZero();
    }

    /**
     * The examples that Level 1 prints in "Simple alpha compositing": blue over red, per channel, multiplied by alpha.
     */
    @Test
    void printedExamplesOfSourceOver() {
        assertOver(BlendMode.NORMAL, 1, 1, 0, 1, 1);
        assertOver(BlendMode.NORMAL, 0.5f, 1, 0.5f, 0.5f, 1);
        assertOver(BlendMode.NORMAL, 0.5f, 0.5f, 0.25f, 0.5f, 0.75f);
    }

    /**
     * Level 2's cross-fade of red and blue at alpha .25 each: source-over prints about 43 % and 57 % at 44 %, exactly
     * 3/7, 4/7 and 0.4375; plus-lighter prints 50 % and 50 % at 50 %.
     */
    @Test
    void printedCrossFade() {
        assertOver(BlendMode.NORMAL, 0.25f, 0.25f, 0.4375f * 3 / 7, 0.4375f * 4 / 7, 0.4375f);
        assertOver(BlendMode.PLUS_LIGHTER, 0.25f, 0.25f, 0.25f, 0.25f, 0.5f);
    }

    /** Computed from Level 2: colours and alphas add, each up to 1. */
    @ParameterizedTest
    @CsvSource({".2, .5, .6, .4, .34, .9", ".6, 1, .7, .8, 1, 1", ".5, .75, .5, .5, .625, 1"})
    void plusLighterAdds(float cb, float ab, float cs, float as, float co, float ao) {
        assertThat(BlendMode.PLUS_LIGHTER.over(cb * ab, ab, cs * as, as)).isEqualTo(co, within(CLOSE));
        assertThat(BlendMode.PLUS_LIGHTER.alphaOver(ab, as)).isEqualTo(ao, within(CLOSE));
    }

    /** The expansion that Level 2 prints (Level 1 has one source alpha too many), worked in doubles. */
    @ParameterizedTest
    @EnumSource(value = BlendMode.class, mode = EnumSource.Mode.EXCLUDE, names = "PLUS_LIGHTER")
    void overIsTheExpandedFormula(BlendMode mode) {
        float[] shares = {0, 0.1f, 0.25f, 0.5f, 0.7f, 1};
        for (float cb : shares) {
            for (float cs : shares) {
                for (float ab : shares) {
                    for (float as : shares) {
                        double expected = (double) as * (1 - ab) * cs
                                + (double) as * ab * mode.blend(cb, cs)
                                + (1.0 - as) * ab * cb;
                        assertThat(mode.over(cb * ab, ab, cs * as, as)).isEqualTo((float) expected, within(2 * CLOSE));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(BlendMode.class)
    void nothingOverABackdropLeavesIt(BlendMode mode) {
        assertThat(mode.over(0.3f, 0.7f, 0, 0)).isEqualTo(0.3f);
        assertThat(mode.alphaOver(0.7f, 0)).isEqualTo(0.7f);
        assertThat(mode.over(0, 0, 0.3f, 0.7f)).isEqualTo(0.3f);
        assertThat(mode.alphaOver(0, 0.7f)).isEqualTo(0.7f);
        assertThat(mode.over(0, 0, 0, 0)).isZero();
    }

    @ParameterizedTest
    @EnumSource(BlendMode.class)
    void staysWithinItsAlpha(BlendMode mode) {
        for (int i = 0; i <= 20; i++) {
            for (int k = 0; k <= 20; k++) {
                float blended = mode.blend(i / 20f, k / 20f);
                float laid = mode.over(i / 20f * 0.6f, 0.6f, k / 20f * 0.3f, 0.3f);

                assertThat(blended).isBetween(-CLOSE, 1 + CLOSE);
                assertThat(laid).isBetween(-CLOSE, mode.alphaOver(0.6f, 0.3f) + CLOSE);
            }
        }
    }

    /**
     * Follows from the formulas: these do not tell backdrop from source; overlay is hard-light with the two swapped.
     */
    @Test
    void symmetricModes() {
        BlendMode[] symmetric = {
            BlendMode.MULTIPLY,
            BlendMode.SCREEN,
            BlendMode.DIFFERENCE,
            BlendMode.EXCLUSION,
            BlendMode.DARKEN,
            BlendMode.LIGHTEN,
            BlendMode.PLUS_LIGHTER
        };
        for (int i = 0; i <= 16; i++) {
            for (int k = 0; k <= 16; k++) {
                float a = i / 16f;
                float b = k / 16f;
                for (BlendMode mode : symmetric) {
                    assertThat(mode.blend(a, b)).isEqualTo(mode.blend(b, a), within(CLOSE));
                }
                assertThat(BlendMode.OVERLAY.blend(a, b)).isEqualTo(BlendMode.HARD_LIGHT.blend(b, a));
            }
        }
    }

    /** T. Porter, T. Duff, SIGGRAPH 1984: over is associative on colours multiplied by their alphas. */
    @Test
    void sourceOverIsAssociative() {
        float[] alphas = {0, 0.2f, 0.5f, 0.9f, 1};
        for (float a : alphas) {
            for (float b : alphas) {
                for (float c : alphas) {
                    float lower = BlendMode.NORMAL.over(0.3f * a, a, 0.8f * b, b);
                    float leftFirst = BlendMode.NORMAL.over(lower, BlendMode.NORMAL.alphaOver(a, b), 0.6f * c, c);
                    float upper = BlendMode.NORMAL.over(0.8f * b, b, 0.6f * c, c);
                    float rightFirst = BlendMode.NORMAL.over(0.3f * a, a, upper, BlendMode.NORMAL.alphaOver(b, c));

                    assertThat(leftFirst).isEqualTo(rightFirst, within(CLOSE));
                }
            }
        }
    }

    /** A quotient of premultiplied floats may come out above 1; the blend function must not see that. */
    @Test
    void clampsBeforeBlending() {
        float alpha = 0.1f;
        float above = Math.nextUp(alpha);

        assertThat(BlendMode.COLOR_DODGE.over(0.5f, 1, above, alpha)).isBetween(0.5f, 0.6f);
        assertThat(BlendMode.COLOR_BURN.over(above, alpha, 0.05f, 0.5f)).isBetween(0f, 0.6f);
        assertThat(BlendMode.SCREEN.over(above, alpha, above, alpha)).isBetween(0f, 0.2f);
    }

    @Test
    void hasTheWordsOfTheSpecification() {
        assertThat(BlendMode.words())
                .containsExactly(
                        "normal",
                        "multiply",
                        "screen",
                        "overlay",
                        "darken",
                        "lighten",
                        "color-dodge",
                        "color-burn",
                        "hard-light",
                        "soft-light",
                        "difference",
                        "exclusion",
                        "plus-lighter");
        assertThat(BlendMode.of("plus-lighter")).contains(BlendMode.PLUS_LIGHTER);
        assertThat(BlendMode.of("Normal")).isEmpty();
        assertThat(BlendMode.of("hue")).isEmpty();
    }

    /** Red below blue: what is left of the red, the blue, and the alpha. */
    private static void assertOver(BlendMode mode, float as, float ab, float red, float blue, float alpha) {
        assertThat(mode.over(ab, ab, 0, as)).isEqualTo(red, within(CLOSE));
        assertThat(mode.over(0, ab, as, as)).isEqualTo(blue, within(CLOSE));
        assertThat(mode.alphaOver(ab, as)).isEqualTo(alpha, within(CLOSE));
    }
}
