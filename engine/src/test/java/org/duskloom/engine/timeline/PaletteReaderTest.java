package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.text.ShortestDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaletteReaderTest {
    /**
     * Stops without a position lie evenly between their neighbours, worked out on paper; as with colour stops in CSS
     * Images Level 3, section 3.4.3, the first one lies at 0 and the last at 1. Hard bands and cycles keep room behind
     * the last.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "red"                                               | 0
            ["red"]                                             | 0
            ["red", "lime"]                                     | 0 1
            ["red", "lime", "blue"]                             | 0 0.5 1
            [["red", 0.2], "lime", "blue"]                      | 0.2 0.6 1
            ["red", "lime", ["blue", 0.5]]                      | 0 0.25 0.5
            ["red", ["lime", 0.2], "blue", "gold", ["teal", 0.8], "pink"] | 0 0.2 0.4 0.6 0.8 1
            [["red", 0.5], ["lime", 0.5]]                       | 0.5 0.5
            ["red", ["lime", 1], "blue"]                        | 0 1 1
            {"stops": ["red", "lime"]}                          | 0 1
            {"stops": ["red", "lime"], "step": true}            | 0 0.5
            {"stops": ["red", "lime", "blue", "gold"], "cyclic": true} | 0 0.25 0.5 0.75
            {"stops": ["red", ["lime", 0.5], "blue"], "step": true} | 0 0.5 0.75
            {"stops": [["red", 0.4], "lime", "blue"], "cyclic": true} | 0.4 0.6 0.8
            {"stops": ["red", ["lime", 1]], "cyclic": true}     | 0 1
            """)
    void placesStops(String palette, String positions) {
        assertThat(read(palette).stops().stream()
                        .map(stop -> ShortestDecimal.of(Math.rint(stop.position() * 1e12) / 1e12))
                        .collect(Collectors.joining(" ")))
                .isEqualTo(positions);
    }

    /** The keyword red is the sRGB colour 255, 0, 0 (W3C CSS Color Level 4, section 6.1). */
    @Test
    void isOneColourWhereOneIsWritten() {
        assertThat(read("\"red\"").stops())
                .singleElement()
                .extracting(PaletteStop::color)
                .satisfies(color -> {
                    assertThat(color.red()).isEqualTo(1);
                    assertThat(color.green()).isZero();
                    assertThat(color.blue()).isZero();
                });
    }

    /** With doubles, 0.2 + (1 - 0.2) * 3 / 3 is 1.0000000000000002, which is no place on a palette. */
    @Test
    void keepsTheLastStopWithin1() {
        assertThat(read("[[\"red\", 0.2], \"gold\", \"blue\", \"white\"]").stops())
                .extracting(PaletteStop::position)
                .last()
                .isEqualTo(1.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"false", "true"})
    void keepsEveryStopBetweenItsNeighbours(String cyclic) {
        for (int place = 0; place <= 1000; place++) {
            for (int open = 1; open <= 7; open++) {
                String stops = "[[\"red\", 0." + "%03d".formatted(place % 1000) + "]" + ", \"gold\"".repeat(open) + "]";
                List<Double> positions = read("{\"stops\": " + stops + ", \"cyclic\": " + cyclic + "}").stops().stream()
                        .map(PaletteStop::position)
                        .toList();
                assertThat(positions).isSorted().allMatch(position -> position >= 0 && position <= 1);
            }
        }
    }

    /** A list of colours in a timeline is spread as {@link Palette#evenly} spreads it. */
    @ParameterizedTest
    @CsvSource({"false, false", "true, false", "false, true", "true, true"})
    void spreadsColoursEvenly(boolean stepped, boolean cyclic) {
        for (int count = 1; count <= 7; count++) {
            Palette palette = read("{\"stops\": [%s], \"step\": %s, \"cyclic\": %s}"
                    .formatted(String.join(", ", Collections.nCopies(count, "\"white\"")), stepped, cyclic));
            Palette even = Palette.evenly(
                    Collections.nCopies(count, LinearColor.WHITE), new PaletteStyle(ColorMix.OKLAB, stepped, cyclic));
            assertThat(palette.stops()).isEqualTo(even.stops());
            assertThat(palette.style()).isEqualTo(even.style());
        }
    }

    @Test
    void readsTheStyle() {
        assertThat(read("[\"red\", \"lime\"]").style()).isEqualTo(PaletteStyle.SMOOTH);
        assertThat(read("{\"stops\": [\"red\"], \"mix\": \"linear\", \"cyclic\": true}")
                        .style())
                .isEqualTo(new PaletteStyle(ColorMix.LINEAR, false, true));
        assertThat(read("{\"stops\": [\"red\"], \"mix\": \"oklch\", \"step\": true}")
                        .style())
                .isEqualTo(new PaletteStyle(ColorMix.OKLCH, true, false));
    }

    @Test
    void takesUpTo256Stops() {
        String stops = String.join(", ", Collections.nCopies(256, "\"red\""));
        assertThat(read("[" + stops + "]").stops()).hasSize(256);
        assertThat(Timelines.problems(Timelines.withFields("\"palettes\": {\"a\": [" + stops + ", \"red\"]}")))
                .containsExactly("show.json:1:94: error: palette \"a\" has 257 items; allowed: 1 to 256");
    }

    private static Palette read(String palette) {
        return Timelines.sound(Timelines.withFields("\"palettes\": {\"a\": " + palette + "}"))
                .palettes()
                .get("a")
                .palette();
    }
}
