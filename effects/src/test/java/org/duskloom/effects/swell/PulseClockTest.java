package org.duskloom.effects.swell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.MusicClock;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Swells on instants of the music: hits at the seconds 1, 3 and 4 of the show, at 10 frames a second. */
class PulseClockTest {
    private static final int[] FRAMES = {10, 30, 40};

    /** What hits at these frames; if endless, there is always a next one 2 s later. */
    private record AtFrames(boolean isEndless) implements Hits {
        @Override
        public long lastAt(long frame) {
            long last = NEVER;
            for (int i = 0; i < FRAMES.length; i++) {
                last = FRAMES[i] <= frame ? i : last;
            }
            return last;
        }

        @Override
        public long lastBefore(double showSecond) {
            long last = NEVER;
            for (int i = 0; i < FRAMES.length; i++) {
                last = FRAMES[i] / 10.0 < showSecond ? i : last;
            }
            return last;
        }

        @Override
        public double since(long frame, Period.Unit unit) {
            return (frame - FRAMES[(int) lastAt(frame)]) / 10.0;
        }

        @Override
        public double shareToNext(long frame) {
            int last = (int) lastAt(frame);
            int next = last + 1 < FRAMES.length ? FRAMES[last + 1] : FRAMES[last] + 20;
            return (double) (frame - FRAMES[last]) / (next - FRAMES[last]);
        }

        @Override
        public boolean hearsBeats() {
            return true;
        }

        @Override
        public void addTo(FingerprintWriter parts) {
            parts.text("test");
        }
    }

    private final Map<Setting<?>, Object> given = new HashMap<>();

    private PulseClock on(boolean endless) throws SettingException {
        given.put(Swell.ON, new AtFrames(endless));
        return PulseClock.of(Settings.of(given));
    }

    private static CueTime frame(long frame) {
        return new CueTime().set(frame / 10.0, 10, 0).hear(MusicClock.NONE, frame);
    }

    /** Without "every" a swell lasts until the next beat: from 1 s to 3 s, then to 4 s. */
    @ParameterizedTest
    @CsvSource({"10, 0", "15, 0.25", "29, 0.95", "30, 0", "35, 0.5", "40, 0"})
    void lastsUntilTheNext(long frame, double passed) throws SettingException {
        PulseClock clock = on(true);
        assertThat(clock.passed(frame(frame))).isCloseTo(passed, within(1e-12));
        assertThat(clock.isOver(frame(frame))).isFalse();
    }

    /** With it, or on markers, it takes that long and is over; the next one cuts it short. */
    @ParameterizedTest
    @CsvSource({
        "10, 0, false",
        "16, 0.4, false",
        "24, 0.9333333333, false",
        "25, 1, true",
        "29, 1, true",
        "39, 0.6, false",
        "40, 0, false",
        "99, 1, true"
    })
    void takesAsLongAsEverySays(long frame, double passed, boolean over) throws SettingException {
        given.put(Motion.EVERY, Optional.of(Period.ofSeconds(1.5)));
        PulseClock clock = on(false);
        assertThat(clock.passed(frame(frame))).isCloseTo(passed, within(1e-9));
        assertThat(clock.isOver(frame(frame))).isEqualTo(over);
    }

    @Test
    void waitsForTheFirst() throws SettingException {
        PulseClock clock = on(false);
        assertThat(clock.isOver(frame(9))).isTrue();
        assertThat(clock.pass(frame(9))).isEqualTo(-1);
    }

    /** The first that starts in the cue is 0, whatever was heard before it; -1 is what was under way already. */
    @ParameterizedTest
    @CsvSource({"0, 10, 0", "0, 35, 1", "0, 40, 2", "2, 25, -1", "2, 30, 0", "3, 30, 0", "3.5, 40, 0", "3.5, 39, -1"})
    void countsFromTheStartOfTheCue(double start, long frame, double pass) throws SettingException {
        CueTime time = new CueTime().set(frame / 10.0 - start, 10, start).hear(MusicClock.NONE, frame);
        assertThat(on(true).pass(time)).isEqualTo(pass);
    }

    @Test
    void runsBackwardFromOneToNothing() throws SettingException {
        given.put(Motion.REVERSE, true);
        PulseClock clock = on(true);
        assertThat(clock.isReversed()).isTrue();
        assertThat(clock.passed(frame(10))).isEqualTo(1);
        assertThat(clock.passed(frame(15))).isEqualTo(0.75);
    }

    /** "on" says when swells start, so nothing else may. */
    @Test
    void refusesTwoClocks() {
        given.put(Motion.PASSES, NumberTrack.constant(3));
        assertThatThrownBy(() -> on(true)).isInstanceOfSatisfying(SettingException.class, fault -> {
            assertThat(fault.setting()).isEqualTo("passes");
            assertThat(fault.hint()).contains("leave one of them out");
        });
        given.clear();
        given.put(Motion.PHASE, NumberTrack.constant(0.5));
        assertThatThrownBy(() -> on(true))
                .isInstanceOfSatisfying(
                        SettingException.class,
                        fault -> assertThat(fault.setting()).isEqualTo("phase"));
    }

    @Test
    void withoutMusicOneFollowsTheOther() throws SettingException {
        given.put(Motion.EVERY, Optional.of(Period.ofSeconds(4)));
        PulseClock clock = PulseClock.of(Settings.of(given));
        CueTime time = new CueTime().set(9, 20);
        assertThat(clock.passed(time)).isCloseTo(0.25, within(1e-12));
        assertThat(clock.pass(time)).isEqualTo(2);
        assertThat(clock.isOver(time)).isFalse();
    }
}
