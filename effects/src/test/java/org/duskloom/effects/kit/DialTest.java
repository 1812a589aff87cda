package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DialTest {
    private static final NumberSetting GLOW = NumberSetting.of("glow", "", 0, 1, 0.5, "how bright it is");
    private static final NumberSetting PETALS = NumberSetting.whole("petals", "", -4, 12, 5, "how many petals");

    @Test
    void isTheStandardUnlessSomethingIsSaid() {
        Dial dial = Dial.of(Settings.of(Map.of()), GLOW);
        assertThat(dial.isConstant()).isTrue();
        assertThat(dial.at(new CueTime().set(-7, 100))).isEqualTo(0.5);
        assertThat(dial.floatAt(new CueTime().set(1e9, 100))).isEqualTo(0.5f);
        assertThat(dial.ceiling()).isEqualTo(0.5);
        assertThat(dial.keyRange()).containsExactly(0.5, 0.5);
    }

    /** From 0.25 at 0 s to 0.75 at 4 s: an eighth a second, held before and after. */
    @ParameterizedTest
    @CsvSource({"-1, 0.25", "0, 0.25", "1, 0.375", "2, 0.5", "4, 0.75", "99, 0.75"})
    void movesBetweenItsKeys(double second, double value) {
        Dial dial = dial(GLOW, Easing.LINEAR, 0.25, 0.75);
        assertThat(dial.isConstant()).isFalse();
        assertThat(dial.at(new CueTime().set(second, 100))).isEqualTo(value);
    }

    /**
     * cubic-bezier(1/3, 2, 2/3, 2) has x = t, so it is y = 3·2·t(1 - t)² + 3·2·t²(1 - t) + t³ = 6t - 6t² + t³ (W3C CSS
     * Easing Functions Level 1): at a half 1.625, which the range of the setting cuts to 1.
     */
    @Test
    void staysInItsRangeWhereAnEasingOvershoots() throws TextFormatException {
        Easing over = Easing.parse("cubic-bezier(0.33333333333333333, 2, 0.66666666666666667, 2)");
        assertThat(dial(GLOW, over, 0, 1).at(new CueTime().set(2, 100))).isEqualTo(1);
        assertThat(dial(GLOW, over, 1, 0).at(new CueTime().set(2, 100))).isZero();
        assertThat(dial(GLOW, over, 0, 0.5).at(new CueTime().set(2, 100))).isCloseTo(0.8125, within(1e-6));
        assertThat(dial(GLOW, over, 0, 0.5).ceiling()).isEqualTo(1);
    }

    /** Halves go up, below zero too: -3.5 to -3, -2.5 to -2, 2.5 to 3. */
    @ParameterizedTest
    @CsvSource({"-3.5, -3", "-2.5, -2", "-0.5, 0", "0.49, 0", "0.5, 1", "2.5, 3", "11.6, 12", "99, 12", "-99, -4"})
    void roundsWholeNumbers(double value, double rounded) {
        Dial dial = Dial.of(Settings.of(Map.of(PETALS, NumberTrack.constant(value))), PETALS);
        assertThat(dial.at(new CueTime().set(0, 100))).isEqualTo(rounded);
        assertThat(dial.floatAt(new CueTime().set(0, 100))).isEqualTo((float) rounded);
    }

    @Test
    void knowsTheRangeOfItsKeys() {
        Dial dial = dial(PETALS, Easing.LINEAR, 7, -3);
        assertThat(dial.keyRange()).containsExactly(-3, 7);
        assertThat(dial.greatestKey()).isEqualTo(7);
        assertThat(dial.ceiling()).isEqualTo(12);
        assertThat(dial(PETALS, Easing.LINEAR, 5, 40).greatestKey()).isEqualTo(12);
        assertThat(dial(PETALS, Easing.LINEAR, -50, -40).greatestKey()).isEqualTo(-4);
    }

    /** Two keys of one value are as good as none. */
    @Test
    void isConstantIfItsKeysAreTheSame() {
        Dial dial = dial(GLOW, Easing.EASE, 0.7, 0.7);
        assertThat(dial.isConstant()).isTrue();
        assertThat(dial.ceiling()).isEqualTo(0.7);
    }

    private static Dial dial(NumberSetting setting, Easing easing, double from, double to) {
        NumberTrack track =
                NumberTrack.keyed(List.of(new NumberKey(0, from, Easing.LINEAR), new NumberKey(4, to, easing)));
        return Dial.of(Settings.of(Map.of(setting, track)), setting);
    }
}
