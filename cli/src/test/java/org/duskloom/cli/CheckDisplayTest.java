package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code check} says of displays and of the groups beside a map. */
class CheckDisplayTest {
    @TempDir
    private Path folder;

    @Test
    void sumsUpASoundDisplay() throws IOException {
        assertThat(Ran.with("check", TwoDaisies.display(folder, "daisy-2", "[0, 400]")))
                .isEqualTo(new Ran(0, """
                units    cm
                extent   1.8 m wide, 5.6 m high
                shapes   1
                props    2
                pixels   12
                groups   1
                """, ""));
    }

    /** A display in two depths, of which it is not said what its lengths are: 2900 by 1400, from 0 to 900. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "units": "mm", | mm                           | 2.9 m wide, 1.4 m high, 0 to 0.9 m deep
            "units": "cm", | cm                           | 29 m wide, 14 m high, 0 to 9 m deep
            "units": "m",  | m                            | 2900 m wide, 1400 m high, 0 to 900 m deep
            "units": "in", | in                           | 2900 in wide, 1400 in high, 0 to 900 in deep
            ``             | none written, taken for mm   | 2900 wide, 1400 high, 0 to 900 deep
            """)
    void tellsHowLargeADisplayIs(String field, String units, String extent) throws IOException {
        Path file = Files.writeString(folder.resolve("deep.json"), """
                {"duskloom": "display/1", %s
                 "shapes": {"a": {"build": [{"points": [[0, 0], [1450, 700, 450], [2900, 1400, 900]]}]}},
                 "props": [{"name": "a", "shape": "a", "at": [-1000, 0]}]}
                """.formatted(field));
        assertThat(Ran.with("check", file)).isEqualTo(new Ran(0, """
                units    %s
                extent   %s
                shapes   1
                props    1
                pixels   3
                groups   0
                """.formatted(units, extent), ""));
        Path show = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "display": "deep.json", "length": "1s",
                 "layers": [{"cues": [{"on": "a", "effect": "wash"}]}]}
                """);
        assertThat(Ran.with("check", show).out()).contains("\nextent   " + extent + "\n");
    }

    /** Metres that are written as millimetres are not told as nothing. */
    @Test
    void tellsHowSmallADisplayIs() throws IOException {
        Path file = Files.writeString(folder.resolve("small.json"), """
                {"duskloom": "display/1", "units": "mm",
                 "shapes": {"a": {"build": [{"points": [[0, 0], [6, 1.5]]}]}},
                 "props": [{"name": "a", "shape": "a", "at": [0, 0]}]}
                """);
        assertThat(Ran.with("check", file).out()).contains("extent   0.006 m wide, 0.0015 m high\n");
    }

    /** Wires and leads have lengths; without them nothing needs the unit but sheets, which ask for it themselves. */
    @ParameterizedTest
    @CsvSource({
        "'', '', 0",
        "'\"line\": {\"mm2\": 0.75}, ', '', 1",
        "'', '\"lead\": {\"mm2\": 1.5, \"length\": 4}, ', 1"
    })
    void warnsOfLengthsWithoutAUnit(String line, String lead, int warnings) throws IOException {
        Path file = Files.writeString(folder.resolve("bare.json"), """
                {"duskloom": "display/1",
                 "shapes": {"a": {"build": [{"line": {"from": [0, 0], "to": [9, 0], "count": 10}}]}},
                 "props": [{"name": "a", "shape": "a", "at": [0, 0]}],
                 "ports": [{%s"name": "left", "chain": ["a"]}],
                 "supplies": [{"name": "shed", "volts": 5, "amps": 9, "feeds": [{%s"port": "left"}]}]}
                """.formatted(line, lead));
        String said =
                "bare.json: warning: the display does not say its \"units\": 'duskloom report' takes its lengths for"
                        + " millimetres; write \"units\": \"mm\", \"cm\", \"m\" or \"in\"\n1 warning\n";
        assertThat(Ran.with("check", file).without(folder).err()).isEqualTo(warnings == 0 ? "" : said);
        Path show = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "display": "bare.json", "length": "1s",
                 "layers": [{"cues": [{"on": "a", "effect": "wash"}]}]}
                """);
        assertThat(Ran.with("check", show).without(folder).err()).isEqualTo(warnings == 0 ? "" : said);
    }

    /** Two rings in one place: every pixel has another one on it, and the props hang in the same space. */
    @Test
    void warnsOfSlipsInADisplay() throws IOException {
        Path file = TwoDaisies.display(folder, "Daisy-1", "[0, 0]");
        Ran ran = Ran.with("check", file).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("units    cm\n");
        assertThat(ran.err())
                .contains(
                        "display.json:7:14: warning: prop \"Daisy-1\" hangs where prop \"daisy-1\" is: 6 of its 6 pixels")
                .contains(" differ by upper and lower case only")
                .contains("display.json:7:14: warning: pixels in no group: \"Daisy-1\" (6 of 6)");
    }

    /** A timeline shows the slips of its display too; which pixels are in no group says its cues. */
    @Test
    void warnsOfSlipsInTheDisplayOfAShow() throws IOException {
        TwoDaisies.display(folder, "Daisy-1", "[0, 0]");
        Path show = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "display": "display.json", "length": "1s", "layers": []}
                """);
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("title    show.json\npixels   12\nprops    2\n");
        assertThat(ran.err())
                .contains("display.json:7:14: warning: prop \"Daisy-1\" hangs where prop \"daisy-1\" is")
                .doesNotContain("in no group");
    }

    /** Groups beside a map are for that timeline alone; one is used through a pattern, one by a group. */
    @Test
    void warnsOfGroupsBesideAMapThatNothingUses() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(
                show,
                Files.readString(show)
                        .replace(
                                "\"groups\": {\"daisies\": [\"daisy-*\"]}",
                                "\"groups\": {\"daisies\": [\"dai*y-*\"], \"first\": \"daisy-1\", \"ends\": [\"first\"]}")
                        .replace("[\"daisies\"]", "[\"dais?es\"]"));
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("""
                show.json:5:58: warning: group "ends" is not used; play a cue on it, or remove it if no other show uses it
                1 warning
                """);
    }

    /** A display alone cannot tell which groups are used; with its shows it can. */
    @Test
    void warnsOfGroupsOfADisplayThatNoneOfItsShowsUses() throws IOException {
        Path display = TwoDaisies.display(folder, "daisy-2", "[0, 400]");
        Path idle = Files.writeString(folder.resolve("idle.json"), """
                {"duskloom": "timeline/1", "display": "display.json", "length": "1s", "layers": [
                  {"cues": [{"on": "daisy-1", "effect": "wash"}]}]}
                """);
        Path busy = Files.writeString(folder.resolve("busy.json"), """
                {"duskloom": "timeline/1", "display": "display.json", "length": "1s", "layers": [
                  {"cues": [{"on": "daisies", "effect": "wash"}]}]}
                """);
        String warning = "display.json:9:14: warning: group \"daisies\" is not used; play a cue on it, or remove it"
                + " if no other show uses it\n1 warning\n";

        assertThat(Ran.with("check", "--fast", display, idle).without(folder).err())
                .isEqualTo(warning);
        assertThat(Ran.with("check", "--fast", idle, display).without(folder).err())
                .isEqualTo(warning);
        assertThat(Ran.with("check", "--fast", idle, busy, display).err()).isEmpty();
        assertThat(Ran.with("check", "--fast", idle).err()).isEmpty();
        assertThat(Ran.with("check", "--fast", display).err()).isEmpty();
    }
}
