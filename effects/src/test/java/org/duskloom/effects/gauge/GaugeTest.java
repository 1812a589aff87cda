package org.duskloom.effects.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeTest {
    private static final Offset<Float> ROUNDING = within(1e-6f);

    /** Five pixels above each other: s is 0, 1/4, 1/2, 3/4 and 1. */
    private static final Canvas MAST = Canvases.of(
            new double[] {0, -1}, new double[] {0, -0.5}, new double[] {0, 0}, new double[] {0, 0.5}, new double[] {0, 1
            });

    private static final Palette BLACK_TO_WHITE = Palette.evenly(
            List.of(LinearColor.BLACK, new LinearColor(1, 1, 1, 1)), new PaletteStyle(ColorMix.LINEAR, false, false));

    private static Look gauge() {
        return Look.of("gauge");
    }

    private static float[] light(Look look, double second) throws SettingException {
        return Painting.of(look, MAST, second).alpha();
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.25, 1", "0.26, 2", "0.75, 3", "0.99, 4", "1, 5"})
    void aHardEdgeLightsWhatIsBelowTheAmount(double amount, int lit) throws SettingException {
        float[] light = light(gauge().with("soft", 0).with("amount", amount), 0);
        for (int i = 0; i < light.length; i++) {
            assertThat(light[i]).as("pixel %s", i).isEqualTo(i < lit ? 1f : 0f);
        }
    }

    /** With w = 1/2 and a = 1/2 the end is at 3/4: x is 3/2, 1, 1/2, 0 and -1/2; x²(3 - 2x) is 1/2 at 1/2. */
    @Test
    void aSoftEdgeIsSmooth() throws SettingException {
        assertThat(light(gauge().with("soft", 0.5).with("amount", 0.5), 0))
                .containsExactly(new float[] {1, 1, 0.5f, 0, 0}, ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.5", "1"})
    void nothingIsLitAtZeroAndEverythingAtOne(double soft) throws SettingException {
        assertThat(light(gauge().with("soft", soft).with("amount", 0), 0)).containsOnly(0f);
        assertThat(light(gauge().with("soft", soft).with("amount", 1), 0)).containsOnly(new float[] {1}, ROUNDING);
    }

    @Test
    void someLightMayBeLeftAbove() throws SettingException {
        assertThat(light(gauge().with("soft", 0).with("amount", 0.5).with("low", 0.2), 0))
                .containsExactly(new float[] {1, 1, 0.2f, 0.2f, 0.2f}, ROUNDING);
    }

    @Test
    void theAmountMoves() throws SettingException {
        Look rising = gauge().with("soft", 0).moving("amount", 0, 1, 4);
        assertThat(light(rising, 1.2)).containsExactly(1, 1, 0, 0, 0);
        assertThat(light(rising, 4)).containsExactly(1, 1, 1, 1, 1);
    }

    /** With w = 1/2 the end goes from 0 to 3/2: at 1 s of 4 it is at 3/8, so x is 3/4, 1/4 and below 0. */
    @Test
    void theEdgeStaysAsSoftWhileItRises() throws SettingException {
        Look rising = gauge().with("soft", 0.5).moving("amount", 0, 1, 4);
        assertThat(light(rising, 1)).containsExactly(new float[] {smooth(0.75f), smooth(0.25f), 0, 0, 0}, ROUNDING);
        assertThat(light(rising, 0)).containsOnly(0f);
    }

    /** CSS and shader languages call it smoothstep: x²(3 - 2x) (Khronos, GLSL 4.60, 8.3). */
    private static float smooth(float x) {
        return x * x * (3 - 2 * x);
    }

    /** From hard at 0 s to soft at 2 s: the end of a = 1/2 goes from 1/2 to 1. */
    @Test
    void theEdgeMayGrowSofter() throws SettingException {
        Look softer = gauge().with("amount", 0.5).moving("soft", 0, 1, 2);
        assertThat(light(softer, 0)).containsExactly(1, 1, 0, 0, 0);
        assertThat(light(softer, 2))
                .containsExactly(new float[] {1, smooth(0.75f), smooth(0.5f), smooth(0.25f), 0}, ROUNDING);
    }

    @Test
    void whatIsLeftAboveMayMove() throws SettingException {
        Look dawn = gauge().with("soft", 0).with("amount", 0.5).moving("low", 0, 1, 4);
        assertThat(light(dawn, 1)).containsExactly(new float[] {1, 1, 0.25f, 0.25f, 0.25f}, ROUNDING);
        assertThat(light(dawn, 4)).containsOnly(1f);
    }

    /** Two masts, one twice as high and with the order of its pixels turned round: each is filled by itself. */
    @Test
    void everyMemberIsFilledByItself() throws SettingException {
        Canvas two = new Canvases()
                .member("low", new double[] {-0.5, -1}, new double[] {-0.5, -0.5}, new double[] {-0.5, 0})
                .member("high", new double[] {0.5, 1}, new double[] {0.5, 0}, new double[] {0.5, -1})
                .build();
        Look half = gauge().with("soft", 0).with("amount", 0.6);
        assertThat(Painting.of(half, two, 0).alpha()).containsExactly(1, 1, 0, 0, 1, 1);
        assertThat(Painting.of(half.with("from", "order"), two, 0).alpha()).containsExactly(1, 1, 0, 1, 1, 0);
    }

    /** Down the mast; from its middle, where the distances are 1, 1/2, 0, 1/2 and 1; along the wiring: 0.1 to 0.9. */
    @Test
    void risesTowardAnythingAndFromTheMiddleAndAlongTheOrder() throws SettingException {
        Look half = gauge().with("soft", 0).with("amount", 0.4);
        assertThat(light(half.with("toward", 270), 0)).containsExactly(0, 0, 0, 1, 1);
        assertThat(light(gauge().with("soft", 0).with("amount", 0.4).with("from", "centre"), 0))
                .containsExactly(0, 0, 1, 0, 0);
        assertThat(light(gauge().with("soft", 0).with("amount", 0.4).with("from", "order"), 0))
                .containsExactly(1, 1, 0, 0, 0);
    }

    /** From black to white in linear light: the place of a pixel, or the amount for all. */
    @Test
    void coloursLieAlongTheWayOrFollowTheAmount() throws SettingException {
        Look look = gauge().with("palette", BLACK_TO_WHITE).with("soft", 0).with("amount", 0.6);
        assertThat(Painting.of(look, MAST, 0).red()).containsExactly(new float[] {0, 0.25f, 0.5f, 0, 0}, within(1e-4f));
        assertThat(Painting.of(look.with("along", "amount"), MAST, 0).red())
                .containsExactly(new float[] {0.6f, 0.6f, 0.6f, 0, 0}, within(1e-4f));
    }

    @Test
    void towardSaysNothingFromTheMiddle() {
        assertThatThrownBy(
                        () -> gauge().with("from", "centre").with("toward", 0).on(MAST))
                .isInstanceOf(SettingException.class)
                .hasMessage("toward says nothing where from is \"centre\"");
    }

    /**
     * The formula of the reference in doubles, toward any direction, in each of two members by its own range; the edge
     * is from hard to as wide as all. Where a hard edge may round to the other side nothing is said.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 0.1, 0, 17", "0.7, 0, 0.25, 200", "0.01, 1, 0.5, -33", "0.999, 0.4, 0, 90", "0.5, 1e-9, 0.1, 271"
    })
    void isItsFormula(double amount, double soft, double low, double toward) throws SettingException {
        double[][] near = Canvases.scattered(90);
        double[][] far = Canvases.moved(Canvases.scattered(40), 0.3, 0, 0.1, 0.2);
        Canvas two = new Canvases().member("near", near).member("far", far).build();
        Look look = gauge().with("amount", amount)
                .with("soft", soft)
                .with("low", low)
                .with("toward", toward);
        float[] light = Painting.of(look, two, 0).alpha();
        for (int pixel = 0; pixel < 130; pixel++) {
            double share = pixel < 90 ? share(near, pixel, toward) : share(far, pixel - 90, toward);
            double inward = amount * (1 + soft) - share;
            double level = soft > 0 ? smooth((float) Math.min(1, Math.max(0, inward / soft))) : inward > 0 ? 1 : 0;
            if (soft > 1e-6 || Math.abs(inward) > 1e-6) {
                assertThat((double) light[pixel]).isCloseTo(low + (1 - low) * level, within(1e-4));
            }
        }
    }

    /** Where a pixel lies along a direction among all pixels of its member: 0 for the first, 1 for the last. */
    private static double share(double[][] places, int pixel, double toward) {
        double[] along = Arrays.stream(places)
                .mapToDouble(p -> p[0] * Math.cos(Math.toRadians(toward)) + p[1] * Math.sin(Math.toRadians(toward)))
                .toArray();
        double[] sorted = along.clone();
        Arrays.sort(sorted);
        return (along[pixel] - sorted[0]) / (sorted[sorted.length - 1] - sorted[0]);
    }

    /** As a meter it must never fall while the amount rises, anywhere, however soft the edge is. */
    @ParameterizedTest
    @CsvSource({"edge, 0", "centre, 0.2", "order, 1"})
    void neverFallsWhileTheAmountRises(String from, double soft) throws SettingException {
        Canvas canvas = Canvases.of(Canvases.scattered(60));
        Look rising = gauge().with("soft", soft).with("from", from).moving("amount", 0, 1, 4);
        float[] before = new float[60];
        for (int step = 0; step <= 80; step++) {
            float[] now = Painting.of(rising, canvas, step / 20.0).alpha();
            for (int pixel = 0; pixel < 60; pixel++) {
                assertThat(now[pixel]).isGreaterThanOrEqualTo(before[pixel]);
            }
            before = now;
        }
        assertThat(before).containsOnly(new float[] {1}, ROUNDING);
    }
}
