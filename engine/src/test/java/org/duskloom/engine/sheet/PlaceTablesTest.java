package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

class PlaceTablesTest {
    /**
     * Reversed, the first pixel is (1, 0), which hangs at (0, 2) from the place when it is doubled and turned by 90
     * degrees.
     */
    private static final String DISPLAY = """
            {"duskloom": "display/1",
             "shapes": {"leaf \\"a\\"": {
               "build": [{"points": [[0, 0], [3, 4]], "part": "rows"}, {"points": [[1, 0]]}],
               "parts": {"rows/1": "1", "rows/2": "2", "tip": "2-3"}}},
             "props": [
               {"name": "one", "shape": "leaf \\"a\\"", "at": [10, 20, 5]},
               {"name": "two", "shape": "leaf \\"a\\"", "at": [100, 0], "turn": 90, "scale": 2, "mirror": "y", "reverse": true}
             ]}
            """;

    private static Display display() {
        Problems problems = new Problems();
        Display display = SourceText.of(DISPLAY.getBytes(StandardCharsets.UTF_8), "d.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems))
                .orElseThrow(() -> new AssertionError(problems.inFileOrder()));
        assertThat(problems.hasErrors()).isFalse();
        return display;
    }

    @Test
    void placesOfProps() {
        assertThat(new PlaceTables(CsvStyle.COMMAS).places(display())).isEqualTo("""
                prop,shape,x,y,z,turn,tilt,yaw,scale,mirror,reverse,pixels,first_pixel,first_x,first_y,first_z
                one,"leaf ""a""\",10,20,5,0,0,0,1,,,3,1,10,20,5
                two,"leaf ""a""\",100,0,0,90,0,0,2,y,yes,3,4,100,2,0
                """);
    }

    /** As a spreadsheet opens it where a comma is the decimal sign. */
    @Test
    void writesSemicolonsToo() {
        PlaceTables tables = new PlaceTables(CsvStyle.SEMICOLONS);
        assertThat(tables.places(display()).lines().skip(2))
                .containsExactly("two;\"leaf \"\"a\"\"\";100;0;0;90;0;0;2;y;yes;3;4;100;2;0");
        assertThat(tables.parts(display().shapes()))
                .startsWith("\uFEFFshape;pixel;x;y;z;parts\n\"leaf \"\"a\"\"\";1;0;0;0;\"rows; rows/1\"\n");
    }

    @Test
    void partsOfPixels() {
        assertThat(new PlaceTables(CsvStyle.COMMAS).parts(display().shapes())).isEqualTo("""
                shape,pixel,x,y,z,parts
                "leaf ""a""\",1,0,0,0,rows; rows/1
                "leaf ""a""\",2,3,4,0,rows; rows/2; tip
                "leaf ""a""\",3,1,0,0,tip
                """);
    }
}
