package org.duskloom.effects.spin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpinTest {
    private static final Offset<Float> ROUNDING = within(2e-5f);

    /** Right, up, left, down: a = 0, 1/4, 1/2, 3/4; then the centre, where a = 0. */
    private static final Canvas CROSS = Canvases.of(
            new double[] {1, 0}, new double[] {0, 1}, new double[] {-1, 0}, new double[] {0, -1}, new double[] {0, 0});

    /** One arm of half the turn: u = a < 1/2 on the right, up and in the centre. */
    @Test
    void standsAtFirst() throws SettingException {
        assertThat(Painting.of(spin(), CROSS, 0).alpha()).containsExactly(1, 1, 0, 0, 1);
    }

    /** After a quarter turn, counter-clockwise: u = frac(a - 1/4) < 1/2 up and on the left. */
    @Test
    void turnsCounterClockwise() throws SettingException {
        assertThat(Painting.of(spin(), CROSS, 0.5).alpha()).containsExactly(0, 1, 1, 0, 0);
    }

    /** Clockwise, after a quarter turn: u = frac(a + 1/4) < 1/2 on the right (1/4), below (0) and in the centre. */
    @Test
    void turnsClockwise() throws SettingException {
        assertThat(Painting.of(spin().flag("reverse"), CROSS, 0.5).alpha()).containsExactly(1, 0, 0, 1, 1);
    }

    /** Two arms: u = frac(2 a) is 0 on the right and left, 1/2 above and below, which is just outside. */
    @Test
    void hasSeveralArms() throws SettingException {
        assertThat(Painting.of(spin().with("arms", 2), CROSS, 0).alpha()).containsExactly(1, 0, 1, 0, 1);
    }

    /** Bend 1/2: outside, at r = 1, u = frac(a + 1/2): lit on the left and below; the centre stays. */
    @Test
    void bends() throws SettingException {
        assertThat(Painting.of(spin().with("bend", 0.5), CROSS, 0).alpha()).containsExactly(0, 0, 1, 1, 1);
    }

    /**
     * A centre at (1, 0) sees the pixel there at a = 0; up and left and down and the middle lie at 3/8, 1/2, 5/8 and
     * 1/2.
     */
    @Test
    void turnsAboutAnotherCentre() throws SettingException {
        assertThat(Painting.of(spin().with("x", 1), CROSS, 0).alpha()).containsExactly(1, 1, 0, 0, 0);
        assertThat(Painting.of(spin().moving("x", 0, 2, 2), CROSS, 1)
                        .isSame(Painting.of(spin().with("x", 1), CROSS, 1)))
                .isTrue();
    }

    /**
     * Across an arm of the full turn, red to blue: up, u = 1/4, so blue 1/4. Outward, blue = r: 0 in the centre, 1
     * outside.
     */
    @Test
    void laysThePaletteAcrossOrOutward() throws SettingException {
        Look look = spin().with("width", 1).palette("red", "blue");

        assertThat(Painting.of(look, CROSS, 0).blue()[1]).isCloseTo(0.25f, ROUNDING);
        assertThat(Painting.of(look.with("along", "radius"), CROSS, 0).blue())
                .containsExactly(new float[] {1, 1, 1, 1, 0}, ROUNDING);
    }

    /** A stage turned by a quarter shows what was there a quarter of a turn earlier. */
    @Test
    void turnsWithTheStage() throws SettingException {
        double[][] places = Canvases.scattered(200);
        Canvas upright = Canvases.of(places);
        Canvas turned = Canvases.of(Canvases.moved(places, 0, -1, 1, 0));
        Look look = spin().with("arms", 3).with("soft", 0.5).palette("gold", "navy");

        assertThat(Painting.of(look, turned, 1).red())
                .containsExactly(Painting.of(look, upright, 0.5).red(), within(1e-4f));
    }

    private static Look spin() {
        return Look.of("spin").with("arms", 1).seconds("every", 2);
    }

    /**
     * The formula of the reference with the arc tangent of the library, for two members about any centre. Where a float
     * may round to the other side of an edge nothing is said.
     */
    @ParameterizedTest
    @CsvSource({"1, 0, 0, 0", "3, 0.7, 0.2, -0.4", "100, 0, 3, 5", "5, -2.5, -0.1, 0.1", "2, 40, 0, 0.5"})
    void isItsFormula(int arms, double bend, double x, double y) throws SettingException {
        double[][] places = Canvases.scattered(300);
        Canvas canvas = new Canvases()
                .member("near", Arrays.copyOf(places, 120))
                .member("far", Arrays.copyOfRange(places, 120, 300))
                .build();
        Look look = spin().with("arms", arms).with("bend", bend).with("x", x).with("y", y);
        look = look.with("width", 0.4).palette("red", "blue");
        for (double second : new double[] {0, 0.3, 1.9, 777.7}) {
            Painting painting = Painting.of(look, canvas, second);
            for (int pixel = 0; pixel < 300; pixel++) {
                double right = places[pixel][0] - x;
                double up = places[pixel][1] - y;
                double turns = Math.atan2(up, right) / (2 * Math.PI);
                double wound = arms * (turns - second / 2) + bend * Math.hypot(right, up);
                double u = wound - Math.floor(wound);
                double edge = Math.min(Math.min(u, 1 - u), Math.abs(u - 0.4));
                if (edge > 1e-5) {
                    assertThat(painting.alpha()[pixel]).as("pixel %s", pixel).isEqualTo(u < 0.4 ? 1 : 0);
                    assertThat((double) painting.blue()[pixel]).isCloseTo(u < 0.4 ? u / 0.4 : 0, within(1e-4));
                }
            }
        }
    }
}
