package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cues and layers mixed by the whole renderer, against W3C Compositing and Blending Level 1 and 2: linear light goes
 * in, the formulas of the specification are applied to it, and the result comes out as sRGB codes.
 */
class CompositingTest {
    private static final PixelMap ONE = Maps.map("prop,pixel,x,y\na,1,0,0\n");

    /**
     * B(Cb, Cs) of two opaque colours, from the definitions in Level 1, "Separable blend modes", and Level 2,
     * "plus-lighter"; and the case of Cb .6 (opaque) under Cs .2 with alpha .5.
     */
    @ParameterizedTest
    @CsvSource({
        "normal,      0.6,  0.2,   0.75,   0.5, 1, 0, 0.4",
        "multiply,    0.12, 0.12,  0.1875, 0.4, 0, 0, 0.36",
        "screen,      0.68, 0.68,  0.8125, 0.9, 1, 1, 0.64",
        "overlay,     0.24, 0.36,  0.375,  0.8, 0, 1, 0.48",
        "darken,      0.2,  0.2,   0.25,   0.5, 0, 0, 0.4",
        "lighten,     0.6,  0.6,   0.75,   0.8, 1, 1, 0.6",
        "color-dodge, 0.5,  0.75,  1,      1,   0, 1, 0.675",
        "color-burn,  0,    0,     0,      0.6, 0, 1, 0.3",
        "hard-light,  0.36, 0.24,  0.625,  0.8, 1, 0, 0.42",
        "soft-light,  0.2496, 0.456, 0.375, 0.8, 0, 1, 0.528",
        "difference,  0.4,  0.4,   0.5,    0.3, 1, 1, 0.5",
        "exclusion,   0.56, 0.56,  0.625,  0.5, 1, 1, 0.58",
        "plus-lighter, 0.8, 0.8,   1,      1,   1, 1, 0.7"
    })
    void blendsLayersOverTheOpaqueStage(
            String mode, double a, double b, double c, double d, double e, double f, double translucent) {
        double[][] pairs = {{0.2, 0.6}, {0.6, 0.2}, {0.25, 0.75}, {0.8, 0.5}, {0, 1}, {1, 0}};
        double[] expected = {a, b, c, d, e, f};
        for (int i = 0; i < pairs.length; i++) {
            assertThat(red(grey(pairs[i][0], 1), "\"blend\": \"" + mode + "\"", grey(pairs[i][1], 1)))
                    .as("%s of %s under %s", mode, pairs[i][0], pairs[i][1])
                    .isEqualTo(Frames.code(expected[i]));
        }
        assertThat(red(grey(0.6, 1), "\"blend\": \"" + mode + "\"", grey(0.2, 0.5)))
                .isEqualTo(Frames.code(translucent));
        // The same with the alpha as an opacity of the layer or of the cue.
        assertThat(red(grey(0.6, 1), "\"opacity\": 0.5, \"blend\": \"" + mode + "\"", grey(0.2, 1)))
                .isEqualTo(Frames.code(translucent));
        assertThat(red(grey(0.6, 1), "\"blend\": \"" + mode + "\"", grey(0.2, 1, "\"opacity\": 0.5")))
                .isEqualTo(Frames.code(translucent));
    }

    /**
     * Within a layer nothing is opaque beforehand: Cb .2 with alpha .5 under Cs .6 with alpha .4. What is seen over the
     * black stage is the premultiplied result co. All rows are computed from Level 1, "General Formula", but the last,
     * which is Level 2, "plus-lighter".
     */
    @ParameterizedTest
    @CsvSource({
        "normal, 0.3",
        "multiply, 0.204",
        "screen, 0.316",
        "overlay, 0.228",
        "darken, 0.22",
        "lighten, 0.3",
        "color-dodge, 0.28",
        "color-burn, 0.18",
        "hard-light, 0.252",
        "soft-light, 0.22992",
        "difference, 0.26",
        "exclusion, 0.292",
        "plus-lighter, 0.34"
    })
    void blendsCuesWithinALayer(String mode, double expected) {
        String cues = grey(0.2, 0.5) + ", " + grey(0.6, 0.4, "\"blend\": \"" + mode + "\"");
        assertThat(red(cues)).isEqualTo(Frames.code(expected));
        // A layer covers what is under it by ao: .7; with plus-lighter .9.
        double covered = mode.equals("plus-lighter") ? 0.9 : 0.7;
        assertThat(red(grey(0.5, 1), "\"blend\": \"normal\"", cues))
                .isEqualTo(Frames.code(expected + (1 - covered) * 0.5));
    }

    /**
     * Blue over red: co is what is seen over black. The first three rows are printed in Level 1, "Simple alpha
     * compositing"; the last two are the cross-fade of Level 2, source-over and "plus-lighter".
     */
    @ParameterizedTest
    @CsvSource({
        "1,    1,    normal,       0,      1",
        "1,    0.5,  normal,       0.5,    0.5",
        "0.5,  0.5,  normal,       0.25,   0.5",
        "0.25, 0.25, normal,       0.1875, 0.25",
        "0.25, 0.25, plus-lighter, 0.25,   0.25"
    })
    void showsTheExamplesOfTheSpecification(double redAlpha, double blueAlpha, String mode, double red, double blue) {
        String cues = light(1, 0, 0, redAlpha, "\"blend\": \"normal\"") + ", "
                + light(0, 0, 1, blueAlpha, "\"blend\": \"" + mode + "\"");
        assertThat(Frames.codes(Frames.frame(plan(layer(cues)), 0), 0)).isEqualTo(Frames.codesOf(red, 0, blue));
    }

    /** Level 2, "plus-lighter": co and ao are cut at 1. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.5, 0.6, 0.4, 0.34", "0.6, 1, 0.7, 0.8, 1", "0.5, 0.75, 0.5, 0.5, 0.625"})
    void addsLight(double under, double underAlpha, double over, double overAlpha, double expected) {
        assertThat(red(grey(under, underAlpha) + ", " + grey(over, overAlpha, "\"blend\": \"plus-lighter\"")))
                .isEqualTo(Frames.code(expected));
    }

    /** An isolated group (Level 1, "Group compositing"): its cues do not blend with what lies under the layer. */
    @Test
    void isolatesTheCuesOfALayer() {
        String multiplied = grey(0.2, 1, "\"blend\": \"multiply\"");
        assertThat(red(grey(0.5, 1), "\"opacity\": 1", multiplied)).isEqualTo(Frames.code(0.2));
        assertThat(red(grey(0.5, 1), "\"opacity\": 1", multiplied + ", " + grey(1, 0)))
                .isEqualTo(Frames.code(0.2));
    }

    /** A layer's opacity dims the group as one: what is hidden inside stays hidden. */
    @Test
    void dimsALayerAsOne() {
        String cues = light(1, 0, 0, 1, "\"blend\": \"normal\"") + ", " + light(0, 0, 1, 1, "\"blend\": \"normal\"");
        assertThat(Frames.codes(Frames.frame(plan("{\"opacity\": 0.5, \"cues\": [" + cues + "]}"), 0), 0))
                .isEqualTo(Frames.codesOf(0, 0, 0.5));
    }

    /** A pixel in two members is painted twice within the layer, and blended with what is under the layer once. */
    @Test
    void blendsALayerOnceWhereMembersOverlap() {
        PixelMap map = Maps.map("prop,pixel,x,y,part\na,1,0,0,eye\na,2,1,0,\n");
        Plan plan = TestShow.of(map, """
                        "layers": [{"cues": [{"on": "a", "effect": "light", "with": {"r": 0.8}}]},
                          {"blend": "difference", "cues": [
                            {"on": ["a", "a/eye"], "effect": "light", "with": {"r": 0.5}, "spread": "each"}]}]""").plan();
        byte[] frame = Frames.frame(plan, 0);
        assertThat(Frames.codes(frame, 0)[0]).isEqualTo(Frames.code(0.3));
        assertThat(Frames.codes(frame, 1)[0]).isEqualTo(Frames.code(0.3));
    }

    @Test
    void multipliesTheOpacitiesOfCueAndLayer() {
        for (String cues :
                new String[] {grey(1, 0.8, "\"opacity\": 0.5"), grey(1, 0.8, "\"opacity\": 0.5") + ", " + grey(1, 0)}) {
            assertThat(red(grey(0.1, 1), "\"opacity\": 0.25", cues)).isEqualTo(Frames.code(0.1 * 0.9 + 0.1));
        }
    }

    @Test
    void paintsLaterCuesAndLayersOverEarlierOnes() {
        assertThat(red(grey(0.2, 1) + ", " + grey(0.7, 1))).isEqualTo(Frames.code(0.7));
        assertThat(red(grey(0.2, 1), "\"opacity\": 1", grey(0.7, 1))).isEqualTo(Frames.code(0.7));
    }

    /**
     * A mask multiplies what is under it by its relative luminance, .2126 R + .7152 G + .0722 B (W3C WCAG 2.2,
     * "relative luminance"), as far as its opacity goes; transparent black counts as black where a cue of the mask is
     * (W3C CSS Masking Level 1, luminance masks).
     */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 1, 1, 1, 1",
        "0, 0, 0, 1, 1, 0",
        "0.5, 0.5, 0.5, 1, 1, 0.5",
        "1, 0, 0, 1, 1, 0.2126",
        "0, 1, 0, 1, 1, 0.7152",
        "0, 0, 1, 1, 1, 0.0722",
        "1, 1, 1, 0.25, 1, 0.25",
        "0, 0, 0, 1, 0.25, 0.75",
        "1, 0, 0, 0.5, 0.5, 0.55315",
        "1, 1, 1, 0, 1, 0"
    })
    void gatesWhatIsUnderAMask(double r, double g, double b, double a, double layerOpacity, double factor) {
        Plan plan = plan(
                layer(light(0.8, 0.4, 0.2, 1, "\"blend\": \"normal\"")),
                "{\"mask\": true, \"opacity\": " + layerOpacity + ", \"cues\": ["
                        + light(r, g, b, a, "\"blend\": \"normal\"") + "]}");
        assertThat(Frames.codes(Frames.frame(plan, 0), 0))
                .isEqualTo(Frames.codesOf(0.8 * factor, 0.4 * factor, 0.2 * factor));
    }

    /** A mask on one prop hides that prop; the other one stays, and so does what is above the mask. */
    @Test
    void hidesOnlyWhatIsUnderAMask() {
        PixelMap two = Maps.map("prop,pixel,x,y\na,1,0,0\nb,1,1,0\n");
        Plan plan = TestShow.of(
                        two,
                        "\"layers\": ["
                                + layer(grey(0.8, 1).replace("\"a\"]", "\"*\"]")) + ", {\"mask\": true, \"cues\": ["
                                + grey(0, 1)
                                + "]}, " + "{\"blend\": \"plus-lighter\", \"cues\": ["
                                + grey(0.1, 1).replace("\"a\"]", "\"*\"]") + "]}]")
                .plan();
        byte[] frame = Frames.frame(plan, 0);
        assertThat(Frames.codes(frame, 0)[0]).isEqualTo(Frames.code(0.1));
        assertThat(Frames.codes(frame, 1)[0]).isEqualTo(Frames.code(0.9));
    }

    @Test
    void leavesEverythingAsItIsWhereAMaskHasNoCueAtTheTime() {
        Plan plan = plan(
                layer(grey(0.8, 1)),
                "{\"mask\": true, \"cues\": [" + grey(0.5, 1, "\"at\": \"1s\", \"for\": \"1s\"") + "]}");
        assertThat(Frames.codes(Frames.frame(plan, 39), 0)[0]).isEqualTo(Frames.code(0.8));
        assertThat(Frames.codes(Frames.frame(plan, 40), 0)[0]).isEqualTo(Frames.code(0.4));
        assertThat(Frames.codes(Frames.frame(plan, 80), 0)[0]).isEqualTo(Frames.code(0.8));
    }

    /**
     * Half there, a black cue leaves half the light: 1 - 0.5 (1 - 0); two of them a quarter; a white one on top as
     * much.
     */
    @Test
    void gatesAsFarAsTheCuesOfAMaskAreThere() {
        String half = "\"opacity\": 0.5";
        assertThat(gated(grey(0, 1, half))).isEqualTo(Frames.code(0.8 * 0.5));
        assertThat(gated(grey(0, 1, half) + "," + grey(0, 1, half))).isEqualTo(Frames.code(0.8 * 0.25));
        assertThat(gated(grey(1, 1, half))).isEqualTo(Frames.code(0.8));
        assertThat(gated(grey(0, 1) + "," + grey(1, 1, half))).isEqualTo(Frames.code(0.8 * 0.5));
    }

    /**
     * A member of a mask that has not begun is dark, so it hides; how far, its opacity and fade at its beginning say.
     */
    @Test
    void gatesLateMembersByTheirOwnClocks() {
        Plan white = staggeredMask(grey(1, 1, "\"spread\": \"each\", \"stagger\": \"1s\""));
        assertThat(reds(white, 0)).containsExactly(Frames.code(0.8), 0);
        assertThat(reds(white, 39)).containsExactly(Frames.code(0.8), 0);
        assertThat(reds(white, 40)).containsExactly(Frames.code(0.8), Frames.code(0.8));
        Plan black = staggeredMask(grey(0, 1, "\"spread\": \"each\", \"stagger\": \"1s\", \"fade\": {\"in\": \"1s\"}"));
        assertThat(reds(black, 20)).containsExactly(Frames.code(0.4), Frames.code(0.8));
        assertThat(reds(black, 60)).containsExactly(0, Frames.code(0.4));
        assertThat(reds(black, 80)).containsExactly(0, 0);
    }

    private static Plan staggeredMask(String cue) {
        PixelMap two = Maps.map("prop,pixel,x,y\na,1,0,0\nb,1,1,0\n");
        String everywhere = "\"*\"]";
        return TestShow.of(
                        two,
                        "\"layers\": [" + layer(grey(0.8, 1).replace("\"a\"]", everywhere))
                                + ", {\"mask\": true, \"cues\": [" + cue.replace("\"a\"]", everywhere) + "]}]")
                .plan();
    }

    private static int[] reds(Plan plan, long frame) {
        byte[] rgb = Frames.frame(plan, frame);
        return new int[] {Frames.codes(rgb, 0)[0], Frames.codes(rgb, 1)[0]};
    }

    private static int gated(String maskCues) {
        Plan plan = plan(layer(grey(0.8, 1)), "{\"mask\": true, \"cues\": [" + maskCues + "]}");
        return Frames.codes(Frames.frame(plan, 0), 0)[0];
    }

    /**
     * Code values are decoded once and encoded once, by the two formulas of IEC 61966-2-1, so they come out as they
     * went in.
     */
    @Test
    void encodesWhatTheTimelineWroteAsItWasWritten() {
        for (int code = 0; code < 256; code++) {
            String cue = "{\"on\": \"a\", \"effect\": \"solid\", \"with\": {\"color\": \"#%02x0a%02x\"}}"
                    .formatted(code, 255 - code);
            assertThat(Frames.codes(Frames.frame(plan(layer(cue)), 0), 0)).containsExactly(code, 10, 255 - code);
        }
    }

    private static int red(String cues) {
        return Frames.codes(Frames.frame(plan(layer(cues)), 0), 0)[0];
    }

    private static int red(String groundCues, String layerFields, String cues) {
        Plan plan = plan(layer(groundCues), "{" + layerFields + ", \"cues\": [" + cues + "]}");
        return Frames.codes(Frames.frame(plan, 0), 0)[0];
    }

    private static Plan plan(String... layers) {
        return TestShow.of(ONE, "\"layers\": [" + String.join(", ", layers) + "]")
                .plan();
    }

    private static String layer(String cues) {
        return "{\"cues\": [" + cues + "]}";
    }

    private static String grey(double light, double alpha) {
        return grey(light, alpha, "\"fade\": {}");
    }

    private static String grey(double light, double alpha, String fields) {
        return light(light, light, light, alpha, fields);
    }

    private static String light(double r, double g, double b, double a, String fields) {
        return "{\"on\": [\"a\"], \"effect\": \"light\", \"with\": {\"r\": %s, \"g\": %s, \"b\": %s, \"a\": %s}, %s}"
                .formatted(r, g, b, a, fields);
    }
}
