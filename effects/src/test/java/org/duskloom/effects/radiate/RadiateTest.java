package org.duskloom.effects.radiate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RadiateTest {
    /** Five pixels about the middle, each in another direction: s = 0, 1/4, 1/2, 3/4 and just below 1. */
    private static final Canvas CROSS = Canvases.of(new double[][] {{0, 0}, {0.25, 0}, {0, 0.5}, {-0.75, 0}, {0, -1}});

    /** At φ = 0 u = frac(s), one band of width 1/2: lit where s < 1/2. */
    @Test
    void lightsTheRing() throws SettingException {
        assertThat(Painting.of(radiate(), CROSS, 0).alpha()).containsExactly(1, 1, 0, 0, 0);
    }

    /** At 0.5 s of 2 s, φ = 1/4: u = frac(s - 1/4) = 3/4, 0, 1/4, 1/2, nearly 3/4. */
    @Test
    void runsOut() throws SettingException {
        assertThat(Painting.of(radiate(), CROSS, 0.5).alpha()).containsExactly(0, 1, 1, 0, 0);
    }

    /** Backward, φ = -1/4: u = frac(s + 1/4) = 1/4, 1/2, 3/4, 0, nearly 1/4. */
    @Test
    void runsIn() throws SettingException {
        assertThat(Painting.of(radiate().flag("reverse"), CROSS, 0.5).alpha()).containsExactly(1, 0, 0, 1, 1);
    }

    /** With two bands u = frac(2 s) = 0, 1/2, 0, 1/2, just below 1. */
    @Test
    void hasSeveralRings() throws SettingException {
        assertThat(Painting.of(radiate().with("bands", 2), CROSS, 0).alpha()).containsExactly(1, 0, 1, 0, 0);
    }

    /** Colours from the inner edge, red to blue in linear light: at s = 1/4, u / width = 1/2, half of each. */
    @Test
    void laysThePaletteAcrossTheRing() throws SettingException {
        Painting painting = Painting.of(radiate().palette("red", "blue"), CROSS, 0);

        assertThat(painting.red()[0]).isCloseTo(1, within(2e-5f));
        assertThat(painting.red()[1]).isCloseTo(0.5f, within(2e-5f));
        assertThat(painting.blue()[1]).isCloseTo(0.5f, within(2e-5f));
    }

    /** From the left end of a row, distances are places along the row: the very same as a sweep to the right. */
    @Test
    void isASweepFromTheEndOfARow() throws SettingException {
        Canvas row = Canvases.of(Canvases.row(33));
        Look fromTheLeft = radiate().with("x", -1).with("bands", 3).palette("red", "gold", "navy");
        Look sweep = Look.of("sweep").seconds("every", 2).with("bands", 3).palette("red", "gold", "navy");

        for (double second : new double[] {0, 0.3, 1.7, 12.34}) {
            assertThat(Painting.of(fromTheLeft, row, second).isSame(Painting.of(sweep, row, second)))
                    .isTrue();
        }
    }

    /** The pixels of a ring differ in their distances by rounding; still all of them light or none. */
    @Test
    void lightsARingAsOne() throws SettingException {
        double[][] rings = new double[72][];
        for (int i = 0; i < 72; i++) {
            double radius = i < 24 ? 0.37 : 1;
            rings[i] = new double[] {radius * StrictMath.cos(i * 0.2617), radius * StrictMath.sin(i * 0.2617)};
        }
        Canvas canvas = Canvases.of(rings);
        for (int frame = 0; frame < 80; frame++) {
            float[] alpha = Painting.of(radiate(), canvas, frame / 40.0).alpha();
            float inner = alpha[0];
            float outer = alpha[24];
            assertThat(Arrays.copyOfRange(alpha, 0, 24)).containsOnly(inner);
            assertThat(Arrays.copyOfRange(alpha, 24, 72)).containsOnly(outer);
        }
    }

    /** Each member has its own farthest pixel: at φ = 0 both show s = 0, 1/2, nearly 1. */
    @Test
    void spansEachMember() throws SettingException {
        Canvas two = new Canvases()
                .member("small", new double[][] {{0, 0}, {0.1, 0}, {0, 0.2}})
                .member("large", new double[][] {{0, 0}, {0, -0.5}, {-1, 0}})
                .build();
        assertThat(Painting.of(radiate(), two, 0).alpha()).containsExactly(1, 0, 0, 1, 0, 0);
    }

    /** Twice as large a stage under the fit "none", the centre moved along: the same, as both numbers are exact. */
    @Test
    void doesNotDependOnTheScale() throws SettingException {
        double[][] places = Canvases.scattered(200);
        Look look = radiate().with("bands", 4).with("soft", 0.2).with("x", 0.25).with("y", -0.5);
        Painting before = Painting.of(look, Canvases.of(places), 0.7);
        Canvas doubled = Canvases.of(Canvases.moved(places, 2, 0, 0, 2));

        assertThat(Painting.of(look.with("x", 0.5).with("y", -1), doubled, 0.7).isSame(before))
                .isTrue();
    }

    /** A picture turned by a quarter about the middle, the centre along with it, is the same to the bit. */
    @Test
    void turnsWithTheStage() throws SettingException {
        double[][] places = Canvases.scattered(300);
        Look look = radiate().with("bands", 3).with("x", 0.25).with("y", -0.5).palette("red", "gold", "navy");
        Painting before = Painting.of(look, Canvases.of(places), 0.7);
        Canvas turned = Canvases.of(Canvases.moved(places, 0, -1, 1, 0));

        assertThat(Painting.of(look.with("x", 0.5).with("y", 0.25), turned, 0.7).isSame(before))
                .isTrue();
    }

    /** At 1 s the centre that moves from -1 to 1 in 2 s is in the middle. */
    @Test
    void movesItsCentre() throws SettingException {
        Look moving = radiate().moving("x", -1, 1, 2);
        Look still = radiate().with("bands", 1);

        assertThat(Painting.of(moving, CROSS, 1).isSame(Painting.of(still, CROSS, 1)))
                .isTrue();
        assertThat(Painting.of(moving, CROSS, 0).isSame(Painting.of(still.with("x", -1), CROSS, 0)))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 1.1, 7.9})
    void repeatsAfterAPass(double second) throws SettingException {
        Look look = radiate().with("bands", 2).seconds("every", 4);

        assertThat(Painting.of(look, CROSS, second + 4).alpha())
                .containsExactly(Painting.of(look, CROSS, second).alpha());
    }

    @Test
    void refusesTwoPaces() {
        assertThatThrownBy(() -> radiate().with("passes", 3).on(CROSS))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("every");
    }

    private static Look radiate() {
        return Look.of("radiate").seconds("every", 2);
    }
}
