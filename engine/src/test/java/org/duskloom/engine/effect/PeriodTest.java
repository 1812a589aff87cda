package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.junit.jupiter.api.Test;

class PeriodTest {
    /** Frames of 1/40 s at 120 beats a minute in bars of 4: 20 frames are a beat, 80 a bar. */
    private static final MusicClock EVEN = new MusicClock() {
        @Override
        public double beatsAt(long frame) {
            return frame / 20.0;
        }

        @Override
        public double barsAt(long frame) {
            return frame / 80.0;
        }

        @Override
        public double secondsAfterBeats(double beats) {
            return beats / 2;
        }

        @Override
        public double secondsAfterBars(double bars) {
            return 2 * bars;
        }
    };

    private static Fingerprint print(Period period) {
        return new FingerprintWriter("p").value(period).finish();
    }

    @Test
    void passesAreCountedInSecondsBeatsOrBars() {
        CueTime time = new CueTime().set(3, 10, 1).hear(EVEN, 120);
        assertThat(Period.ofSeconds(2).passes(time)).isEqualTo(1.5);
        assertThat(new Period(4, Period.Unit.BEATS).passes(time)).isEqualTo(1.5);
        assertThat(new Period(3, Period.Unit.BARS).passes(time)).isEqualTo(0.5);
    }

    /** What passes counts, secondsAfter takes back. */
    @Test
    void instantsOfPassesAreFound() {
        CueTime time = new CueTime().set(3, 10).hear(EVEN, 120);
        assertThat(Period.ofSeconds(2).secondsAfter(1.5, time)).isEqualTo(3);
        assertThat(new Period(4, Period.Unit.BEATS).secondsAfter(1.5, time)).isEqualTo(3);
        assertThat(new Period(3, Period.Unit.BARS).secondsAfter(0.5, time)).isEqualTo(3);
        assertThat(new Period(4, Period.Unit.BEATS).secondsAfter(-1, time)).isEqualTo(-2);
    }

    @Test
    void onlyBeatsAndBarsHangOnTheMusic() {
        assertThat(Period.ofSeconds(2).hearsBeats()).isFalse();
        assertThat(new Period(2, Period.Unit.BEATS).hearsBeats()).isTrue();
        assertThat(new Period(2, Period.Unit.BARS).hearsBeats()).isTrue();
        CueTime silent = new CueTime().set(3, 10);
        assertThat(Period.ofSeconds(2).passes(silent)).isEqualTo(1.5);
        Period beats = new Period(2, Period.Unit.BEATS);
        assertThatThrownBy(() -> beats.passes(silent)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> beats.secondsAfter(1, silent)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void twoUnitsAreTwoPeriods() {
        Set<Fingerprint> prints = new LinkedHashSet<>();
        for (Period.Unit unit : Period.Unit.values()) {
            for (double count : List.of(1.0, 2.0)) {
                prints.add(print(new Period(count, unit)));
            }
        }
        assertThat(prints).hasSize(6);
        assertThat(print(Period.ofSeconds(2))).isEqualTo(print(new Period(2, Period.Unit.SECONDS)));
    }
}
