package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two rings of one place are found whatever else hangs in the garden. */
class SharedSpaceTest {
    private static final String SHAPES = "\"ring\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 90}}]},"
            + " \"lamp\": {\"build\": [{\"points\": [[0, 0]]}]},"
            + " \"dense\": {\"build\": [{\"line\": {\"from\": [0, 0], \"to\": [5, 0], \"count\": 6}}]},"
            + " \"fence\": {\"build\": [{\"line\": {\"from\": [0, 0], \"to\": [7960, 0], \"count\": 200}}]}";

    private static String prop(String name, String shape, double x, double y) {
        return "{\"name\": \"" + name + "\", \"shape\": \"" + shape + "\", \"at\": [" + x + ", " + y + "]}";
    }

    private static List<String> told(String shapes, String... props) {
        Problems problems = new Problems();
        DisplayChecks.warn(Displays.display(Displays.json(shapes, String.join(", ", props)), Map.of()), problems);
        return Inputs.shown(problems).stream()
                .filter(line -> line.contains("hangs where"))
                .map(line -> line.replaceAll("^.*?warning: ", "").replaceAll(" pixels are .*", ""))
                .toList();
    }

    private static final String BOTH = "prop \"b\" hangs where prop \"a\" is: 12 of its 12";

    /** Lamps of one pixel have no step; they do not count among the steps that tell what is near. */
    @Test
    void lampsDoNotCount() {
        assertThat(told(
                        SHAPES,
                        prop("l1", "lamp", 1000, 0),
                        prop("l2", "lamp", 1100, 0),
                        prop("l3", "lamp", 1200, 0),
                        prop("a", "ring", 0, 0),
                        prop("b", "ring", 10, 0)))
                .containsExactly(BOTH);
    }

    /** The usual step is the middle one by length, not by place in the file. */
    @Test
    void theOrderOfPropsDoesNotMatter() {
        assertThat(told(SHAPES, prop("a", "ring", 0, 0), prop("d", "dense", 900, 0), prop("b", "ring", 10, 0)))
                .containsExactly(BOTH);
        assertThat(told(SHAPES, prop("d", "dense", 900, 0), prop("a", "ring", 0, 0), prop("b", "ring", 10, 0)))
                .containsExactly(BOTH);
    }

    /** Hundreds of pixels that come between in the file, but not in space. */
    @Test
    void whatHangsElsewhereDoesNotHideThem() {
        assertThat(told(SHAPES, prop("a", "ring", 0, 0), prop("f", "fence", 0, 5000), prop("b", "ring", 10, 0)))
                .containsExactly(BOTH);
    }

    /** Far out and below zero they are found as well as at the middle, along every axis. */
    @ParameterizedTest
    @CsvSource({"-3000, 0", "0, -3000", "12345, 6789", "-0.5, -0.5"})
    void anywhereOnTheStage(double x, double y) {
        assertThat(told(SHAPES, prop("a", "ring", x, y), prop("b", "ring", x - 7, y + 7)))
                .containsExactly(BOTH);
    }

    /** A display of two pixels, or of three, is a display. */
    @Test
    void fewPixelsAreNoTrouble() {
        String pair = "\"pair\": {\"build\": [{\"points\": [[0, 0], [100, 0]]}]}, \"lamp\": {\"build\": [{\"points\":"
                + " [[0, 0]]}]}";
        assertThat(told(pair, prop("a", "pair", 0, 0))).isEmpty();
        assertThat(told(pair, prop("a", "pair", 0, 0), prop("l", "lamp", 500, 0)))
                .isEmpty();
        assertThat(told(pair, prop("a", "pair", 0, 0), prop("b", "pair", 0, 1)))
                .containsExactly("prop \"b\" hangs where prop \"a\" is: 2 of its 2");
    }

    /** Two of ten pixels are a fifth; two of eleven are less. */
    @ParameterizedTest
    @CsvSource({"10, 1", "11, 0"})
    void aFifthIsEnough(int pixels, int told) {
        String row = IntStream.range(0, pixels)
                .mapToObj(i -> "[" + 40 * i + ", " + (i < 2 ? 10 : 2000) + "]")
                .collect(Collectors.joining(", "));
        assertThat(told(
                        SHAPES + ", \"row\": {\"build\": [{\"points\": [" + row + "]}]}",
                        prop("f", "fence", 0, 0),
                        prop("r", "row", 0, 0)))
                .hasSize(told);
    }
}
