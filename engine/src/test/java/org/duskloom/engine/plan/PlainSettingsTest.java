package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.TimelineReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Settings that are written alike are read once; others must never be taken for them. */
class PlainSettingsTest {
    private static final Probe PROBE = new Probe();

    private static Optional<PlainSettings> of(String settings, String more) {
        String json =
                "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"length\": \"9s\", \"rate\": 40, \"layers\": ["
                        + "{\"cues\": [{\"on\": \"a\", \"effect\": \"probe\", \"at\": \"0s\", \"for\": \"1s\", \"with\": {"
                        + settings
                        + "}" + more + "}]}]}";
        Problems problems = new Problems();
        Cue cue = TimelineReader.read(Inputs.json(json), problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)))
                .layers()
                .get(0)
                .cues()
                .get(0);
        return PlainSettings.of(PROBE, cue);
    }

    private static Optional<PlainSettings> of(String settings) {
        return of(settings, "");
    }

    /** Where it stands, and with how many blanks, is nothing. */
    @Test
    void theSameWordsAreTheSameSettings() {
        assertThat(of("\"size\": 0.25, \"palette\": [\"red\", \"blue\"]"))
                .isPresent()
                .isEqualTo(of("\n\n  \"size\":0.25,\"palette\":\n[ \"red\" , \"blue\" ]"));
        assertThat(of("").orElseThrow().effect()).isSameAs(PROBE);
    }

    /** Texts that look alike once quotes, brackets and commas are gone. */
    @Test
    void otherWordsAreOthers() {
        List<String> written = List.of(
                "",
                "\"size\": 1",
                "\"size\": \"1\"",
                "\"size\": true",
                "\"size\": false",
                "\"size\": \"true\"",
                "\"size\": [1]",
                "\"size\": [1, 1]",
                "\"size\": [[1], 1]",
                "\"size\": [[1, 1]]",
                "\"size\": 11",
                "\"arms\": 1",
                "\"size\": \"a\", \"arms\": \"b\"",
                "\"size\": \"ab\", \"arms\": \"\"",
                "\"size\": [\"a\", \"b\"]",
                "\"size\": [\"a,b\"]",
                "\"size\": [\"ab\", \"\"]",
                "\"size\": {\"stops\": [1]}",
                "\"size\": [\"stops\", 1]",
                "\"size\": {\"stops\": 1, \"step\": 2}",
                "\"size\": {\"stops\": {\"step\": 2}}",
                "\"size\": \"t1:1\"",
                "\"size\": \"1n1:1\"");
        Set<PlainSettings> plain = new LinkedHashSet<>();
        written.forEach(settings -> plain.add(of(settings).orElseThrow(() -> new AssertionError(settings))));
        assertThat(plain).hasSameSizeAs(written);
    }

    /** What moves counts from the start of its cue, so it is another in every cue. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"size\": {\"keys\": [[\"0s\", 0], [\"1s\", 1]]}",
                "\"size\": {\"follow\": \"beat\", \"from\": 0, \"to\": 1}",
                "\"arms\": 3, \"size\": {\"keys\": []}"
            })
    void whatMovesIsNotPlain(String settings) {
        assertThat(of(settings)).isEmpty();
    }

    /** A null is an error wherever it stands, which every cue is told that says so. */
    @ParameterizedTest
    @ValueSource(
            strings = {"\"size\": null", "\"palette\": [\"red\", null]", "\"palette\": {\"stops\": [\"red\", null]}"})
    void whatIsNoValueIsNotPlain(String settings) {
        assertThat(of(settings)).isEmpty();
    }

    /** What is added from play to play on top of a default is nowhere in the settings as written. */
    @Test
    void whatChangesFromPlayToPlayIsNotPlain() {
        assertThat(of("\"arms\": 3", ", \"repeat\": {\"count\": 2, \"change\": {\"size\": 0.1}}"))
                .isEmpty();
        assertThat(of("\"arms\": 3", ", \"repeat\": {\"count\": 2}")).isPresent();
    }
}
