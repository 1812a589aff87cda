package org.duskloom.effects.pile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PileTest {
    private static final Offset<Float> ROUNDING = within(1e-6f);

    /** Eight pixels, a light being two of them. */
    private static final Canvas ROW = Canvases.of(Canvases.row(8));

    /** Four lights in 8 s, 2 s each. */
    private static Look pile() {
        return Look.of("pile")
                .seconds("every", 8)
                .with("lights", 4)
                .with("hold", 0)
                .with("steady", "time");
    }

    private static float[] at(Look look, double second) throws SettingException {
        return Painting.of(look, ROW, second).alpha();
    }

    private static float[] mirrored(float[] values) {
        float[] mirrored = new float[values.length];
        for (int i = 0; i < values.length; i++) {
            mirrored[i] = values[values.length - 1 - i];
        }
        return mirrored;
    }

    /** After 1 s, the first light has gone half of its way of one length: it covers [1/2, 3/4), the pixels 4 and 5. */
    @Test
    void runsFromTheFarEnd() throws SettingException {
        assertThat(at(pile(), 0)).containsOnly(0);
        assertThat(at(pile(), 1)).containsExactly(0, 0, 0, 0, 1, 1, 0, 0);
    }

    /** At 1.125 s it has gone 9/16 of the way and covers [3.5/8, 5.5/8): half of pixel 3, all of 4, half of 5. */
    @Test
    void glidesBetweenPixels() throws SettingException {
        assertThat(at(pile(), 1.125)).containsExactly(0, 0, 0, 0.5f, 1, 0.5f, 0, 0);
    }

    /** At 5 s two lights rest, and the third has gone half of its way of 1/2: it covers [3/4, 1). */
    @Test
    void staysWhereItHasArrived() throws SettingException {
        assertThat(at(pile(), 5)).containsExactly(1, 1, 1, 1, 0, 0, 1, 1);
        assertThat(at(pile(), 6)).containsExactly(1, 1, 1, 1, 1, 1, 0, 0);
    }

    /** With one pass in 10/4 s a light runs one length a second: the first arrives at 1 s, the second 3/4 s later. */
    @Test
    void runsWithOneSpeed() throws SettingException {
        Look look = pile().with("steady", "speed").seconds("every", 2.5);
        assertThat(at(look, 0.5)).containsExactly(0, 0, 0, 0, 1, 1, 0, 0);
        assertThat(at(look, 1)).containsExactly(new float[] {1, 1, 0, 0, 0, 0, 0, 0}, ROUNDING);
        // 3/8 s later the second light has gone 3/8 and covers [5/8, 7/8).
        assertThat(at(look, 1.375)).containsExactly(new float[] {1, 1, 0, 0, 0, 1, 1, 0}, ROUNDING);
        assertThat(at(look, 1.75)).containsExactly(new float[] {1, 1, 1, 1, 0, 0, 0, 0}, ROUNDING);
    }

    /**
     * W3C CSS Easing: ease-in is 0.315357 half way, so after 1 s the light's lower end is at 1 - 0.315357, in pixel 5.
     */
    @Test
    void easesEachRun() throws SettingException {
        float[] alpha = at(pile().with("easing", "ease-in"), 1);
        assertThat(alpha[5]).isCloseTo(6 - 8 * (1 - 0.315357f), within(1e-5f));
        assertThat(alpha[6]).isEqualTo(1);
        assertThat(alpha[7]).isCloseTo(8 * (1.25f - 0.315357f) - 7, within(1e-5f));
    }

    /** A quarter of the pass is held: 6 s to fill, 1.5 s each, and 2 s full. */
    @Test
    void holdsTheFullPile() throws SettingException {
        Look look = pile().with("hold", 0.25);
        assertThat(at(look, 0.75)).containsExactly(0, 0, 0, 0, 1, 1, 0, 0);
        assertThat(at(look, 6)).containsOnly(1);
        assertThat(at(look, 7.9)).containsOnly(1);
        assertThat(at(look, 8.75)).containsExactly(0, 0, 0, 0, 1, 1, 0, 0);
        assertThat(at(pile().with("hold", 1), 0)).containsOnly(1);
    }

    /** In the second pass, the picture after w of it is the one after 1 - w of the first. */
    @Test
    void goesBack() throws SettingException {
        Look look = pile().with("then", "back");
        assertThat(at(look, 8 + 3)).containsExactly(at(look, 5));
        assertThat(at(look, 8 + 7)).containsExactly(at(look, 1));
        assertThat(at(look, 16 + 1)).containsExactly(at(look, 1));
    }

    /** In the second pass the lights leave at the ground: the mirrored picture of going back. */
    @Test
    void leavesThroughTheGround() throws SettingException {
        Look look = pile().with("then", "through");
        assertThat(at(look, 8)).containsOnly(1);
        assertThat(at(look, 8 + 3)).containsExactly(mirrored(at(look, 5)), ROUNDING);
        assertThat(at(look, 8 + 7)).containsExactly(mirrored(at(look, 1)), ROUNDING);
        assertThat(at(look, 16 + 1)).containsExactly(at(look, 1));
    }

    @Test
    void stays() throws SettingException {
        Look look = pile().with("then", "stay");
        assertThat(at(look, 5)).containsExactly(at(pile(), 5));
        assertThat(at(look, 8)).containsOnly(1);
        assertThat(at(look, 1000)).containsOnly(1);
        assertThat(at(look.with("phase", -1), 7)).containsOnly(0);
    }

    /** Built from the other end, it is the mirrored picture. */
    @Test
    void standsAtTheOtherEnd() throws SettingException {
        for (double second : new double[] {0.5, 1, 5, 7.5}) {
            assertThat(at(pile().with("ground", "end"), second))
                    .containsExactly(mirrored(at(pile(), second)), ROUNDING);
        }
    }

    /** Backward, the picture after 3 s is the one 3 s before the end; it begins with the full pile. */
    @ParameterizedTest
    @ValueSource(strings = {"again", "back", "stay"})
    void runsBackward(String then) throws SettingException {
        Look forward = pile().with("then", then);
        Look backward = pile().with("then", then).flag("reverse");
        assertThat(at(backward, 0)).containsOnly(1);
        assertThat(at(backward, 3)).containsExactly(at(forward, 5));
        assertThat(at(backward, 7)).containsExactly(at(forward, 1));
    }

    /** Light m of four has the place m/3 from red to blue; at 5 s the lights 0 and 1 rest, 2 runs. */
    @Test
    void givesEachLightItsColour() throws SettingException {
        Painting painting = Painting.of(pile().palette("red", "blue").with("along", "light"), ROW, 5);
        assertThat(painting.blue())
                .containsExactly(new float[] {0, 0, 1 / 3f, 1 / 3f, 0, 0, 2 / 3f, 2 / 3f}, within(2e-5f));
        assertThat(painting.red())
                .containsExactly(new float[] {1, 1, 2 / 3f, 2 / 3f, 0, 0, 1 / 3f, 1 / 3f}, within(2e-5f));
        assertThat(painting.alpha()).containsExactly(1, 1, 1, 1, 0, 0, 1, 1);
    }

    /**
     * Three lights on eight pixels are 8/3 of a pixel long, so pixel 2 has 2/3 of the first and 1/3 of the second,
     * pixel 5 1/3 of the second and 2/3 of the third: the mean of red, of half red and half blue, and of blue by those
     * shares, in linear light.
     */
    @Test
    void sharesAPixelBetweenTwoLights() throws SettingException {
        Look look = pile().with("lights", 3).palette("red", "blue").with("along", "light");
        Painting full = Painting.of(look.with("then", "stay"), ROW, 9);
        assertThat(full.blue()).containsExactly(new float[] {0, 0, 1 / 6f, 0.5f, 0.5f, 5 / 6f, 1, 1}, within(2e-5f));
        assertThat(full.red()).containsExactly(new float[] {1, 1, 5 / 6f, 0.5f, 0.5f, 1 / 6f, 0, 0}, within(2e-5f));
        assertThat(full.alpha()).containsOnly(1);
    }

    /**
     * More lights than pixels: 16 on 8, of which pixel i shows the lights 2i and 2i + 1, whose places are 2i/15 and (2i
     * + 1)/15.
     */
    @Test
    void gathersManyLightsInAPixel() throws SettingException {
        Look look = pile().with("lights", 16).palette("red", "blue").with("along", "light");
        float[] blue = Painting.of(look.with("then", "stay"), ROW, 9).blue();
        for (int i = 0; i < 8; i++) {
            assertThat(blue[i]).isCloseTo((4 * i + 1) / 30f, within(2e-5f));
        }
    }

    /**
     * A light that rests in a part of a pixel only lights that part with its own colour: of three lights after 4 s of
     * 12 the first rests, 2/3 of pixel 2; the second, half of the way from red to blue, is still outside.
     */
    @Test
    void lightsAPartOfAPixelInItsOwnColour() throws SettingException {
        Look look = pile().with("lights", 3)
                .palette("red", "blue")
                .with("along", "light")
                .seconds("every", 12);
        Painting painting = Painting.of(look, ROW, 4);
        assertThat(painting.red()).containsExactly(new float[] {1, 1, 2 / 3f, 0, 0, 0, 0, 0}, within(2e-5f));
        assertThat(painting.blue()).containsOnly(0);
    }

    /**
     * What is still to come: with the phase -1 a pile that stays is dark for its first pass. Backward it is that pile
     * with time turned round, and so stands full for a pass, goes within the next one, and is gone.
     */
    @Test
    void staysBackwardFromThePhaseOn() throws SettingException {
        Look backward = pile().with("then", "stay").with("phase", -1).flag("reverse");
        assertThat(at(backward, 0)).containsOnly(1);
        assertThat(at(backward, 7.9)).containsOnly(1);
        assertThat(at(backward, 8 + 3)).containsExactly(at(pile(), 5));
        assertThat(at(backward, 8 + 7)).containsExactly(at(pile(), 1));
        assertThat(at(backward, 16)).containsOnly(0);
        assertThat(at(backward, 100)).containsOnly(0);
    }

    /** Along the order, the places are 1/16, 3/16, ... whichever light shows them. */
    @Test
    void laysThePaletteAlongTheOrder() throws SettingException {
        Painting painting = Painting.of(pile().palette("red", "blue"), ROW, 5);
        assertThat(painting.blue()[0]).isCloseTo(1 / 16f, within(2e-5f));
        assertThat(painting.blue()[3]).isCloseTo(7 / 16f, within(2e-5f));
        assertThat(painting.blue()[7]).isCloseTo(15 / 16f, within(2e-5f));
    }

    /** Leaving through the ground, the light that is first to go is the first that came: red. */
    @Test
    void letsTheFirstLeaveFirst() throws SettingException {
        Look look = pile().palette("red", "blue").with("along", "light").with("then", "through");
        Painting painting = Painting.of(look, ROW, 8 + 0.25);
        // The lowest light has gone a part of its way of 1/4 out; the others rest.
        assertThat(painting.red()[0]).isEqualTo(painting.alpha()[0]).isGreaterThan(0);
        assertThat(painting.blue()[2]).isCloseTo(1 / 3f, within(2e-5f));
        assertThat(painting.blue()[7]).isCloseTo(1, within(2e-5f));
    }

    /**
     * No light is lost on the way: at any time the sum of the levels is what rests and what of the running light is
     * within the order, in pixels; the latter is 2, less what is still outside.
     */
    @Test
    void keepsItsLight() throws SettingException {
        for (double second = 0.05; second < 8; second += 0.1) {
            int arrived = (int) (second / 2);
            double way = 8 - 2 * arrived;
            double outside = Math.max(0, 2 - way * (second / 2 - arrived));
            double sum = 0;
            for (float level : at(pile(), second)) {
                sum += level;
            }
            assertThat(sum).isCloseTo(2 * arrived + 2 - outside, within(1e-5));
        }
    }
}
