package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Colours on their way from key to key, each by itself. */
class ColorTracksTest {
    private static final int KEYS = 5;
    private static final int COLORS = 3;
    private static final List<Easing> EASINGS = List.of(Easing.LINEAR, Easing.EASE, Easing.EASE_IN_OUT);

    private final Random random = new Random(29);
    private final double[] seconds = random.doubles(KEYS, 0, 10).sorted().toArray();
    private final List<List<LinearColor>> colors = colors();

    private List<List<LinearColor>> colors() {
        List<List<LinearColor>> all = new ArrayList<>();
        for (int key = 0; key < KEYS; key++) {
            List<LinearColor> atKey = new ArrayList<>();
            for (int i = 0; i < COLORS; i++) {
                atKey.add(new LinearColor(random.nextFloat(), random.nextFloat(), random.nextFloat(), 1));
            }
            all.add(atKey);
        }
        return all;
    }

    private static Easing easing(int key) {
        return EASINGS.get(key % EASINGS.size());
    }

    private ColorTracks tracks(ColorMix mix) {
        Easing[] easings = new Easing[KEYS];
        for (int key = 0; key < KEYS; key++) {
            easings[key] = easing(key);
        }
        return new ColorTracks(seconds, easings, colors, mix);
    }

    private static LinearColor color(ColorTracks tracks, int index, double second) {
        float[] all = new float[tracks.count() * ColorTracks.CHANNELS];
        tracks.fill(second, all);
        int at = index * ColorTracks.CHANNELS;
        return new LinearColor(all[at], all[at + 1], all[at + 2], all[at + 3]);
    }

    /** Half of the way is the mix of the two keys by as much as the easing of the later one gives for a half. */
    @ParameterizedTest
    @EnumSource
    void eachColourIsTheMixOfTheKeysRoundIt(ColorMix mix) {
        ColorTracks tracks = tracks(mix);
        for (int key = 1; key < KEYS; key++) {
            double middle = (seconds[key - 1] + seconds[key]) / 2;
            for (int i = 0; i < COLORS; i++) {
                LinearColor before = colors.get(key - 1).get(i);
                LinearColor after = colors.get(key).get(i);
                LinearColor mixed = mix.mix(before, after, easing(key).at(0.5));
                LinearColor found = color(tracks, i, middle);
                assertThat(found.red()).isCloseTo(mixed.red(), within(1e-5f));
                assertThat(found.green()).isCloseTo(mixed.green(), within(1e-5f));
                assertThat(found.blue()).isCloseTo(mixed.blue(), within(1e-5f));
            }
        }
    }

    /** On a key there is nothing of the others, and outside of all there is the nearest. */
    @ParameterizedTest
    @EnumSource
    void eachKeyIsReachedExactly(ColorMix mix) {
        ColorTracks tracks = tracks(mix);
        for (int i = 0; i < COLORS; i++) {
            for (int key = 0; key < KEYS; key++) {
                assertThat(color(tracks, i, seconds[key]))
                        .isEqualTo(colors.get(key).get(i));
            }
            assertThat(color(tracks, i, -1)).isEqualTo(colors.get(0).get(i));
            assertThat(color(tracks, i, 11)).isEqualTo(colors.get(KEYS - 1).get(i));
        }
    }

    /** What is drawn for a time may be kept for all times that come to the same one. */
    @Test
    void theTimeBetweenTheKeysHasTheSameColours() {
        ColorTracks tracks = tracks(ColorMix.OKLAB);
        for (double second = -2; second < 12; second += 0.37) {
            double inside = tracks.within(second);
            assertThat(inside).isBetween(seconds[0], seconds[KEYS - 1]);
            assertThat(color(tracks, 1, inside)).isEqualTo(color(tracks, 1, second));
        }
    }

    /** W3C CSS Color Module Level 4, "Interpolating with Alpha": what is transparent does not stain the mix. */
    @ParameterizedTest
    @EnumSource
    void aColourThatFadesInIsItselfFromTheStart(ColorMix mix) {
        LinearColor amber = new LinearColor(1, 0.5f, 0.1f, 1);
        ColorTrack track = ColorTrack.keyed(
                List.of(new ColorKey(0, LinearColor.TRANSPARENT, Easing.LINEAR), new ColorKey(4, amber, Easing.LINEAR)),
                mix);
        for (double second = 0.5; second < 4; second += 0.5) {
            LinearColor at = track.at(second);
            assertThat(at.alpha()).isCloseTo((float) (second / 4), within(1e-6f));
            assertThat(at.red()).isCloseTo(1, within(1e-3f));
            assertThat(at.green()).isCloseTo(0.5f, within(1e-3f));
            assertThat(at.blue()).isCloseTo(0.1f, within(1e-3f));
        }
    }
}
