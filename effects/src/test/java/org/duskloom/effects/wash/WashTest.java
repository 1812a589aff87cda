package org.duskloom.effects.wash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ColorKey;
import org.duskloom.engine.effect.ColorTrack;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WashTest {
    private static final Offset<Float> ROUNDING = within(2e-5f);
    private static final Canvas ROW = Canvases.of(Canvases.row(5));

    @Test
    void isWhiteUnlessSaidOtherwise() throws SettingException {
        Painting painting = Painting.of(Look.of("wash"), ROW, 1);

        assertThat(painting.red()).containsOnly(1f);
        assertThat(painting.blue()).containsOnly(1f);
        assertThat(painting.alpha()).containsOnly(1f);
    }

    /** s = 0, 1/4, 1/2, 3/4, 1 from left to right; mixed in linear light, blue = s and red = 1 - s. */
    @Test
    void runsFromLeftToRight() throws SettingException {
        Painting painting = Painting.of(Look.of("wash").palette("red", "blue"), ROW, 1);

        for (int i = 0; i < 5; i++) {
            assertThat(painting.blue()[i]).isCloseTo(i / 4f, ROUNDING);
            assertThat(painting.red()[i]).isCloseTo(1 - i / 4f, ROUNDING);
        }
    }

    /** From the centre, r = 1, 1/2, 0, 1/2, 1, which is its own range already. */
    @Test
    void runsOutward() throws SettingException {
        Painting painting = Painting.of(Look.of("wash").palette("red", "blue").with("from", "centre"), ROW, 1);

        assertThat(painting.blue()[2]).isZero();
        assertThat(painting.blue()[1]).isCloseTo(0.5f, ROUNDING);
        assertThat(painting.blue()[3]).isCloseTo(0.5f, ROUNDING);
        assertThat(painting.blue()[4]).isEqualTo(1f);
    }

    /** A ring has one radius: there is no range, and all is the first colour. */
    @Test
    void hasNoRangeOnARing() throws SettingException {
        Canvas ring = Canvases.of(new double[] {1, 0}, new double[] {0, 1}, new double[] {-0.6, 0.8});
        Painting painting = Painting.of(Look.of("wash").palette("red", "blue").with("from", "centre"), ring, 1);

        assertThat(painting.red()).containsOnly(1f);
    }

    /** Toward 90 degrees at 1 s: on a row all pixels are side by side, so s = 0; at 0 s it runs to the right. */
    @Test
    void turns() throws SettingException {
        Look look = Look.of("wash").palette("red", "blue").moving("toward", 0, 180, 2);

        assertThat(Painting.of(look, ROW, 1).red()).containsOnly(1f);
        assertThat(Painting.of(look, ROW, 0).blue()[4]).isEqualTo(1f);
        assertThat(Painting.of(look, ROW, 2).blue()[0]).isEqualTo(1f);
    }

    /**
     * Half-way between the two keys, mixed in linear light: half of each. Premultiplied: alpha 1/2 halves the light.
     */
    @Test
    void changesItsColour() throws SettingException {
        ColorTrack track = ColorTrack.keyed(
                List.of(
                        new ColorKey(0, Look.color("red"), Look.linear()),
                        new ColorKey(4, Look.color("blue"), Look.linear())),
                ColorMix.LINEAR);
        Painting painting = Painting.of(Look.of("wash").with("color", track), ROW, 2);

        assertThat(painting.red()[0]).isCloseTo(0.5f, ROUNDING);
        assertThat(painting.blue()[4]).isCloseTo(0.5f, ROUNDING);

        ColorTrack glass = ColorTrack.constant(Look.color("red").withAlpha(0.5f));
        assertThat(Painting.of(Look.of("wash").with("color", glass), ROW, 0).red())
                .containsOnly(0.5f);
    }

    /** The share along 45 degrees of a square's corners: lower left 0, upper right 1, the others half of the way. */
    @Test
    void runsTowardAnyDirection() throws SettingException {
        Canvas square =
                Canvases.of(new double[] {-1, -1}, new double[] {1, -1}, new double[] {-1, 1}, new double[] {1, 1});
        Look wash = Look.of("wash").palette("red", "blue");
        assertThat(Painting.of(wash.with("toward", 45), square, 0).blue())
                .containsExactly(new float[] {0, 0.5f, 0.5f, 1}, ROUNDING);
        assertThat(Painting.of(wash.with("toward", 270), square, 0).blue())
                .containsExactly(new float[] {1, 1, 0, 0}, ROUNDING);
        assertThat(Painting.of(wash.with("toward", 45 - 360), square, 0).blue())
                .containsExactly(new float[] {0, 0.5f, 0.5f, 1}, ROUNDING);
    }

    /** Each member has a gradient of its own, however long it is and wherever it hangs. */
    @Test
    void everyMemberHasTheWholeGradient() throws SettingException {
        Canvas two = new Canvases()
                .member("near", new double[] {-1, 0}, new double[] {-0.9, 0}, new double[] {-0.8, 0})
                .member("far", new double[] {0, 0.5}, new double[] {0.5, 0.5}, new double[] {1, 0.5})
                .build();
        assertThat(Painting.of(Look.of("wash").palette("red", "blue"), two, 0).blue())
                .containsExactly(new float[] {0, 0.5f, 1, 0, 0.5f, 1}, within(1e-4f));
    }

    /** W3C Compositing: light is multiplied by its alpha; half of the way from glass to red are 3/4 of red. */
    @Test
    void glassLetsLightThrough() throws SettingException {
        Palette glass = Palette.evenly(
                List.of(Look.color("red").withAlpha(0.5f), Look.color("red")),
                new PaletteStyle(ColorMix.LINEAR, false, false));
        for (String from : List.of("edge", "centre")) {
            Painting painting =
                    Painting.of(Look.of("wash").with("palette", glass).with("from", from), ROW, 3);
            assertThat(painting.red()).containsExactly(painting.alpha(), ROUNDING);
            assertThat(painting.blue()).containsOnly(0f);
        }
        assertThat(Painting.of(Look.of("wash").with("palette", glass), ROW, 3).alpha())
                .containsExactly(new float[] {0.5f, 0.625f, 0.75f, 0.875f, 1}, ROUNDING);
    }

    /** What stays is computed once and copied, what moves is computed in each frame: at rest they are the same. */
    @Test
    void aPaletteThatMovesIsWhatItIsAtThatTime() throws SettingException {
        Palette warm = Look.evenly(ColorMix.LINEAR, "red", "blue");
        Palette cold = Look.evenly(ColorMix.LINEAR, "lime", "white");
        Look moving = Look.of("wash").movingPalettes(warm, cold, warm);
        Painting first = Painting.of(moving, ROW, 0);
        assertThat(first.red())
                .containsExactly(
                        Painting.of(Look.of("wash").with("palette", warm), ROW, 9)
                                .red(),
                        within(1e-4f));
        assertThat(first.green()).containsOnly(0f);
    }

    /** Any three patches of it together are the whole. */
    @Test
    void patchesFitTogether() throws SettingException {
        Canvas grid = Canvases.of(Canvases.grid(7, 5));
        Look wash = Look.of("wash").palette("red", "blue").with("from", "centre");
        Painting whole = Painting.of(wash, grid, 0);
        assertThat(Painting.of(wash.on(grid).open(), grid, 0, 12, 3).isSame(whole))
                .isTrue();
    }

    @Test
    void refusesWhatHasNoUse() {
        Look wash = Look.of("wash").with("from", "centre").with("toward", 90);
        assertThatThrownBy(() -> wash.on(ROW))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("toward");

        Look twoColours = Look.of("wash").palette("red").with("color", ColorTrack.constant(Look.color("red")));
        assertThatThrownBy(() -> twoColours.on(ROW))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("palette");
    }

    /** Turned as a whole, with its direction, it is the same picture; from the middle it is so by itself. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 33, 90, 123.4, 300})
    void turnsWithTheStage(double degrees) throws SettingException {
        double[][] places = Canvases.scattered(200);
        double cosine = Math.cos(Math.toRadians(degrees));
        double sine = Math.sin(Math.toRadians(degrees));
        Canvas upright = Canvases.of(places);
        Canvas turned = Canvases.of(Canvases.moved(places, cosine, -sine, sine, cosine));
        Look wash = Look.of("wash").palette("red", "lime", "blue");
        float[] before = Painting.of(wash.with("toward", 20), upright, 0).green();
        assertThat(Painting.of(wash.with("toward", 20 + degrees), turned, 0).green())
                .containsExactly(before, ROUNDING);
        Look outward = wash.without("toward").with("from", "centre");
        assertThat(Painting.of(outward, turned, 0).green())
                .containsExactly(Painting.of(outward, upright, 0).green(), ROUNDING);
    }

    /** It is a matter of places alone: wired the other way round, every place keeps its light. */
    @Test
    void doesNotDependOnTheWiring() throws SettingException {
        double[][] places = Canvases.scattered(150);
        double[][] backward = new double[150][];
        for (int i = 0; i < 150; i++) {
            backward[i] = places[149 - i];
        }
        Look look = Look.of("wash").palette("red", "blue").with("toward", 77);
        float[] before = Painting.of(look, Canvases.of(places), 0).blue();
        float[] after = Painting.of(look, Canvases.of(backward), 0).blue();
        for (int i = 0; i < 150; i++) {
            assertThat(after[149 - i]).isEqualTo(before[i]);
        }
    }
}
