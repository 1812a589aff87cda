package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
    @TempDir
    private Path folder;

    @Test
    void sumsUpASoundShow() throws IOException {
        assertThat(Ran.with("check", Garden.in(folder))).isEqualTo(new Ran(0, """
                title    Longest day
                pixels   20
                props    3
                groups   1
                frames   80
                length   2s
                rate     40
                layers   2
                cues     3
                effects  chase, sweep, twinkle
                flashing not looked for here: 'duskloom report' does
                """, ""));
    }

    @Test
    void callsAShowWithoutATitleByItsFile() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": "30000/1001", "length": "1001ms", "layers": []}
                """);
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.err())
                .startsWith(
                        "show.json: warning: the timeline has no layers, so all its frames are dark; \"layers\" hold"
                                + " the cues\n");
        assertThat(ran.out()).isEqualTo("""
                title    show.json
                pixels   20
                props    3
                groups   0
                frames   30
                length   1.001s
                rate     30000/1001
                layers   0
                cues     0
                effects  none
                flashing not looked for here: 'duskloom report' does
                """);
    }

    /** Four things that stay dark: a cue without light, one under another, and pixels that no cue is played on. */
    private static final String DARK = """
            {"duskloom": "timeline/1", "map": "map.csv", "length": "2s", "layers": [{"cues": [
             {"on": "daisy-1", "effect": "wash"},
             {"on": "daisy-1", "effect": "wash", "with": {"color": "gold"}},
             {"on": "daisy-2", "effect": "wash", "with": {"color": "transparent"}}]}]}
            """;

    @Test
    void tellsWhatStaysDark() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, DARK);
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("""
                show.json:1:35: warning: no cue ever lights "daisy-2", "fence"
                show.json:2:2: warning: the cue is hidden by the cue at show.json:3:2 in all of its 80 frames; move it over \
                that, or give that one a "blend" such as "screen"
                show.json:4:2: warning: the cue paints nothing in all of its 80 frames; look at its opacity, its fades and \
                the alpha of its colours
                3 warnings
                """);
    }

    @Test
    void leavesThatOutWhenItShallBeFast() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, DARK);
        Ran ran = Ran.with("check", "--fast", show);
        assertThat(ran.err()).isEmpty();
        assertThat(ran).isEqualTo(new Ran(0, Ran.with("check", show).out(), ""));
    }

    /** The looks of the demos are seen, each on all that it is played on. */
    @Test
    void hasNothingToSayOfTheGarden() {
        assertThat(Ran.with("check", Project.file("demos/garden/show.json")).err())
                .isEmpty();
        assertThat(Ran.with("check", Project.file("demos/mast/show.json")).err())
                .isEmpty();
    }

    private static final String STAGED = """
            {"duskloom": "timeline/1", "map": "map.csv", "rate": 30, "length": "10s", "layers": [
             {"name": "ground", "cues": [
              {"name": "dusk", "at": "500ms", "for": "1.01s", "on": "fence", "effect": "wash"},
              {"at": "8s", "for": "500ms", "on": "fence", "effect": "sweep", "repeat": {"until": "8700ms"}}]},
             {"cues": [{"on": "daisy-1", "effect": "wash"}]}]}
            """;

    /** Frames are those from ceil(at * rate) up to ceil(end * rate): 1.51 s are 45.3 frames at 30 a second. */
    @Test
    void saysWhereEveryCueBeginsAndEnds() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, STAGED);
        assertThat(Ran.with("check", show, "--times").out().replace(folder + "/", ""))
                .isEqualTo("""
                from  to     frames    layer     cue          place
                0.5s  1.51s  15..46    "ground"  "dusk" wash  show.json:3:3
                8s    8.5s   240..255  "ground"  sweep        show.json:4:3
                8.5s  8.7s   255..261  "ground"  sweep        show.json:4:3
                0s    10s    0..300    "2"       wash         show.json:5:12
                """);
    }

    @Test
    void saysTheTimesToPrograms() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, STAGED.replace("dusk\", \"at", "d\\\"u\", \"at"));
        assertThat(Ran.with("check", show, "--times", "--json").out().replace(folder + "/", ""))
                .isEqualTo("""
                {
                  "duskloom": "times/1",
                  "cues": [
                    {"file": "show.json", "line": 3, "layer": "ground", "name": "d\\"u", "effect": "wash", "at": 0.5, "end": 1.51, "firstFrame": 15, "endFrame": 46},
                    {"file": "show.json", "line": 4, "layer": "ground", "name": "", "effect": "sweep", "at": 8, "end": 8.5, "firstFrame": 240, "endFrame": 255},
                    {"file": "show.json", "line": 4, "layer": "ground", "name": "", "effect": "sweep", "at": 8.5, "end": 8.7, "firstFrame": 255, "endFrame": 261},
                    {"file": "show.json", "line": 5, "layer": "2", "name": "", "effect": "wash", "at": 0, "end": 10, "firstFrame": 0, "endFrame": 300}
                  ]
                }
                """);
    }

    /** At 140 beats a minute a beat is 3/7 s. */
    @Test
    void saysBeatsAndMarkersInSeconds() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(folder.resolve("song.txt"), "1.5\t1.5\tverse\n4\t6\tchorus\n");
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "10s", "markers": "song.txt",
                 "beats": {"tempo": 140}, "layers": [{"cues": [
                  {"at": "1b", "until": "@chorus+7b", "on": "fence", "effect": "wash"}]}]}
                """);
        assertThat(Ran.with("check", show, "--times", "--fast").out().replace(folder + "/", ""))
                .isEqualTo("""
                from       to  frames   layer  cue   place
                0.428571s  7s  18..280  "1"    wash  show.json:3:3

                at    marker
                1.5s  "verse"
                4s    "chorus"
                6s    "chorus.end"
                """);
        assertThat(Ran.with("check", show, "--times", "--json").out()).contains("\"name\": \"chorus.end\", \"at\": 6}");
        assertThat(Ran.with("check", show).out())
                .contains("beats    140 a minute")
                .contains("markers  3");
    }

    private static final String OF_SCENES = """
            {"duskloom": "timeline/1", "map": "map.csv", "rate": 10, "length": "10s", "scenes": {
              "rise": {"length": "2s", "layers": [{"cues": [{"at": "1s", "on": "lead", "effect": "wash"}]}]}},
             "layers": [{"name": "ground", "cues": [
              {"name": "dawn", "at": "1s", "scene": "rise", "on": {"lead": "fence"}},
              {"at": "+500ms", "for": "1500ms", "scene": "rise", "on": {"lead": "daisy-1"}}]}]}
            """;

    /** Cues in scenes stand behind the cue that plays the scene, by the clock of the show; the second play is cut. */
    @Test
    void saysWhereTheCuesOfScenesBeginAndEnd() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, OF_SCENES);
        assertThat(Ran.with("check", show, "--times").out().replace(folder + "/", ""))
                .isEqualTo("""
                from  to  frames  layer     cue                  place
                1s    3s  10..30  "ground"  "dawn" scene "rise"  show.json:4:3
                2s    3s  20..30  "ground"  "dawn" > wash        show.json:2:49
                3.5s  5s  35..50  "ground"  scene "rise"         show.json:5:3
                4.5s  5s  45..50  "ground"  scene "rise" > wash  show.json:2:49
                """);
        assertThat(Ran.with("check", show, "--times", "--json").out())
                .contains("\"layer\": \"ground\", \"name\": \"dawn\", \"scene\": \"rise\", \"at\": 1, \"end\": 3,")
                .contains("\"within\": [\"rise\"], \"name\": \"\", \"effect\": \"wash\", \"at\": 4.5, \"end\": 5,");
        assertThat(Ran.with("check", show).out())
                .contains("layers   1")
                .contains("scenes   1")
                .contains("cues     2");
    }

    @Test
    void refusesJsonWithoutTimes() throws IOException {
        Ran ran = Ran.with("check", Garden.in(folder), "--json");
        assertThat(ran.code()).isEqualTo(ExitCode.USAGE);
        assertThat(ran.err()).contains("--json goes with --times");
    }

    /** A table without a row would be no answer. */
    @Test
    void saysThatADisplayHasNoTimes() throws IOException {
        Path display = folder.resolve("display.json");
        Files.writeString(display, """
                {"duskloom": "display/1", "units": "cm", "shapes": {"dot": {"build": [{"points": [[0, 0]]}]}},
                 "props": [{"name": "post", "shape": "dot", "at": [0, 0]}]}
                """);
        String help = "\n'duskloom check --help' shows what it takes.\n";
        String message = "duskloom check: --times lists the cues of shows, and display.json ";
        assertThat(Ran.with("check", display, "--times").without(folder))
                .isEqualTo(new Ran(ExitCode.USAGE, "", message + "is a display, which has none" + help));
        assertThat(Ran.with("check", display, display, "--times").without(folder))
                .isEqualTo(new Ran(ExitCode.USAGE, "", message + "and the others are displays" + help));
    }

    /** Four slips in two layers and one in the map: all in one run, in the order of the files, and how many. */
    @Test
    void listsAllProblemsOfAllFiles() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, """
                {
                  "duskloom": "timeline/1",
                  "map": "map.csv",
                  "length": "2s",
                  "palettes": {"dusk": ["#1b2a6b", "gold"]},
                  "layers": [
                    {"cues": [{"for": "2s", "on": ["daisy-3"], "effect": "swep"}]},
                    {"blend": "scren", "cues": [{"for": "1s", "on": ["fence"], "effect": "sweep", "with": {"width": 2}}]}
                  ]
                }
                """);
        Files.writeString(folder.resolve("map.csv"), "fence,8,0,0\n", StandardOpenOption.APPEND);
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.err()).isEqualTo("""
                map.csv:22:7: error: pixel 8 of "fence" stands twice; first at map.csv:21:7; the pixels of a prop are \
                numbered 1, 2, 3 in wiring order
                show.json:7:36: error: there is no prop and no group "daisy-3"; did you mean "daisy-1"?
                show.json:7:58: error: there is no effect "swep"; did you mean "sweep"?
                show.json:8:15: error: "blend" of layer 2 is "scren"; did you mean "screen"? allowed: normal, multiply, \
                screen, overlay, darken, lighten, color-dodge, color-burn, hard-light, soft-light, difference, \
                exclusion, plus-lighter
                show.json:8:101: error: "width" of sweep is 2; allowed: a number from 0 to 1
                5 errors
                """);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void warningsDoNotStopIt() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(
                show, Files.readString(show).replace("\"seed\": 7,", "\"palettes\": {\"dusk\": [\"gold\"]},"));
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("title    Longest day\n");
        assertThat(ran.err()).isEqualTo("""
                show.json:8:16: warning: no cue uses the palette "dusk"
                1 warning
                """);
    }

    @Test
    void aMissingFileIsBadInput() {
        Path none = folder.resolve("none.json");
        String said = none + ": error: there is no such file; looked for " + none + "\n1 error\n";
        assertThat(Ran.with("check", none)).isEqualTo(new Ran(3, "", said));
    }

    @Test
    void sumsUpSeveralFiles() throws IOException {
        Path display = TwoDaisies.display(folder, "daisy-2", "[0, 400]");
        Path show = Garden.in(folder.resolve("other"));

        assertThat(Ran.with("check", display, show).without(folder)).isEqualTo(new Ran(0, """
                display.json:
                units    cm
                extent   1.8 m wide, 5.6 m high
                shapes   1
                props    2
                pixels   12
                groups   1

                other/show.json:
                title    Longest day
                pixels   20
                props    3
                groups   1
                frames   80
                length   2s
                rate     40
                layers   2
                cues     3
                effects  chase, sweep, twinkle
                flashing not looked for here: 'duskloom report' does
                """, ""));
    }

    /** What is wrong in one file does not hide the others; a file that two name is complained of once. */
    @Test
    void listsTheProblemsOfSeveralFiles() throws IOException {
        Path display = TwoDaisies.display(folder, "daisy-1", "[0, 400]");
        Path show = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "display": "display.json", "length": "0s", "layers": []}
                """);

        Ran ran = Ran.with("check", display, show, folder.resolve("none.json")).without(folder);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .containsOnlyOnce("display.json:7:14: error: ")
                .contains("show.json:1:65: error: ")
                .contains("none.json: error: there is no such file")
                .endsWith("\n3 errors\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"duskloom": "frames/1"}     | 1:1: error: neither a timeline nor a display: "duskloom" is "frames/1"
            {"shapes": {}, "props": []}  | 1:1: error: neither a timeline nor a display
            []                           | 1:1: error: neither a timeline nor a display
            {"duskloom": 1}              | 1:1: error: neither a timeline nor a display
            """)
    void tellsWhatItTakes(String text, String said) throws IOException {
        Files.writeString(folder.resolve("file.json"), text);
        assertThat(Ran.with("check", folder.resolve("file.json")).without(folder))
                .isEqualTo(new Ran(
                        3, "", "file.json:" + said + "; \"duskloom\" says \"timeline/1\" or \"display/1\"\n1 error\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"timeline/2", "display/2"})
    void anotherVersionIsRefusedByItsReader(String format) throws IOException {
        Path file = Files.writeString(folder.resolve("file.json"), "{\"duskloom\": \"" + format + "\"}");
        Ran ran = Ran.with("check", file).without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("file.json:1:14: error: ").contains("this version reads");
    }
}
