package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.effect.MusicClock;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.Pulse;
import org.duskloom.engine.time.Ratio;
import org.duskloom.engine.time.Tempo;
import org.junit.jupiter.api.Test;

/** Beats over frames, held against exact fractions. */
class FrameKnotsTest {
    private static final List<FrameRate> RATES =
            List.of(FrameRate.of(20), FrameRate.of(40), new FrameRate(30000, 1001), FrameRate.of(1000));

    private static Beats anyBeats(Random random) {
        List<ExactTime> beats = new ArrayList<>();
        List<Integer> bars = new ArrayList<>(List.of(random.nextInt(3)));
        long microseconds = random.nextInt(2_000_000);
        for (int beat = 0; beat < 40; beat++) {
            beats.add(new ExactTime(microseconds, 1_000_000));
            microseconds += 250_000 + random.nextInt(500_000);
            bars.add(bars.get(bars.size() - 1) + 1 + random.nextInt(6));
        }
        return Beats.at(beats, bars);
    }

    private static double less(Ratio place, Ratio start) {
        return place.minus(start).nearest();
    }

    @Test
    void framesLieWhereFractionsSay() {
        Random random = new Random(40);
        for (int round = 0; round < 50; round++) {
            Beats beats = anyBeats(random);
            FrameRate rate = RATES.get(round % RATES.size());
            FrameBeats frames = new FrameBeats(beats, rate);
            ExactTime start = ExactTime.ofMilliseconds(random.nextInt(20_000));
            MusicClock clock = frames.from(start);
            for (int i = 0; i < 100; i++) {
                long frame = random.nextInt(40 * rate.numerator() / rate.denominator());
                ExactTime time = rate.timeOf(frame);
                Ratio beat = beats.placeOf(Pulse.BEAT, time);
                long part = frames.knots().partsOf(frame);
                assertThat(frames.knots().numberAt(part)).isEqualTo(beat.floor().longValueExact());
                assertThat(frames.knots().shareAt(part))
                        .isEqualTo(beat.minus(new Ratio(beat.floor(), BigInteger.ONE))
                                .nearest());
                assertThat(clock.beatsAt(frame)).isCloseTo(less(beat, beats.placeOf(Pulse.BEAT, start)), within(1e-12));
                assertThat(clock.barsAt(frame))
                        .isCloseTo(
                                less(beats.placeOf(Pulse.BAR, time), beats.placeOf(Pulse.BAR, start)), within(1e-12));
                assertThat(clock.secondsAfterBeats(clock.beatsAt(frame)))
                        .isCloseTo(time.minus(start).seconds(), within(1e-9));
                assertThat(clock.secondsAfterBars(clock.barsAt(frame)))
                        .isCloseTo(time.minus(start).seconds(), within(1e-9));
            }
        }
    }

    /** At 128 beats a minute, 15/32 s a beat, whole beats fall on every 75th frame of four: no bit is off. */
    @Test
    void wholeBeatsAreWhole() {
        Beats beats = Beats.steady(new Tempo(new ExactTime(15, 32)), new ExactTime(1, 3), 4);
        MusicClock clock = new FrameBeats(beats, FrameRate.of(40)).from(new ExactTime(7, 40));
        for (int k = 0; k < 1000; k++) {
            assertThat(clock.beatsAt(7 + 75 * k)).isEqualTo(4 * k);
            assertThat(clock.barsAt(7 + 75 * k)).isEqualTo(k);
        }
    }

    /** Where no common part of a second is large enough, instants are rounded to less than a nanosecond. */
    @Test
    void ratesAndTemposThatHaveNothingInCommonAreCountedAllTheSame() {
        Beats beats = Beats.steady(new Tempo(new ExactTime(60_000_000, 99_999_999)), new ExactTime(1, 999_983), 4);
        FrameRate rate = new FrameRate(999_999_937, 31_250_007);
        FrameBeats frames = new FrameBeats(beats, rate);
        for (long frame : new long[] {0, 1, 777, 86_000}) {
            double wanted = beats.placeOf(Pulse.BEAT, rate.timeOf(frame)).nearest();
            long part = frames.knots().partsOf(frame);
            assertThat(frames.knots().numberAt(part) + frames.knots().shareAt(part))
                    .isCloseTo(wanted, within(1e-6));
        }
    }
}
