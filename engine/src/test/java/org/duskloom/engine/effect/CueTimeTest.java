package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CueTimeTest {
    /** A beat every 10 frames, a bar every 30, as of a show at 20 frames a second and 120 beats a minute, in three. */
    private record Waltz() implements MusicClock {
        @Override
        public double beatsAt(long frame) {
            return frame / 10.0;
        }

        @Override
        public double barsAt(long frame) {
            return frame / 30.0;
        }

        @Override
        public double secondsAfterBeats(double beats) {
            return beats / 2;
        }

        @Override
        public double secondsAfterBars(double bars) {
            return bars * 1.5;
        }
    }

    @Test
    void beginsWithTheShow() {
        CueTime time = new CueTime();
        assertThat(List.of(time.seconds(), time.lengthSeconds(), time.startSeconds()))
                .containsExactly(0.0, 1.0, 0.0);
        assertThat(time.frame()).isZero();
    }

    @Test
    void isSetAnewForEachFrame() {
        CueTime time = new CueTime().set(3.5, 8, 60);
        assertThat(List.of(time.seconds(), time.lengthSeconds(), time.startSeconds()))
                .containsExactly(3.5, 8.0, 60.0);
        assertThat(time.set(1, 2).startSeconds())
                .as("of a cue that starts with the show")
                .isZero();
        assertThat(time.lengthSeconds()).isEqualTo(2);
    }

    @Test
    void countsBeatsAndBarsByTheFrame() {
        CueTime time = new CueTime().hear(new Waltz(), 45);
        assertThat(time.frame()).isEqualTo(45);
        assertThat(time.beats()).isEqualTo(4.5);
        assertThat(time.bars()).isEqualTo(1.5);
        assertThat(time.music()).isEqualTo(new Waltz());
    }

    /** The clock stays when another instant is set, as a brush is asked for many frames. */
    @Test
    void goesOnHearingTheSameMusic() {
        assertThat(new CueTime().hear(new Waltz(), 45).set(9, 10).beats()).isEqualTo(4.5);
    }

    /** What needs beats in a show without any says so and counts nothing. */
    @Test
    void hasNoBeatsWithoutMusic() {
        CueTime time = new CueTime().set(1, 2);
        assertThatThrownBy(time::beats)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the show has no beats");
        assertThatThrownBy(time::bars).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> MusicClock.NONE.secondsAfterBeats(1)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> MusicClock.NONE.secondsAfterBars(1)).isInstanceOf(IllegalStateException.class);
    }

    /** Where nothing hits, nothing has hit and nothing will. */
    @ParameterizedTest
    @EnumSource
    void nothingHits(Period.Unit unit) {
        for (long frame : new long[] {Long.MIN_VALUE, -1, 0, 1, Long.MAX_VALUE}) {
            assertThat(Hits.NONE.lastAt(frame)).isEqualTo(Hits.NEVER);
            assertThat(Hits.NONE.since(frame, unit)).isZero();
            assertThat(Hits.NONE.shareToNext(frame)).isZero();
        }
        assertThat(Hits.NONE.lastBefore(Double.POSITIVE_INFINITY)).isEqualTo(Hits.NEVER);
        assertThat(Hits.NONE.isEndless()).isFalse();
        assertThat(Hits.NONE.hearsBeats()).isFalse();
        assertThat(HitsSetting.of("on", "when").standard()).isSameAs(Hits.NONE);
    }

    /** What passes counts, secondsAfter takes back, in whatever unit. */
    @ParameterizedTest
    @EnumSource
    void secondsAfterSoManyPassesIsTheTimeThatHasSoMany(Period.Unit unit) {
        CueTime time = new CueTime();
        for (int frame = 0; frame <= 120; frame += 6) {
            time.set(frame / 20.0, 6).hear(new Waltz(), frame);
            Period period = new Period(2.5, unit);
            assertThat(period.secondsAfter(period.passes(time), time)).isCloseTo(frame / 20.0, within(1e-12));
        }
    }
}
