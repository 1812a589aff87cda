package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotionTest {
    private final Map<Setting<?>, Object> given = new HashMap<>();

    /** φ = elapsed / every + phase; without a word, one pass takes 2 s. */
    @Test
    void countsPasses() throws SettingException {
        assertThat(phi(3, 10)).isEqualTo(1.5);

        given.put(Motion.EVERY, Optional.of(Period.ofSeconds(0.5)));
        given.put(Motion.PHASE, NumberTrack.constant(0.25));
        assertThat(phi(3, 10)).isEqualTo(6.25);

        given.put(Motion.REVERSE, true);
        assertThat(phi(3, 10)).isEqualTo(-6.25);
        assertThat(motion().phiFraction(new CueTime().set(3, 10))).isEqualTo(0.75);
    }

    /** Backward, a pass begins with its end, and the first pass is number -1: φ = -0.5 is its middle. */
    @ParameterizedTest
    @CsvSource({
        "false, 0, 0, 0",
        "false, 3, 1, 0.5",
        "false, 4, 2, 0",
        "true, 0, -1, 1",
        "true, 1, -1, 0.5",
        "true, 2, -2, 1",
        "true, 3, -2, 0.5"
    })
    void knowsThePassAndThePlaceInIt(boolean reverse, double second, double pass, double passed)
            throws SettingException {
        given.put(Motion.REVERSE, reverse);
        CueTime time = new CueTime().set(second, 100);
        assertThat(motion().pass(time)).isEqualTo(pass);
        assertThat(motion().passed(time)).isEqualTo(passed);
    }

    /** Whole passes are whole, however odd the time of one: 49 times 1/49 is not 1 in floating point, 49/49 is. */
    @ParameterizedTest
    @CsvSource({"49, 49", "0.1, 0.1", "0.3, 0.9"})
    void isExactWhenAPassEnds(double every, double second) throws SettingException {
        given.put(Motion.EVERY, Optional.of(Period.ofSeconds(every)));
        assertThat(phi(second, 100)).isCloseTo(second / every, within(0.0));
    }

    /** Three passes in 12 s: after 8 s two have gone by. */
    @Test
    void fitsPassesIntoTheCue() throws SettingException {
        given.put(Motion.PASSES, NumberTrack.constant(3));
        assertThat(phi(8, 12)).isEqualTo(2);
        assertThat(motion().secondsWhen(2, new CueTime().set(0, 12))).isEqualTo(8);
    }

    @Test
    void knowsWhenAPassBegins() throws SettingException {
        given.put(Motion.EVERY, Optional.of(Period.ofSeconds(4)));
        given.put(Motion.PHASE, NumberTrack.constant(0.5));
        given.put(Motion.REVERSE, true);
        double second = motion().secondsWhen(-3, new CueTime());
        assertThat(second).isEqualTo(10);
        assertThat(phi(second, 100)).isEqualTo(-3);
    }

    @Test
    void refusesTwoPaces() {
        given.put(Motion.PASSES, NumberTrack.constant(2));
        given.put(Motion.EVERY, Optional.of(Period.ofSeconds(4)));
        assertThatThrownBy(this::motion).isInstanceOf(SettingException.class).hasMessageContaining("both");
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0", "-1, 0", "1.75, 0.75", "-0.25, 0.75", "-1e-20, 0"})
    void takesFractions(double value, double expected) {
        assertThat(Motion.fraction(value)).isEqualTo(expected);
    }

    private double phi(double seconds, double length) throws SettingException {
        return motion().phi(new CueTime().set(seconds, length));
    }

    private Motion motion() throws SettingException {
        return Motion.of(Settings.of(given));
    }
}
