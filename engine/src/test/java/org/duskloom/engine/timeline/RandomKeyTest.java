package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a cue's random choices hang on: its name; without one, its layer, start and effect. */
class RandomKeyTest {
    private static final String SPARKLE = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"2s\"}";

    @Test
    void staysWhenOtherCuesComeAndGo() {
        String key = keys(layer("sky", SPARKLE)).get(0);
        String other = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"1s\"}";
        String sameStart = "{\"on\": \"x\", \"effect\": \"wash\", \"at\": \"2s\"}";
        assertThat(keys(layer("sky", other, sameStart, SPARKLE, other)).get(2)).isEqualTo(key);
        assertThat(keys(layer("ground", SPARKLE), layer("sky", SPARKLE)).get(1)).isEqualTo(key);
    }

    @Test
    void staysWhenACueIsChangedInPlace() {
        String key = keys(layer("sky", SPARKLE)).get(0);
        String changed =
                "{\"on\": [\"y\"], \"effect\": \"twinkle\", \"at\": \"2000ms\", \"for\": \"1s\", \"opacity\": 0.5}";
        assertThat(keys(layer("sky", changed))).containsExactly(key);
    }

    @Test
    void differsWithLayerStartAndEffect() {
        assertThat(keys(
                        layer(
                                "sky",
                                SPARKLE,
                                "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"3s\"}",
                                "{\"on\": \"x\", \"effect\": \"drift\", \"at\": \"2s\"}"),
                        layer("ground", SPARKLE)))
                .doesNotHaveDuplicates();
    }

    @Test
    void differsForCuesThatShareAllThreeByTheirOrder() {
        List<String> keys = keys(layer("sky", SPARKLE, SPARKLE, SPARKLE));
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(keys(layer("sky", SPARKLE))).containsExactly(keys.get(0));
    }

    @Test
    void followsANameWhereverTheCueGoes() {
        String here = "{\"name\": \"worms\", \"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"2s\"}";
        String there = "{\"name\": \"worms\", \"on\": \"y\", \"effect\": \"drift\", \"at\": \"5s\"}";
        assertThat(keys(layer("sky", here))).isEqualTo(keys(layer("ground", there)));
        assertThat(keys(layer("sky", here, SPARKLE))).doesNotHaveDuplicates();
    }

    /** What moves a cue without its doing leaves its sparkle alone. */
    @Test
    void staysWhenACueThatItCountsFromIsMovedOrGetsLonger() {
        String following = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"+500ms\", \"for\": \"1s\"}";
        String afterIt = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"@rise.end-1s\", \"for\": \"1s\"}";
        List<String> keys = keys(layer("sky", rise("1s", "2s"), following, following, afterIt));
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(keys(layer("sky", rise("1500ms", "3s"), following, following, afterIt)))
                .isEqualTo(keys);
    }

    @Test
    void staysWhenItsDistanceFromTheCueBeforeIsChanged() {
        String close = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"+0s\", \"for\": \"1s\"}";
        String far = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"+2s\", \"for\": \"1s\"}";
        assertThat(keys(layer("sky", rise("1s", "2s"), close, close)))
                .isEqualTo(keys(layer("sky", rise("1s", "2s"), far, close)));
    }

    @Test
    void staysOfCuesThatCountFromNamesOrFollowOnWhenOthersAreAdded() {
        String wash = "{\"on\": \"x\", \"effect\": \"wash\", \"at\": \"+0s\", \"for\": \"1s\"}";
        String afterIt = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"@rise.end\", \"for\": \"1s\"}";
        String before = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"@rise\", \"for\": \"1s\"}";
        String following = "{\"on\": \"x\", \"effect\": \"twinkle\", \"at\": \"+0s\", \"for\": \"1s\"}";
        List<String> few = keys(layer("sky", rise("1s", "2s"), afterIt, following));
        List<String> many = keys(layer("sky", rise("1s", "2s"), wash, SPARKLE, before, afterIt, wash, following));
        assertThat(many).contains(few.get(1), few.get(2)).doesNotHaveDuplicates();
    }

    private static String rise(String at, String length) {
        return "{\"name\": \"rise\", \"on\": \"x\", \"effect\": \"wash\", \"at\": \"" + at + "\", \"for\": \"" + length
                + "\"}";
    }

    private static String layer(String name, String... cues) {
        return "{\"name\": \"" + name + "\", \"cues\": [" + String.join(", ", cues) + "]}";
    }

    private static List<String> keys(String... layers) {
        String all = Arrays.stream(layers).collect(Collectors.joining(", "));
        return Timelines.sound("{\"duskloom\": \"timeline/1\", \"map\": \"m.csv\", \"length\": \"9s\", \"layers\": ["
                        + all + "]}")
                .layers()
                .stream()
                .flatMap(layer -> layer.cues().stream())
                .map(Cue::randomKey)
                .toList();
    }
}
