package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.IntFunction;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** Pixel maps that are larger or more broken than any display. */
class MapLimitsTest {
    private final Problems problems = new Problems();

    private Optional<PixelMap> read(int rows, IntFunction<String> row) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int i = 1; i <= rows; i++) {
            csv.append(row.apply(i)).append('\n');
        }
        return MapReader.read(Inputs.source("map.csv", csv.toString()), problems);
    }

    @Test
    void takesAsManyPropsAsItSays() {
        PixelMap map = read(PixelMap.MAX_PROPS, i -> "p" + i + ",1," + i + ",0").orElseThrow();
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(map.props()).hasSize(PixelMap.MAX_PROPS);
        assertThat(map.propIndex("p" + PixelMap.MAX_PROPS)).hasValue(PixelMap.MAX_PROPS - 1);
    }

    /** Told once, at the first row that is too many: what seems to be left out before it may stand behind it. */
    @Test
    void onePropMoreIsTooMany() {
        int most = PixelMap.MAX_PROPS;
        PixelMap map = read(most + 3, i -> name(i, most + 3) + "," + i + ",0").orElseThrow();
        assertThat(map.props()).hasSize(most);
        assertThat(Inputs.shown(problems))
                .containsExactly("map.csv:100003:1: error: the map holds more than 100000 props, the rest is not read;"
                        + " split the display into several");
    }

    /** The second row is the third pixel of the first prop, the last row its second. */
    private static String name(int row, int last) {
        return row == 2 ? "p1,3" : row == last ? "p1,2" : "p" + row + ",1";
    }

    @Test
    void onePixelMoreIsTooMany() {
        int most = PixelMap.MAX_PIXELS;
        read(most + 2, i -> i <= most ? "a," + i + "," + i + ",0" : "b," + (i - most) + ",0,1");
        assertThat(Inputs.shown(problems))
                .containsExactly("map.csv:1000002:1: error: the map holds more than 1000000 pixels, the rest is not"
                        + " read; split the display into several");
    }

    /** A prop of which every second pixel is missing has one fault, not hundreds; the first five tell it. */
    @Test
    void tellsOnlyTheFirstGapsOfAProp() {
        PixelMap map =
                read(20, i -> (i > 10 ? "b," : "a,") + 2 * i + "," + i + ",0").orElseThrow();
        assertThat(map.pixelCount()).isEqualTo(20);
        assertThat(Inputs.shown(problems))
                .hasSize(10)
                .startsWith("map.csv:2:3: error: \"a\" lacks pixel 1; the pixels of a prop are numbered 1, 2, 3 without"
                        + " gaps")
                .contains("map.csv:12:3: error: \"b\" lacks pixels 1 to 21; the pixels of a prop are numbered 1, 2, 3"
                        + " without gaps");
    }

    /** Of a number that stands three times the first row counts, and each other is told by it. */
    @Test
    void theFirstOfARepeatedNumberCounts() {
        PixelMap map = read(4, i -> "a," + Math.min(i, 2) + "," + 10 * i + ",0").orElseThrow();
        assertThat(map.pixelCount()).isEqualTo(2);
        assertThat(map.stage().x(1)).isEqualTo(20);
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.substring(0, line.lastIndexOf(';')))
                .containsExactly(
                        "map.csv:4:3: error: pixel 2 of \"a\" stands twice; first at map.csv:3:3",
                        "map.csv:5:3: error: pixel 2 of \"a\" stands twice; first at map.csv:3:3");
    }
}
