package org.duskloom.engine.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShowReaderTest {
    private static final String MAP = "prop,pixel,x,y\ndaisy,1,0,0\ndaisy,2,1,0\n";

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    @Test
    void readsATimelineAndTheMapBesideIt() throws IOException {
        Files.createDirectory(folder.resolve("maps"));
        write("maps/garden.csv", MAP);
        write("show.json", timeline("\"map\": \"maps/garden.csv\", \"groups\": {\"all\": [\"*\"]}", ""));
        Show show = read().orElseThrow();
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(show.map().pixelCount()).isEqualTo(2);
        assertThat(show.groups().groupNames()).containsExactly("all");
        assertThat(show.timeline().frameCount()).isEqualTo(40);
        assertThat(show.inputs())
                .extracting(input -> folder.relativize(input.path()).toString())
                .containsExactly("show.json", "maps/garden.csv");
        // As sha256sum (GNU coreutils 9.1) says.
        assertThat(show.inputs().get(1).sha256Hex())
                .isEqualTo("44f565a21b901a4fd934be5a5d6e668379db9f176d1b85dc3f4b7dbc496b7603");
    }

    @Test
    void reportsTheProblemsOfAllFilesInOneRun() throws IOException {
        write("garden.csv", "prop,pixel,x,y\ndaisy,1,0,left\ndaisy,2,1,0\n");
        write("show.json", timeline("\"map\": \"garden.csv\"", "\"sed\": 7,"));
        read();
        assertThat(lines())
                .containsExactly(
                        "garden.csv:2:11: error: \"y\" is \"left\"",
                        "show.json:2:1: error: the timeline has no field \"sed\"");
    }

    @Test
    void givesAShowWithErrorsToThoseWhoLookForMore() throws IOException {
        write("garden.csv", MAP);
        write("show.json", timeline("\"map\": \"garden.csv\"", "\"sed\": 7,"));
        assertThat(read()).isPresent();
        assertThat(problems.hasErrors()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            gardn.csv      | there is no file "gardn.csv"; did you mean "garden.csv"?
            Garden.CSV     | there is no file "Garden.CSV"; did you mean "garden.csv"?
            maps/plott.csv | there is no file "maps/plott.csv"; did you mean "maps/plot.csv"?
            pond.csv       | there is no file "pond.csv"; looked for FOLDER/pond.csv
            map/plot.csv   | there is no file "map/plot.csv"; looked for FOLDER/map/plot.csv
            maps           | "maps" is a folder, not a file; name the file inside it
            """)
    void saysWhereAFileIsNamedThatIsMissing(String named, String message) throws IOException {
        Files.createDirectory(folder.resolve("maps"));
        write("maps/plot.csv", MAP);
        write("garden.csv", MAP);
        write("show.json", timeline("\"map\": \"" + named + "\"", ""));
        assertThat(read()).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(folder + "/show.json:1:35: error: " + message.replace("FOLDER", folder.toString()));
    }

    /** Nobody writes into the pipe: whoever opened it would wait for ever. */
    @ParameterizedTest
    @ValueSource(strings = {"map", "display"})
    @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void refusesAPipeWhereItIsNamed(String field) throws Exception {
        assumeThat(new ProcessBuilder("mkfifo", folder.resolve("pipe").toString())
                        .start()
                        .waitFor())
                .isZero();
        write("show.json", timeline("\"" + field + "\": \"pipe\"", ""));
        assertThat(read()).isEmpty();
        assertThat(lines()).singleElement().asString().endsWith("error: \"pipe\" is a pipe or a device, not a file");
    }

    @Test
    void tellsADisplayFromATimeline() throws IOException {
        write("show.json", "{\"duskloom\": \"display/1\", \"shapes\": {}, \"props\": [], \"units\": \"mm\"}");
        assertThat(read()).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(folder + "/show.json:1:14: error: this is a display, not a timeline;"
                        + " give a timeline that names it: \"display\": \"show.json\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "display": "far/night.json" | ; its display is FOLDER/far/night.json
            "map": "garden.csv"         | ; it has no display, only the map FOLDER/garden.csv
            "map": 3                    | ''
            """)
    void tellsATimelineFromADisplay(String pixels, String hint) throws IOException {
        write("show.json", timeline(pixels, ""));
        assertThat(ShowReader.readDisplay(folder.resolve("show.json"), problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(folder + "/show.json:1:14: error: this is a timeline, not a display"
                        + hint.replace("FOLDER", folder.toString()));
    }

    /** One error, not one for every field. */
    @Test
    void tellsATimelineThatSaysItIsADisplay() throws IOException {
        write("show.json", timeline("\"map\": \"garden.csv\"", "").replace("timeline/1", "display/1"));
        assertThat(read()).isEmpty();
        assertThat(ShowReader.readDisplay(folder.resolve("show.json"), problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(folder + "/show.json:1:14: error: the file says that it is a display, but has"
                        + " \"layers\", as a timeline does; for a timeline write \"duskloom\": \"timeline/1\";"
                        + " it says what is played when, and names its display");
    }

    @ParameterizedTest
    @ValueSource(strings = {"shapes", "props"})
    void tellsADisplayThatSaysItIsATimeline(String field) throws IOException {
        write("night.json", "{\"duskloom\": \"timeline/1\", \"" + field + "\": {}}");
        write("show.json", timeline("\"display\": \"night.json\"", ""));
        assertThat(read()).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(folder + "/night.json:1:14: error: the file says that it is a timeline, but has \""
                        + field + "\", as a display does; for a display write \"duskloom\": \"display/1\";"
                        + " it says where pixels hang, and a timeline names it: \"display\": \"night.json\"");
    }

    /** A field of the other kind by which nothing is told is one error, as any that does not belong there. */
    @Test
    void takesAFileAtItsWordThatHasWhatItSays() throws IOException {
        write("garden.csv", MAP);
        write("show.json", timeline("\"map\": \"garden.csv\"", "\"props\": [],"));
        read();
        assertThat(lines()).containsExactly("show.json:2:1: error: the timeline has no field \"props\"");
    }

    private Optional<Show> read() {
        return ShowReader.read(folder.resolve("show.json"), problems);
    }

    private List<String> lines() {
        return Inputs.shown(problems).stream()
                .map(line -> line.replace(folder + "/", "").replaceAll(";.*", ""))
                .toList();
    }

    private void write(String name, String text) throws IOException {
        Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    private static String timeline(String pixels, String more) {
        return "{\"duskloom\": \"timeline/1\", " + pixels + ",\n" + more + " \"length\": \"1s\", \"layers\": []}";
    }
}
