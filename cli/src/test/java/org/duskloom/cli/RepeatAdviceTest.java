package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a report says of a scene that is played ten times a second, and blinks once each time. */
class RepeatAdviceTest {
    @TempDir
    private Path folder;

    /** Cues that play it one by one have no repeat that could be slower. */
    @Test
    void speaksOfNoRepeatWhereThereIsNone() throws IOException {
        String plays = IntStream.range(0, 10)
                .mapToObj(i -> "{\"scene\": \"blink\", \"at\": \"" + 100 * i + "ms\", \"for\": \"100ms\"}")
                .collect(Collectors.joining(", "));
        assertThat(report(plays)).contains("there: blink: wash.").doesNotContain("repeat");
    }

    @Test
    void speaksOfTheRepeatThatPlaysAScene() throws IOException {
        assertThat(
                        report(
                                "{\"scene\": \"blink\", \"for\": \"100ms\", \"repeat\": {\"count\": 10, \"every\": \"100ms\"}}"))
                .matches(
                        ".*In blink: wash \\(scene \"blink\" is played from \\S*blinking.json:4:23\\): its plays start every"
                                + " 0.1s; at least .*");
    }

    /** Of scenes in scenes it is the one with the repeat, wherever that stands. */
    @Test
    void speaksOfTheSceneThatIsRepeated() throws IOException {
        String inner = "\"twice\": {\"length\": \"200ms\", \"layers\": [{\"cues\": [{\"scene\": \"blink\"}]}]}";
        assertThat(report(
                        "{\"scene\": \"twice\", \"for\": \"100ms\", \"repeat\": {\"count\": 10, \"every\": \"100ms\"}}",
                        inner))
                .matches(
                        ".*In blink: wash \\(scene \"twice\" is played from \\S*blinking.json:5:23\\): its plays start.*");
    }

    /** A cue that repeats itself needs no scene to be found. */
    @Test
    void aCueThatIsRepeatedIsNamedItself() throws IOException {
        assertThat(
                        report(
                                "{\"name\": \"beat\", \"effect\": \"wash\", \"on\": \"bed\", \"for\": \"50ms\", \"repeat\": {\"count\": 10, \"every\": \"100ms\"}}"))
                .contains("In beat: its plays start every 0.1s; at least ");
    }

    private String report(String cues) throws IOException {
        return report(cues, "");
    }

    private String report(String cues, String moreScenes) throws IOException {
        Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\nbed,1,0,0\nbed,2,1,0\n");
        Path show = Files.writeString(
                folder.resolve("blinking.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s",
                 "scenes": {"blink": {"length": "100ms", "layers": [
                   {"cues": [{"for": "50ms", "on": "bed", "effect": "wash"}]}]}%s},
                 "layers": [{"cues": [%s]}]}
                """.formatted(moreScenes.isEmpty() ? "" : ",\n" + moreScenes, cues));
        return Ran.with("report", show).out().replaceAll("\\s+", " ");
    }
}
