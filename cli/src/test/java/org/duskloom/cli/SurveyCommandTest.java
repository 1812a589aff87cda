package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.camera.Displays;
import org.duskloom.engine.camera.Evening;
import org.duskloom.engine.camera.TestCamera;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SurveyCommandTest {
    /** An L of seven pixels and a straight fence, as described. */
    private static final String DISPLAY = """
            {
              "duskloom": "display/1",
              "units": "mm",
              "shapes": {
                "hook": {"build": [{"points": [[0, 0], [0, 100], [0, 200], [0, 300], [100, 300], [200, 300], [300, 300]]}]},
                "fence": {"build": [{"line": {"from": [0, 0], "to": [900, 0], "count": 10}}]}
              },
              "props": [
                {"name": "hook-1", "shape": "hook", "at": [1000, 0]},
                {"name": "hook-2", "shape": "hook", "at": [2000, 0], "turn": 90},
                {"name": "fence", "shape": "fence", "at": [0, 0]}
              ]
            }
            """;

    /** The first hook turned by a quarter to the left about its foot, the second as described, the fence too. */
    private static final String MEASURED = """
            # from the left post of the fence
            prop,pixel,x,y
            hook-1,1,1000,0
            hook-1,3,800,0
            hook-1,4,700,0
            hook-1,5,700,100
            hook-1,7,700,300
            hook-2,1,2000,0
            hook-2,4,1700,0
            hook-2,7,1700,300
            hook-2,2,1900,0
            fence,1,0,0
            fence,5,400,0
            fence,10,900,0
            """;

    private static final String REPORT = """
            measured: 12 pixels of 3 of 3 props
            measuring error: about 2 mm in each coordinate, a third of the tolerance

            1 prop differs:
            hook-1: a quarter turn to the left: 90 degrees counter-clockwise
              5 pixels, 405 mm from where they are described; left over: 0 mm

            2 props as described: hook-2, fence

            to paste into "props":
            {"name": "hook-1", "shape": "hook", "at": [1000, 0], "turn": 90},
            """;

    @TempDir
    private Path folder;

    private Path display;
    private Path measured;

    @BeforeEach
    void write() throws IOException {
        display = Files.writeString(folder.resolve("display.json"), DISPLAY);
        measured = Files.writeString(folder.resolve("measured.csv"), MEASURED);
    }

    /**
     * 405 mm: the root of the mean of 2 r^2, with r^2 = 0, 4, 9, 10 and 18 squares of 100 mm: sqrt(2 * 41/5) = 4.05 of
     * them.
     */
    @Test
    void tellsWhatDiffers() {
        Ran ran = Ran.with("survey", display, measured, "--tolerance", "6");
        assertThat(ran).isEqualTo(new Ran(0, REPORT, ""));
        assertThat(Ran.with("survey", "--tolerance=6", display, measured)).isEqualTo(ran);
    }

    /** In the picture a unit is 2 mm, and y counts down from its upper edge. */
    @Test
    void takesPlacesInAPhoto() throws IOException {
        StringBuilder photo = new StringBuilder();
        for (String line : MEASURED.lines().skip(1).toList()) {
            String[] cells = line.split(",");
            boolean header = cells[0].equals("prop");
            photo.append(
                    header
                            ? line
                            : cells[0] + "," + cells[1] + "," + (50 + Integer.parseInt(cells[2]) / 2) + ","
                                    + (700 - Integer.parseInt(cells[3]) / 2));
            photo.append('\n');
        }
        Path file = Files.writeString(folder.resolve("photo.csv"), photo);
        Ran ran = Ran.with("survey", display, file, "--photo", "--tolerance", "6");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("from a photo: one unit of the picture is 2 mm, upright, y counts down; ")
                .contains("hook-1: a quarter turn to the left")
                .endsWith("{\"name\": \"hook-1\", \"shape\": \"hook\", \"at\": [1000, 0], \"turn\": 90},\n");
    }

    /** A picture of the garden from 25 degrees aside, by a lens that bends. The places are known by their column. */
    @Test
    void takesPlacesInAPhotoFromTheSide() throws IOException {
        PixelMap garden = Displays.garden().map();
        TestCamera camera = Evening.usual(garden.stage(), 7).near(16).camera();
        StringBuilder places = new StringBuilder("prop,pixel,x,y,sure\n");
        for (int pixel = 0; pixel < garden.pixelCount(); pixel += 3) {
            Prop prop = garden.props().get(garden.propIndexOf(pixel));
            double[] at = camera.place(pixel, 0);
            places.append(prop.name() + "," + (pixel - prop.firstPixel() + 1) + "," + at[0] + "," + at[1] + ",1\n");
        }
        Path file = Files.writeString(folder.resolve("places.csv"), places);
        Ran ran = Ran.with("survey", Project.file("demos/garden/display.json"), file);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("430 of 430 pixels agree with that")
                .contains("taken from 25 degrees to the right and 2.7 degrees above the middle, 14")
                .contains("\n18 props as described: ")
                .doesNotContain("paste");
    }

    /** What was pasted is read back, and then nothing differs. */
    @Test
    void theEntryCanBePasted() throws IOException {
        String out = Ran.with("survey", display, measured, "--tolerance", "6").out();
        String entry = out.lines().reduce((first, last) -> last).orElseThrow();
        Files.writeString(
                display, DISPLAY.replace("{\"name\": \"hook-1\", \"shape\": \"hook\", \"at\": [1000, 0]},", entry));
        assertThat(Ran.with("survey", display, measured, "--tolerance", "6").out())
                .contains("3 props as described: hook-1, hook-2, fence\n")
                .doesNotContain("paste");
    }

    @Test
    void listsAllProblemsOfTheMeasurements() throws IOException {
        Files.writeString(measured, "prop,pixel,x,y\nhok-1,1,0,0\nhook-2,9,0,0\nfence,1,zero,0\n");
        assertThat(Ran.with("survey", display, measured).without(folder)).isEqualTo(new Ran(3, "", """
                measured.csv:2:1: error: there is no prop "hok-1"; did you mean "hook-1"?
                measured.csv:3:8: error: "pixel" is "9"; allowed: a whole number from 1 to 7
                measured.csv:4:9: error: "x" is "zero"; a number is needed, such as 12 or -0.5
                3 errors
                """));
    }

    @Test
    void refusesFilesThatAreNotThere() throws IOException {
        Ran noMeasurements = Ran.with("survey", display, folder.resolve("none.csv"));
        assertThat(noMeasurements.code()).isEqualTo(3);
        assertThat(noMeasurements.err()).contains("none.csv");
        Files.writeString(display, DISPLAY.replace("\"shape\": \"fence\"", "\"shape\": \"fense\""));
        Ran badDisplay = Ran.with("survey", display, folder.resolve("none.csv"));
        assertThat(badDisplay.code()).isEqualTo(3);
        assertThat(badDisplay.err()).contains("there is no shape \"fense\"").contains("none.csv");
        assertThat(badDisplay.out()).isEmpty();
    }

    @Test
    void refusesAPhotoOfTwoPixels() throws IOException {
        Files.writeString(measured, "prop,pixel,x,y\nfence,1,0,0\nfence,9,100,0\n");
        Ran ran = Ran.with("survey", display, measured, "--photo");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("there are not enough measurements to lay a photo on the stage");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-5", "NaN", "Infinity", "five"})
    void refusesNoTolerance(String tolerance) {
        Ran ran = Ran.with("survey", display, measured, "--tolerance", tolerance);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--tolerance");
    }

    @Test
    void needsBothFiles() {
        assertThat(Ran.with("survey").code()).isEqualTo(2);
        Ran ran = Ran.with("survey", display);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("MEASURED.csv");
    }
}
