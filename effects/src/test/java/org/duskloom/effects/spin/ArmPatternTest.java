package org.duskloom.effects.spin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.kit.Polar;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pixels up (a = 1/4, r = 1), left (1/2, 2), down (3/4, 1/2) and in the centre (0, 0). */
class ArmPatternTest {
    private static final Offset<Float> ROUNDING = within(1e-6f);
    private static final Canvas FOUR =
            Canvases.of(new double[] {0, 1}, new double[] {-2, 0}, new double[] {0, -0.5}, new double[] {0, 0});

    /** arms · a + bend · r without its whole part. */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 0.25, 0.5, 0.75, 0",
        "3, 0, 0.75, 0.5, 0.25, 0",
        // 1/4 + 1/2, 1/2 + 1, 3/4 + 1/4.
        "1, 0.5, 0.75, 0.5, 0, 0",
        // 1/2 - 1/4, 1 - 1/2, 3/2 - 1/8.
        "2, -0.25, 0.25, 0.5, 0.375, 0"
    })
    void windsItsArms(double arms, double bend, float up, float left, float down, float centre) {
        ArmPattern pattern = ArmPattern.of(FOUR, settings(arms, NumberTrack.constant(bend)));
        assertThat(pattern.fractions()).containsExactly(new float[] {up, left, down, centre}, ROUNDING);
        assertThat(pattern.isConstant()).isTrue();
    }

    /** The farthest of the member is 2 away. */
    @Test
    void knowsHowFarOutEachPixelIs() {
        ArmPattern pattern = ArmPattern.of(FOUR, settings(1, NumberTrack.constant(0)));
        assertThat(pattern.radii()).containsExactly(0.5f, SharePlane.LAST, 0.25f, 0);
    }

    /** A bend from 0 to 1/2 in 4 s is 1/8 after one: 1/4 + 1/8, 1/2 + 1/4, 3/4 + 1/16. */
    @Test
    void followsABendThatMoves() {
        NumberTrack bend =
                NumberTrack.keyed(List.of(new NumberKey(0, 0, Easing.LINEAR), new NumberKey(4, 0.5, Easing.LINEAR)));
        ArmPattern pattern = ArmPattern.of(FOUR, settings(1, bend));
        assertThat(pattern.isConstant()).isFalse();
        pattern.begin(new CueTime().set(1, 100));
        assertThat(pattern.fractions()).containsExactly(new float[] {0.375f, 0.75f, 0.8125f, 0}, ROUNDING);
        pattern.begin(new CueTime().set(0, 100));
        assertThat(pattern.fractions()).containsExactly(new float[] {0.25f, 0.5f, 0.75f, 0}, ROUNDING);
    }

    /** Seen from (0, 1), the pixel there is the centre, and those below lie at 3/4; the left one at 5/8 and a bit. */
    @Test
    void isWoundAboutItsCentre() {
        Map<Setting<?>, Object> given = new HashMap<>();
        given.put(Spin.ARMS, NumberTrack.constant(1));
        given.put(Spin.BEND, NumberTrack.constant(0));
        given.put(Polar.CENTRE_Y, NumberTrack.constant(1));
        float[] fractions = ArmPattern.of(FOUR, Settings.of(given)).fractions();
        assertThat(fractions[0]).isZero();
        assertThat(fractions[2]).isCloseTo(0.75f, ROUNDING);
        assertThat(fractions[3]).isCloseTo(0.75f, ROUNDING);
        // tan = 1/2: 26.565051 degrees beyond the half turn.
        assertThat(fractions[1]).isCloseTo(0.5f + 26.565051f / 360, ROUNDING);
    }

    /** About a centre that moves, to the bit as about one that stays there: near angles must not show. */
    @ParameterizedTest
    @CsvSource({"1, 0", "3, 0.7", "100, -100", "7, 0"})
    void isWoundAboutAMovingCentreAsAboutOneThatStays(double arms, double bend) {
        Canvas canvas = new Canvases()
                .member("scattered", Canvases.scattered(3000))
                .member("grid", Canvases.grid(31, 31))
                .build();
        NumberTrack x =
                NumberTrack.keyed(List.of(new NumberKey(0, -1, Easing.LINEAR), new NumberKey(4, 1, Easing.LINEAR)));
        ArmPattern moving = ArmPattern.of(canvas, about(arms, bend, x, 0.2));
        for (double second : new double[] {0.5, 1, 2, 2.2, 3.75, 4, 0}) {
            moving.begin(new CueTime().set(second, 100));
            NumberTrack still = NumberTrack.constant(x.at(second));
            assertThat(moving.fractions())
                    .isEqualTo(
                            ArmPattern.of(canvas, about(arms, bend, still, 0.2)).fractions());
        }
    }

    private static Settings about(double arms, double bend, NumberTrack x, double y) {
        Map<Setting<?>, Object> given = new HashMap<>();
        given.put(Spin.ARMS, NumberTrack.constant(arms));
        given.put(Spin.BEND, NumberTrack.constant(bend));
        given.put(Polar.CENTRE_X, x);
        given.put(Polar.CENTRE_Y, NumberTrack.constant(y));
        return Settings.of(given);
    }

    private static Settings settings(double arms, NumberTrack bend) {
        Map<Setting<?>, Object> given = new HashMap<>();
        given.put(Spin.ARMS, NumberTrack.constant(arms));
        given.put(Spin.BEND, bend);
        return Settings.of(given);
    }
}
