package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    @Test
    void saysWhichFileIsMissing() throws IOException {
        write("show.json", timeline("\"map\": \"gardn.csv\"", ""));
        assertThat(read()).isEmpty();
        assertThat(lines()).containsExactly("gardn.csv: error: there is no such file");
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
