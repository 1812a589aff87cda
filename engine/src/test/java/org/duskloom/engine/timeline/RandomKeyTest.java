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
