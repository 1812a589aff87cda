package org.duskloom.effects.swell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwellTest {
    private static final Offset<Float> ROUNDING = within(1e-6f);
    private static final Canvas THREE = Canvases.of(Canvases.row(3));

    /** Attack, hold and decay of a quarter pass each, straight edges, a pass of 8 s: each quarter is 2 s. */
    private static Look straight() {
        return Look.of("swell")
                .seconds("every", 8)
                .with("attack", 0.25)
                .with("hold", 0.25)
                .with("decay", 0.25)
                .with("easing", "linear");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "0.5, 0.25",
        "1, 0.5",
        "2, 1",
        "3, 1",
        "4, 1",
        "4.5, 0.75",
        "5.5, 0.25",
        "6, 0",
        "7.5, 0",
        "9, 0.5"
    })
    void risesHoldsAndFalls(double second, float level) throws SettingException {
        assertThat(Painting.of(straight(), THREE, second).alpha())
                .containsExactly(new float[] {level, level, level}, ROUNDING);
    }

    /** A fifth is left between the pulses: 0.2 + 0.8 · 0.5 half way up. */
    @ParameterizedTest
    @CsvSource({"7, 0.2", "1, 0.6", "3, 1"})
    void doesNotFallBelowLow(double second, float level) throws SettingException {
        assertThat(level(straight().with("low", 0.2), second)).isCloseTo(level, ROUNDING);
    }

    /**
     * W3C CSS Easing Functions Level 1, computed from its definition: ease-in-out is 0.019722 at 0.1 and 0.129162 at
     * 0.25. The pass has 8 s, 4 up and 4 down; on the way down the curve is mirrored.
     */
    @ParameterizedTest
    @CsvSource({"0.4, 0.019722", "1, 0.129162", "2, 0.5", "6, 0.5", "7, 0.129162", "7.6, 0.019722"})
    void breathesAsTheEasingSays(double second, float level) throws SettingException {
        assertThat(level(Look.of("swell").seconds("every", 8), second)).isCloseTo(level, within(2e-6f));
    }

    /** The curve (.68,-.55,.265,1.55) is -0.066291 at 0.1 and 1.092090 at 0.8: dark and full, not beyond. */
    @Test
    void staysWithinDarkAndFull() throws SettingException {
        Look look = Look.of("swell").seconds("every", 8).with("easing", "cubic-bezier(.68,-.55,.265,1.55)");
        assertThat(level(look, 0.4)).isZero();
        assertThat(level(look, 3.2)).isEqualTo(1);
    }

    /** No attack: full at once; a decay of the whole pass is half gone after half of it. */
    @Test
    void hits() throws SettingException {
        Look hit = straight().with("attack", 0).with("hold", 0).with("decay", 1);
        assertThat(level(hit, 0)).isEqualTo(1);
        assertThat(level(hit, 4)).isCloseTo(0.5f, ROUNDING);
        assertThat(level(hit, 7.96)).isCloseTo(0.005f, ROUNDING);
    }

    /** Red to blue in linear light over the pass: after 3 s of 8, 3/8 of blue; the level is full. */
    @Test
    void runsThroughThePaletteInAPass() throws SettingException {
        Painting painting = Painting.of(straight().palette("red", "blue"), THREE, 3);
        assertThat(painting.red()[1]).isCloseTo(0.625f, within(2e-5f));
        assertThat(painting.blue()[1]).isCloseTo(0.375f, within(2e-5f));
    }

    /** Level 1/4: a quarter of the way from red to blue, at a quarter of the light. */
    @Test
    void followsTheLevel() throws SettingException {
        Painting painting = Painting.of(straight().palette("red", "blue").with("along", "level"), THREE, 0.5);
        assertThat(painting.red()[1]).isCloseTo(0.75f * 0.25f, within(2e-5f));
        assertThat(painting.blue()[1]).isCloseTo(0.25f * 0.25f, within(2e-5f));
        assertThat(painting.alpha()[1]).isCloseTo(0.25f, within(2e-5f));
    }

    /** Pass 0 is red, pass 1 lime, pass 2 blue, pass 3 red again; pass -1 is blue. */
    @Test
    void letsColoursTakeTurns() throws SettingException {
        Look look = straight().palette("red", "lime", "blue").with("along", "turn");
        for (int pass = 0; pass < 7; pass++) {
            Painting painting = Painting.of(look, THREE, 8 * pass + 3);
            float[] rgb = {painting.red()[0], painting.green()[0], painting.blue()[0]};
            for (int channel = 0; channel < 3; channel++) {
                assertThat(rgb[channel]).isCloseTo(channel == pass % 3 ? 1 : 0, within(2e-5f));
            }
        }
        assertThat(Painting.of(look.with("phase", -1), THREE, 3).blue()[0]).isCloseTo(1, within(2e-5f));
    }

    /** Backward, the picture after 1 s is the one 1 s before a pass has gone by. */
    @Test
    void runsBackward() throws SettingException {
        Look uneven = straight().with("attack", 0.5).with("hold", 0.125);
        for (double second : new double[] {0.5, 1, 3.25, 5, 7.5}) {
            assertThat(level(straight().with("attack", 0.5).with("hold", 0.125).flag("reverse"), second))
                    .isCloseTo(level(uneven, 8 - second), ROUNDING);
        }
    }

    /**
     * Backward, the first frame of a pass shows the end of it, and no flash of its other end: a hit ends dark, so
     * backward it begins dark; a light held to the end begins held, also where rounding makes attack and hold a little
     * less than 1.
     */
    @Test
    void beginsBackwardWithTheEnd() throws SettingException {
        Look hit = straight().with("attack", 0).with("hold", 0).with("decay", 1).flag("reverse");
        assertThat(level(hit, 0)).isZero();
        assertThat(level(hit, 0.8)).isCloseTo(0.1f, ROUNDING);
        assertThat(level(hit, 8)).isZero();

        Look held = straight()
                .with("attack", 0.7)
                .with("hold", 0.3)
                .with("decay", 0)
                .flag("reverse");
        assertThat(level(held, 0)).isEqualTo(1);
        assertThat(level(held, 8)).isEqualTo(1);
    }

    /** Backward, colours take turns from the last to the first; along the pass, the first frame has the last colour. */
    @Test
    void beginsBackwardWithTheLastColour() throws SettingException {
        Look turns = held().palette("red", "lime", "blue").with("along", "turn").flag("reverse");
        assertThat(Painting.of(turns, THREE, 0).blue()[0]).isCloseTo(1, within(2e-5f));
        assertThat(Painting.of(turns, THREE, 7.9).blue()[0]).isCloseTo(1, within(2e-5f));
        assertThat(Painting.of(turns, THREE, 8).green()[0]).isCloseTo(1, within(2e-5f));

        Look along = held().palette("red", "blue").flag("reverse");
        assertThat(Painting.of(along, THREE, 0).blue()[0]).isCloseTo(1, within(2e-5f));
    }

    private static Look held() {
        return straight().with("attack", 0).with("hold", 1).with("decay", 0);
    }

    /**
     * The decay is the attack's curve mirrored in time, E(1 − p), and not upside down, 1 − E(p). That of a curve that
     * is not symmetric tells the two apart: W3C CSS Easing Functions Level 1, ease-in, computed from its definition, is
     * 0.093465 at 0.25 and 0.315357 at 0.5. After a quarter of a decay of 4 s the level is ease-in at 0.75, 0.621861;
     * after half 0.315357, and not 0.684643.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.093465", "2, 0.315357", "5, 0.621861", "6, 0.315357", "7, 0.093465"})
    void mirrorsTheAttackInTheDecay(double second, float level) throws SettingException {
        Look look = Look.of("swell").seconds("every", 8).with("easing", "ease-in");
        assertThat(level(look, second)).isCloseTo(level, within(2e-6f));
    }

    /** Two passes within a cue of ten seconds: each has 5 s, a quarter of it 1.25 s. */
    @Test
    void countsPasses() throws SettingException {
        Look look = Look.of("swell")
                .with("passes", 2)
                .with("attack", 0.25)
                .with("decay", 0.75)
                .with("easing", "linear");
        assertThat(level(look, 0.625)).isCloseTo(0.5f, ROUNDING);
        assertThat(level(look, 6.25)).isEqualTo(1);
    }

    @Test
    void refusesPulsesLongerThanThePass() {
        assertThatThrownBy(() -> straight().with("attack", 0.6).on(THREE))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.setting()).isEqualTo("decay");
                    assertThat(e).hasMessageContaining("0.6").hasMessageContaining("0.25");
                    assertThat(e.hint()).isNotEmpty();
                });
    }

    /**
     * Attack and decay move from 1 to 0 in 16 s: at 4 s both are 3/4 and together 3/2, so they are shortened to halves:
     * half of the pass of 8 s has gone by, and the light is full. At 2 s both are 7/8 and shortened to halves too: half
     * way up.
     */
    @Test
    void shortensMovingEdgesInProportion() throws SettingException {
        Look look = Look.of("swell")
                .seconds("every", 8)
                .with("easing", "linear")
                .moving("attack", 1, 0, 16)
                .moving("decay", 1, 0, 16);
        assertThat(level(look, 4)).isEqualTo(1);
        assertThat(level(look, 2)).isCloseTo(0.5f, ROUNDING);
    }

    @Test
    void refusesWhatIsNoEasing() {
        assertThatThrownBy(() -> straight().with("easing", "ease-inn").on(THREE))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.setting()).isEqualTo("easing");
                    assertThat(e).hasMessageContaining("ease-inn");
                    assertThat(e.hint()).contains("ease-in");
                });
    }

    private static float level(Look look, double second) throws SettingException {
        return Painting.of(look, THREE, second).alpha()[0];
    }
}
