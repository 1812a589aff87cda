package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.kit.Projection;
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

/** One pixel at (3, 1) and one in the middle; a canvas is 2 units wide, so of a scale of 4 cells a unit has 2. */
class NoisePlacesTest {
    private static final Offset<Double> ROUNDING = within(1e-14);
    private static final Canvas TWO = Canvases.of(new double[] {3, 1}, new double[] {0, 0});

    /**
     * Along and across the direction the pixel lies at (6, 2) cells toward the right, at (2, -6) upward, at (4√2, -2√2)
     * toward 45°. Of the way along, the wind w takes w back in time, and sqrt(1 - w²) is left: 0.8 and 0.6.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 6, 2, 0",
        "0, 90, 2, -6, 0",
        "0, 180, -6, -2, 0",
        "0, 45, 5.656854249492381, -2.8284271247461903, 0",
        "1, 0, 0, 2, -6",
        "1, 90, 0, -6, -2",
        "0.8, 0, 3.6, 2, -4.8",
        "0.6, 180, -4.8, -2, 3.6"
    })
    void liesAlongAndAcrossTheWind(double wind, double toward, double x, double y, double z) {
        NoisePlaces places = NoisePlaces.of(TWO, settings(constant(4), constant(wind), constant(toward)));
        assertThat(places.x(0)).isCloseTo(x, ROUNDING);
        assertThat(places.y(0)).isCloseTo(y, ROUNDING);
        assertThat(places.z(0)).isCloseTo(z, ROUNDING);
        assertThat(places.isConstant()).isTrue();
        assertThat(places.pixelCount()).isEqualTo(2);
    }

    /** Turning and wind only turn space: the way between two pixels is as long as before, and the middle stays. */
    @Test
    void keepsDistances() {
        for (double wind = 0; wind <= 1; wind += 0.125) {
            NoisePlaces places = NoisePlaces.of(TWO, settings(constant(4), constant(wind), constant(77)));
            double squared = places.x(0) * places.x(0) + places.y(0) * places.y(0) + places.z(0) * places.z(0);
            assertThat(squared).isCloseTo(40, within(1e-12));
            assertThat(places.x(1)).isZero();
            assertThat(places.y(1)).isZero();
            assertThat(places.z(1)).isCloseTo(0, ROUNDING);
        }
    }

    /** From a scale of 2 to one of 4 in 2 s: at 1 s there are 3/2 cells to a unit. */
    @Test
    void followsASettingThatMoves() {
        NumberTrack scale =
                NumberTrack.keyed(List.of(new NumberKey(0, 2, Easing.LINEAR), new NumberKey(2, 4, Easing.LINEAR)));
        NoisePlaces places = NoisePlaces.of(TWO, settings(scale, constant(0), constant(0)));
        assertThat(places.isConstant()).isFalse();
        // Near ones after each other: from below on, so the one in the middle comes first.
        assertThat(places.nearOrder()).containsExactly(1, 0);
        assertThat(places.x(1)).isEqualTo(3);
        places.measure(new CueTime().set(1, 100));
        assertThat(places.x(1)).isEqualTo(4.5);
        assertThat(places.y(1)).isEqualTo(1.5);
        assertThat(places.x(0)).isZero();
        places.measure(new CueTime().set(0, 100));
        assertThat(places.x(1)).isEqualTo(3);
    }

    private static NumberTrack constant(double value) {
        return NumberTrack.constant(value);
    }

    private static Settings settings(NumberTrack scale, NumberTrack wind, NumberTrack toward) {
        Map<Setting<?>, Object> given = new HashMap<>();
        given.put(Drift.SCALE, scale);
        given.put(Drift.WIND, wind);
        given.put(Projection.TOWARD, toward);
        return Settings.of(given);
    }
}
