package org.duskloom.engine.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables, as a spreadsheet saves them, in the place of JSON. */
class GivenTableTest {
    private static final String TABLE = "error: this is a table, not a timeline or a display; ";

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private boolean isTable(String text) {
        return GivenTable.isOne(Inputs.source("gardens/fence.csv", text), problems);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            `prop,pixel,x,y\n`                    | 1:1
            `PROP;Pixel;X;Y\n`                    | 1:1
            `"prop","pixel","x","y"\r\na,1,0,0`   | 1:1
            `\n# by Ada\n  \nprop, pixel, x, y`   | 4:1
            `# by Ada\r\rprop,x,y\rfence,1,0`     | 3:1
            `  prop,pixel,x,y\n`                  | 1:3
            `y,x,pixel,prop,z,part`               | 1:1
            """)
    void aPixelMapIsToldByItsColumns(String text, String place) {
        assertThat(isTable(text)).isTrue();
        assertThat(Inputs.shown(problems))
                .containsExactly("gardens/fence.csv:" + place + ": " + TABLE
                        + "it is a pixel map already; a timeline names it: \"map\": \"fence.csv\"");
    }

    @Test
    void otherTablesOfPlacesAreToldToo() {
        isTable("pixel,x,y\n1,0,0\n");
        isTable("prop,pixel,x,y,sure\na,1,640,480,0.9\n");
        assertThat(Inputs.shown(problems))
                .containsExactlyInAnyOrder(
                        "gardens/fence.csv:1:1: " + TABLE + "a timeline or a display starts with {",
                        "gardens/fence.csv:1:1: " + TABLE + "\"duskloom map DISPLAY.json --from fence.csv\" makes a"
                                + " pixel map of places in a picture");
    }

    /** A timeline that named it would be told that it cannot be read. */
    @ParameterizedTest
    @ValueSource(strings = {"prop\tpixel\tx\ty\nfence\t1\t0\t0", "pixel\tx\ty", "prop\tpixel\tx\ty\tsure"})
    void tabsHaveToGo(String text) {
        assertThat(isTable(text)).isTrue();
        assertThat(Inputs.shown(problems))
                .containsExactly("gardens/fence.csv:1:1: " + TABLE + "tabs stand between its cells, and a pixel map has"
                        + " commas or semicolons there: save it anew");
    }

    /** Some have an x and a y, and are no pixel map. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            prop,shape,x,y,z,pixels,first_pixel   | places.csv as "duskloom sheet" writes it: a row for each prop, not for each pixel
            port;prop;pixel;universe;slot;colors  | patch.csv as "duskloom render" writes it: channels of pixels without their places
            """)
    void aTableOfOursIsToldByItsName(String text, String told) {
        assertThat(isTable(text)).isTrue();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "gardens/fence.csv:1:1: error: this is " + told + "; a timeline or a display starts with {");
    }

    /** Whatever else it is, the reader of JSON says what is wrong with it, or nothing. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\n\n",
                "# only a note",
                "{\"duskloom\": \"display/1\"}",
                "{\"x\": 1, \"y\": 2}",
                "// x, y\n{}",
                "// props hang by prop, x, y, z\n{}",
                "/* a, x, y */ {}",
                "[\"x\", \"y\"]",
                "{\"groups\": {\"all\": [\"w\", \"x\", \"y\", \"z\"]}}",
                "  {\"groups\": {\"all\": [\"w\", \"x\", \"y\", \"z\"]}}",
                "\n\t[\"w\", \"x\", \"y\", \"z\"]",
                "prop,pixel\nx,y\n",
                "x",
                "xy,yx"
            })
    void theRestIsForTheReaderOfJson(String text) {
        assertThat(isTable(text)).isFalse();
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** Of a timeline that names a map as its display the map is told, by its name there; nothing else is wrong. */
    @Test
    void aMapIsNoDisplayOfATimeline() throws IOException {
        Files.writeString(folder.resolve("fence.csv"), "prop,pixel,x,y\nfence,1,0,0\n");
        Path show = Files.writeString(
                folder.resolve("show.json"),
                "{\"duskloom\": \"timeline/1\", \"display\": \"fence.csv\", \"rate\": 40, \"length\": \"1s\","
                        + " \"layers\": []}");
        assertThat(ShowReader.read(show, problems)).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("fence.csv:1:1: " + TABLE);
    }
}
