package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code survey} and {@code map --from} with one file in the place of another. */
class MistakenFilesTest {
    private static final Path DISPLAY = Project.file("demos/garden/display.json");

    @TempDir
    private Path folder;

    private Path picture;
    private Path table;

    @BeforeEach
    void makeFiles() throws IOException {
        picture =
                Files.write(folder.resolve("located.png"), HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452"));
        table = Files.writeString(folder.resolve("measured.csv"), "prop,pixel,x,y,sure\ndaisy-1,1,3,4,0.9\n");
    }

    private Ran run(Object... args) {
        return Ran.with(args).without(folder);
    }

    @Test
    void aPictureIsNoTable() {
        String said = "located.png: error: is a picture; a table of places is wanted here; 'duskloom locate' finds the"
                + " places of the lights in pictures, and writes the table\n1 error\n";
        Ran survey = run("survey", DISPLAY, picture, "--photo");
        assertThat(survey.code()).isEqualTo(3);
        assertThat(survey.err()).isEqualTo(said);
        Ran map = run("map", DISPLAY, "--from", picture, "-o", folder.resolve("map.csv"));
        assertThat(map.code()).isEqualTo(3);
        assertThat(map.err()).isEqualTo(said);
        assertThat(folder.resolve("map.csv")).doesNotExist();
    }

    @Test
    void aFolderOfPicturesIsNoTable() {
        Ran survey = run("survey", DISPLAY, folder, "--photo");
        assertThat(survey.code()).isEqualTo(3);
        assertThat(survey.err())
                .contains("error: is a folder; a table of places is wanted here; 'duskloom locate' finds");
    }

    /** It has all columns of a pixel map, too, but its y counts down. */
    @Test
    void placesInAPictureAreNoPixelMap() {
        String said =
                "measured.csv:1:16: error: the column \"sure\" says that these are places in a picture, as \"duskloom"
                        + " locate\" writes them, and not on the stage; \"duskloom map DISPLAY.json --from\" makes a pixel map";
        Ran locate = run("locate", picture, "--display", table, "-o", "-");
        assertThat(locate.code()).isEqualTo(3);
        assertThat(locate.err()).startsWith(said);
        Ran started = run("new", folder.resolve("started"), "--map", table);
        assertThat(started.code()).isEqualTo(3);
        assertThat(started.err()).startsWith(said);
        assertThat(folder.resolve("started")).doesNotExist();
    }

    @Test
    void aPictureIsNoDisplay() {
        Ran survey = run("survey", picture, table, "--photo");
        assertThat(survey.code()).isEqualTo(3);
        assertThat(survey.err())
                .startsWith("located.png:1:1: error: this is no text, it is a picture; is it the right file?");
    }

    @Test
    void theDisplayAndTheTableAreExchanged() {
        Ran survey = run("survey", table, DISPLAY, "--photo");
        assertThat(survey.code()).isEqualTo(2);
        assertThat(survey.err())
                .startsWith("duskloom survey: the display and the measurements are exchanged; type: duskloom survey "
                        + DISPLAY + " measured.csv\n");
        Ran map = run("map", table, "--from", DISPLAY, "-o", "-");
        assertThat(map.code()).isEqualTo(2);
        assertThat(map.err()).contains("; type: duskloom map " + DISPLAY + " --from measured.csv -o -\n");
    }

    /** Whoever has a pixel map need not make one. */
    @Test
    void aPixelMapIsNoDisplay() throws IOException {
        Path fence = Files.writeString(folder.resolve("fence.csv"), "# by Ada\nprop,pixel,x,y\nfence,1,0,0\n");
        assertThat(run("map", fence, "-o", folder.resolve("map.csv")))
                .isEqualTo(new Ran(
                        3,
                        "",
                        "fence.csv:2:1: error: this is a table, not a timeline or a display; it is a pixel map already;"
                                + " a timeline names it: \"map\": \"fence.csv\"\n1 error\n"));
        assertThat(folder.resolve("map.csv")).doesNotExist();
    }
}
