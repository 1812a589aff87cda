package org.duskloom.effects.swell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnvelopeTest {
    private static final CueTime TIME = new CueTime();

    private static Envelope envelope(double attack, double hold, double decay, String easing) throws SettingException {
        Map<Setting<?>, Object> given = Map.of(
                Swell.ATTACK, NumberTrack.constant(attack),
                Swell.HOLD, NumberTrack.constant(hold),
                Swell.DECAY, NumberTrack.constant(decay),
                Swell.EASING, easing);
        return Envelope.of(Settings.of(given));
    }

    /** Straight edges are a trapezium: through (0, 0), (a, 1), (a + h, 1) and (a + h + d, 0). */
    @ParameterizedTest
    @CsvSource({"0.25, 0.25, 0.25", "0.5, 0, 0.5", "0.1, 0.6, 0.3", "0, 0.5, 0.2", "0.3, 0, 0", "0, 0, 1", "0.2, 0.2, 0"
    })
    void isATrapezium(double attack, double hold, double decay) throws SettingException {
        Envelope envelope = envelope(attack, hold, decay, "linear");
        for (int i = 0; i < 1000; i++) {
            double passed = (i + 0.5) / 1000;
            double level = 0;
            if (passed < attack) {
                level = passed / attack;
            } else if (passed < attack + hold) {
                level = 1;
            } else if (passed < attack + hold + decay) {
                level = (attack + hold + decay - passed) / decay;
            }
            assertThat(envelope.at(passed, TIME, false)).as("at %s", passed).isCloseTo(level, within(1e-9));
            assertThat(envelope.at(passed, TIME, true))
                    .as("backward, away from edges")
                    .isCloseTo(level, within(1e-6));
        }
    }

    /** Where two stretches meet at a jump, the later one counts: forward the one behind it, backward the one before. */
    @Test
    void jumpsTheWayItGoes() throws SettingException {
        Envelope held = envelope(0, 0.5, 0, "linear");
        assertThat(held.at(0, TIME, false)).isEqualTo(1);
        assertThat(held.at(0.5, TIME, false)).isZero();
        assertThat(held.at(0.5, TIME, true)).isEqualTo(1);
        assertThat(held.at(1, TIME, true)).isZero();
        Envelope sawtooth = envelope(0.5, 0, 0, "linear");
        assertThat(sawtooth.at(0.5, TIME, false)).isZero();
        assertThat(sawtooth.at(0.5, TIME, true)).isCloseTo(1, within(1e-8));
    }

    @Test
    void isAlwaysDarkWithoutALength() throws SettingException {
        Envelope nothing = envelope(0, 0, 0, "linear");
        for (double passed : new double[] {0, 0.3, 0.999}) {
            assertThat(nothing.at(passed, TIME, false)).isZero();
        }
    }

    /** CSS Easing Functions Level 1: steps(2, jump-end) is 0 in its first half and 1/2 in its second. */
    @Test
    void takesStepsMirroredInTheDecay() throws SettingException {
        Envelope stairs = envelope(0.5, 0, 0.5, "steps(2, jump-end)");
        assertThat(stairs.at(0.1, TIME, false)).isZero();
        assertThat(stairs.at(0.3, TIME, false)).isEqualTo(0.5);
        assertThat(stairs.at(0.7, TIME, false)).isEqualTo(0.5);
        assertThat(stairs.at(0.9, TIME, false)).isZero();
    }

    /** 0.1 + 0.2 + 0.7 is a little more than 1 as doubles add it up, and no reason to refuse. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.2, 0.7, true", "0.5, 0.5, 0, true", "0.5, 0.3, 0.201, false", "1, 1, 1, false"})
    void isNoLongerThanThePass(double attack, double hold, double decay, boolean fits) throws SettingException {
        if (fits) {
            assertThat(envelope(attack, hold, decay, "linear").at(0.999, TIME, false))
                    .isBetween(0.0, 1.0);
        } else {
            assertThatThrownBy(() -> envelope(attack, hold, decay, "linear"))
                    .isInstanceOfSatisfying(
                            SettingException.class,
                            fault -> assertThat(fault.setting()).isEqualTo("decay"));
        }
    }
}
