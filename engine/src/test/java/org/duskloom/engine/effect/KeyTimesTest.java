package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyTimesTest {
    /** Where two keys share a time, the later one holds from there. */
    @ParameterizedTest
    @CsvSource({"-1, 0", "0, 1", "0.5, 1", "2, 3", "2.1, 3", "5, 4", "6, 4"})
    void findsTheKeyThatComesNext(double second, int next) {
        assertThat(KeyTimes.firstAfter(new double[] {0, 2, 2, 5}, second)).isEqualTo(next);
    }

    @Test
    void findsNoneBeforeTheFirstNorBehindTheLast() {
        assertThat(KeyTimes.firstAfter(new double[0], 1)).isZero();
        assertThat(KeyTimes.firstAfter(new double[] {1}, Double.NaN)).isZero();
        assertThat(KeyTimes.firstAfter(new double[] {1}, Double.POSITIVE_INFINITY))
                .isEqualTo(1);
    }

    @Test
    void knowsHowFarItIsFromKeyToKey() {
        double[] seconds = {1, 3, 7};
        assertThat(KeyTimes.share(seconds, 1, 1.5)).isEqualTo(0.25);
        assertThat(KeyTimes.share(seconds, 2, 3)).isZero();
        assertThat(KeyTimes.share(seconds, 2, 6)).isEqualTo(0.75);
    }

    /** Straight ways through random keys against the plain definition, the equation of a line through two points. */
    @Test
    void aTrackOfStraightWaysIsMadeOfLines() {
        Random random = new Random(5);
        for (int run = 0; run < 50; run++) {
            int count = 2 + random.nextInt(6);
            double[] seconds = random.doubles(count, 0, 10).sorted().toArray();
            double[] values = random.doubles(count, -100, 100).toArray();
            List<NumberKey> keys = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                keys.add(new NumberKey(seconds[i], values[i], Easing.LINEAR));
            }
            NumberTrack track = NumberTrack.keyed(keys);
            for (double second = -1; second < 11; second += 0.13) {
                assertThat(track.at(second)).isCloseTo(onTheLine(seconds, values, second), within(1e-9));
                assertThat(track.at(second, 77)).as("wherever the cue starts").isEqualTo(track.at(second));
            }
            assertThat(track.keyRange())
                    .containsExactly(
                            Arrays.stream(values).min().getAsDouble(),
                            Arrays.stream(values).max().getAsDouble());
            assertThat(track.first()).isCloseTo(onTheLine(seconds, values, 0), within(1e-9));
        }
    }

    private static double onTheLine(double[] seconds, double[] values, double second) {
        double clamped = Math.max(seconds[0], Math.min(seconds[seconds.length - 1], second));
        for (int i = 1; i < seconds.length; i++) {
            if (clamped <= seconds[i]) {
                double slope = (values[i] - values[i - 1]) / (seconds[i] - seconds[i - 1]);
                return values[i] + slope * (clamped - seconds[i]);
            }
        }
        throw new AssertionError();
    }

    private static Fingerprint print(Fingerprinted track) {
        return new FingerprintWriter("track").value(track).finish();
    }

    private static NumberTrack numbers(double from, double first, double to, double last, Easing easing) {
        return NumberTrack.keyed(List.of(new NumberKey(from, first, easing), new NumberKey(to, last, Easing.EASE)));
    }

    /** A saved show is painted anew where this differs: each part of a track must count, and nothing else. */
    @Test
    void tellsTracksOfNumbersApart() {
        Set<Fingerprint> prints = new LinkedHashSet<>(List.of(
                print(numbers(0, 1, 2, 3, Easing.LINEAR)),
                print(numbers(0.5, 1, 2, 3, Easing.LINEAR)),
                print(numbers(0, 1.5, 2, 3, Easing.LINEAR)),
                print(numbers(0, 1, 2.5, 3, Easing.LINEAR)),
                print(numbers(0, 1, 2, 3.5, Easing.LINEAR)),
                print(NumberTrack.constant(1)),
                print(NumberTrack.constant(3)),
                print(NumberTrack.keyed(
                        List.of(new NumberKey(0, 1, Easing.LINEAR), new NumberKey(2, 3, Easing.LINEAR))))));
        assertThat(prints).hasSize(8);
        assertThat(print(numbers(0, 1, 2, 3, Easing.EASE_IN)))
                .as("the way to the first key is never gone")
                .isEqualTo(print(numbers(0, 1, 2, 3, Easing.LINEAR)));
        assertThat(print(numbers(0, 7, 2, 7, Easing.LINEAR)))
                .as("keys of one value are that value")
                .isEqualTo(print(NumberTrack.constant(7)));
    }

    @Test
    void tellsTracksOfColoursApart() {
        ColorKey black = new ColorKey(0, LinearColor.BLACK, Easing.LINEAR);
        ColorKey white = new ColorKey(2, LinearColor.WHITE, Easing.LINEAR);
        Set<Fingerprint> prints = new LinkedHashSet<>(List.of(
                print(ColorTrack.constant(LinearColor.BLACK)),
                print(ColorTrack.constant(LinearColor.WHITE)),
                print(ColorTrack.keyed(List.of(black, white), ColorMix.OKLAB)),
                print(ColorTrack.keyed(List.of(black, white), ColorMix.LINEAR)),
                print(ColorTrack.keyed(
                        List.of(black, new ColorKey(2, LinearColor.WHITE, Easing.EASE)), ColorMix.OKLAB)),
                print(ColorTrack.keyed(
                        List.of(black, new ColorKey(3, LinearColor.WHITE, Easing.LINEAR)), ColorMix.OKLAB))));
        assertThat(prints).hasSize(6);
        assertThat(print(ColorTrack.keyed(List.of(black), ColorMix.OKLAB)))
                .as("of one colour the mix is nothing")
                .isEqualTo(print(ColorTrack.constant(LinearColor.BLACK)));
    }

    /** Three colours at once, with other ways each; half of the way in linear light is the mean. */
    @Test
    void movesManyColoursByTheSameKeys() {
        LinearColor red = new LinearColor(1, 0, 0, 1);
        ColorTracks tracks = new ColorTracks(
                new double[] {1, 3},
                new Easing[] {Easing.LINEAR, Easing.LINEAR},
                List.of(List.of(LinearColor.BLACK, red, red), List.of(LinearColor.WHITE, LinearColor.WHITE, red)),
                ColorMix.LINEAR);
        float[] colors = new float[3 * ColorTracks.CHANNELS];
        assertThat(tracks.count()).isEqualTo(3);
        tracks.fill(2, colors);
        assertThat(colors)
                .containsExactly(new float[] {0.5f, 0.5f, 0.5f, 1, 1, 0.5f, 0.5f, 1, 1, 0, 0, 1}, within(1e-6f));
        tracks.fill(-5, colors);
        assertThat(colors).containsExactly(new float[] {0, 0, 0, 1, 1, 0, 0, 1, 1, 0, 0, 1}, within(1e-6f));
        assertThat(List.of(tracks.within(-5), tracks.within(2), tracks.within(5)))
                .containsExactly(1.0, 2.0, 3.0);
    }
}
