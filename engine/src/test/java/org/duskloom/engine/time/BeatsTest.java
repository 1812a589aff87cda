package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A beat lasts 60 / beats per minute seconds (Standard MIDI Files 1.0, from memory): 1/2 s at 120, 15/32 s at 128, 2/3
 * s at 90.
 */
class BeatsTest {
    /** Four beats at 120, then three at 90: at 0, 1/2, 1, 3/2, 2, 8/3, 10/3 and 4 s; bars of three from beat 1 on. */
    private static final Beats SLOWER = Beats.at(
            Stream.of(
                            new int[] {0, 1},
                            new int[] {1, 2},
                            new int[] {1, 1},
                            new int[] {3, 2},
                            new int[] {2, 1},
                            new int[] {8, 3},
                            new int[] {10, 3},
                            new int[] {4, 1})
                    .map(time -> new ExactTime(time[0], time[1]))
                    .toList(),
            List.of(1, 4, 7));

    private static final Beats STEADY = Beats.steady(new Tempo(new ExactTime(15, 32)), new ExactTime(7, 20), 4);

    private static Ratio ratio(String text) {
        String[] parts = text.split("/");
        return Ratio.of(Long.parseLong(parts[0]), parts.length > 1 ? Long.parseLong(parts[1]) : 1);
    }

    private static ExactTime time(String text) {
        Ratio ratio = ratio(text);
        return new ExactTime(
                ratio.numerator().longValueExact(), ratio.denominator().longValueExact());
    }

    @ParameterizedTest
    @CsvSource({"0, 7/20", "8, 41/10", "1/2, 187/320", "-1, -19/160", "1000, 9382/20"})
    void steadyBeatsLieAsFarApartAsTheTempoSays(String place, String seconds) {
        assertThat(STEADY.timeOf(Pulse.BEAT, ratio(place))).isEqualTo(time(seconds));
        assertThat(STEADY.placeOf(Pulse.BEAT, time(seconds))).isEqualTo(ratio(place));
    }

    @ParameterizedTest
    @CsvSource({"0, 7/20", "2, 41/10", "1/4, 131/160"})
    void barsAreCountedOverTheBeats(String place, String seconds) {
        assertThat(STEADY.timeOf(Pulse.BAR, ratio(place))).isEqualTo(time(seconds));
    }

    @ParameterizedTest
    @CsvSource({"4, 2", "9/2, 7/3", "6, 10/3", "7, 4", "8, 14/3", "10, 6", "-1, -1/2", "7/2, 7/4"})
    void betweenTwoBeatsIsCountedEvenlyAndBeyondThemWithTheLastInterval(String place, String seconds) {
        assertThat(SLOWER.timeOf(Pulse.BEAT, ratio(place))).isEqualTo(time(seconds));
        assertThat(SLOWER.placeOf(Pulse.BEAT, time(seconds))).isEqualTo(ratio(place));
    }

    @ParameterizedTest
    @CsvSource({"0, 1/2", "1, 2", "3/2, 3", "2, 4", "3, 6", "-1/3, 0"})
    void barsFollowTheirLabels(String place, String seconds) {
        assertThat(SLOWER.timeOf(Pulse.BAR, ratio(place))).isEqualTo(time(seconds));
        assertThat(SLOWER.placeOf(Pulse.BAR, time(seconds))).isEqualTo(ratio(place));
    }

    /** From half a beat after beat 3, at 7/4 s, two beats lead to half a beat after beat 5, at 3 s. */
    @Test
    void lengthsCountFromWhereTheyStart() {
        Lapse two = Lapse.of(SLOWER, Pulse.BEAT, Ratio.of(2));
        assertThat(two.isFixed()).isFalse();
        assertThat(two.from(new ExactTime(7, 4))).isEqualTo(new ExactTime(5, 4));
        assertThat(two.until(ExactTime.ofSeconds(3))).isEqualTo(new ExactTime(5, 4));
        assertThat(two.from(ExactTime.ZERO)).isEqualTo(ExactTime.ofSeconds(1));
        assertThat(two.times(1, 2).from(ExactTime.ofSeconds(2))).isEqualTo(new ExactTime(2, 3));
    }

    @Test
    void steadyLengthsAreTheSameEverywhere() {
        assertThat(Lapse.of(STEADY, Pulse.BEAT, Ratio.of(8))).isEqualTo(Lapse.of(new ExactTime(15, 4)));
        assertThat(Lapse.of(STEADY, Pulse.BAR, Ratio.of(1))).isEqualTo(Lapse.of(new ExactTime(15, 8)));
    }

    @Test
    void placingAndMeasuringAgreeAndNeverTurnBack() {
        Random random = new Random(17);
        for (int round = 0; round < 300; round++) {
            Beats beats = anyBeats(random);
            Ratio before = Ratio.of(-20);
            for (int i = 0; i < 40; i++) {
                Ratio place = before.plus(Ratio.of(1 + random.nextInt(99), 100));
                for (Pulse pulse : Pulse.values()) {
                    ExactTime time = beats.timeOf(pulse, place);
                    assertThat(beats.placeOf(pulse, time)).isEqualTo(place);
                    assertThat(time).isGreaterThan(beats.timeOf(pulse, before));
                    Ratio step = Ratio.of(1 + random.nextInt(50), 10);
                    assertThat(beats.later(beats.later(time, pulse, step), pulse, step))
                            .isEqualTo(beats.later(time, pulse, step.plus(step)));
                    assertThat(beats.later(beats.later(time, pulse, step), pulse, step.negated()))
                            .isEqualTo(time);
                }
                before = place;
            }
        }
    }

    private static Beats anyBeats(Random random) {
        List<ExactTime> beats = new ArrayList<>();
        List<Integer> bars = new ArrayList<>(List.of(random.nextInt(3)));
        long milliseconds = random.nextInt(2000);
        for (int beat = 0; beat < 30; beat++) {
            beats.add(ExactTime.ofMilliseconds(milliseconds));
            milliseconds += 250 + random.nextInt(500);
            bars.add(bars.get(bars.size() - 1) + 1 + random.nextInt(6));
        }
        return Beats.at(beats, bars);
    }

    /** Starts that no decimal hits, a hundred times from seconds to beats and back: picoseconds are kept. */
    @Test
    void longChainsStayCountable() {
        Beats beats = Beats.at(
                List.of(new ExactTime(123_457, 1_000_000), new ExactTime(711_113, 1_000_000), ExactTime.ofSeconds(2)),
                List.of());
        ExactTime time = ExactTime.ofMilliseconds(333);
        for (int i = 0; i < 100; i++) {
            time = beats.later(time, Pulse.BEAT, Ratio.of(1, 3)).plus(new ExactTime(1, 1000));
        }
        assertThat(time.denominator()).isLessThanOrEqualTo(1_000_000_000_000L);
        assertThat(time.seconds()).isBetween(40.0, 45.0);
    }

    @Test
    void beatsMustRise() {
        assertThatThrownBy(() -> Beats.at(List.of(ExactTime.ZERO, ExactTime.ZERO), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Beats.at(List.of(ExactTime.ZERO), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
