package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which pixels stand apart and which steps jump, where most steps are 10 and 40 is far (common practice, no source).
 */
class StrayPixelsTest {
    private static List<String> shown(Problems problems) {
        return Inputs.shown(problems).stream()
                .map(line -> line.replaceAll("^.*?warning: ", "").replaceAll(";.*", ""))
                .filter(line -> line.contains("stands apart") || line.contains("jumps"))
                .toList();
    }

    /** Warnings of a map whose rows are given after a row of five that is sound. */
    private static List<String> ofMap(String... rows) {
        String sound = IntStream.rangeClosed(1, 5)
                .mapToObj(i -> "bench," + i + "," + 10 * i + ",-900,low\n")
                .collect(Collectors.joining());
        Problems problems = new Problems();
        PixelMap map = MapReader.read(
                        Inputs.source("map.csv", "prop,pixel,x,y,part\n" + sound + String.join("\n", rows) + "\n"),
                        problems)
                .orElseThrow();
        DisplayChecks.warnOfPlainMap(GroupTree.of(map), problems);
        assertThat(problems.errorCount()).isZero();
        return shown(problems);
    }

    /** Rows of a prop whose pixels hang at these x, in parts of these names. */
    private static String[] fence(String xs, String parts) {
        String[] x = xs.split(" ");
        String[] part = parts.split(" ");
        return IntStream.range(0, x.length)
                .mapToObj(i -> "fence," + (i + 1) + "," + x[i] + ",0," + (part.length > i ? part[i] : ""))
                .toArray(String[]::new);
    }

    private static List<String> ofShape(Map<String, String> files, String shape) {
        Problems problems = new Problems();
        String json = Displays.json("\"s\": {" + shape + "}", "{\"name\": \"a\", \"shape\": \"s\", \"at\": [0, 0]}");
        DisplayChecks.warn(Displays.display(json, files), problems);
        return shown(problems);
    }

    private static List<String> ofPoints(String xs) {
        String points = Arrays.stream(xs.split(" ")).map(x -> "[" + x + ", 0]").collect(Collectors.joining(", "));
        return ofShape(Map.of(), "\"build\": [{\"points\": [" + points + "]}]");
    }

    /** A pixel counts from 1 within its own prop, wherever that is in the map. */
    @Test
    void pixelsCountWithinTheirProp() {
        assertThat(ofMap(fence("0 10 20 300 40 50 60", "")))
                .containsExactly("pixel 4 of prop \"fence\" stands apart from its neighbours, at 300, 0");
    }

    /**
     * A lamp that is a part by itself may hang anywhere; the first, a middle and the last pixel of a longer part may
     * not.
     */
    @ParameterizedTest
    @CsvSource({
        "a a a lamp b b b, 0",
        "a a a b b b b, 1",
        "a a a a b b b, 1",
        "a a a a a a a, 1",
        "'', 1",
    })
    void onlyAPartOfItsOwnMayStandApart(String parts, int told) {
        assertThat(ofMap(fence("0 10 20 300 40 50 60", parts))).hasSize(told);
    }

    /** It must be far from both neighbours: these are far from one of them, or as far as just allowed. */
    @ParameterizedTest
    @CsvSource({
        "-10 0 10 20 10 52 62 72, 0",
        "-10 0 10 20 62 52 62 72, 0",
        "20 10 0 40 -1 -11 -21, 0",
        "20 10 0 -41 -1 -11 -21, 0",
        "20 10 0 41 0 -10 -20, 1",
        "20 10 0 42 1 -9 -19, 1",
        "-20 -10 0 100 40 50 60, 1",
        "-20 -10 0 100 41 51 61, 0"
    })
    void farFromBothWhileTheyAreNeighbours(String xs, int told) {
        assertThat(ofMap(fence(xs, ""))).hasSize(told);
    }

    /** Where most pixels share one place, nothing is usual, and so nothing is unusual. */
    @ParameterizedTest
    @CsvSource({"0 0 0 0 300 0 0 0 0", "0 0 0 0 0 0 300 300 300 300"})
    void pixelsAtOnePlaceTellNothing(String xs) {
        assertThat(ofMap(fence(xs, ""))).isEmpty();
        assertThat(ofPoints(xs)).isEmpty();
    }

    /** Four steps are just not far, and a pixel is told of once, although the wire jumps to it and back. */
    @ParameterizedTest
    @CsvSource({
        "0 10 20 30 70 80 90 100, ''",
        "0 10 20 30 71 81 91 101, the spacing of shape \"s\" jumps: pixel 5 is 41 from the one before",
        "0 10 20 300 40 50 60 70 80 90 100 110, pixel 4 of shape \"s\" stands apart from its neighbours",
    })
    void jumpsAreMoreThanFourSteps(String xs, String told) {
        assertThat(ofPoints(xs)).hasSize(told.isEmpty() ? 0 : 1).allMatch(line -> line.startsWith(told));
    }

    /** Of 95 and 100, the difference is one in twenty of the longer one: they are the way of the wire. */
    @ParameterizedTest
    @CsvSource({"95, 0", "94, 2"})
    void longStepsOfOneLength(int other, int told) {
        StringBuilder xs = new StringBuilder("0");
        int x = 0;
        for (int i = 1; i <= 20; i++) {
            x += i == 6 ? 100 : i == 13 ? other : 10;
            xs.append(' ').append(x);
        }
        assertThat(ofPoints(xs.toString())).hasSize(told);
    }

    /** Within a part the wire does not jump, whatever other parts there are. */
    @ParameterizedTest
    @CsvSource({"6, 1", "5, 0", "7, 1"})
    void aJumpWithinAPartIsTold(int lastOfLow, int told) {
        StringBuilder csv = new StringBuilder("pixel,x,y,part\n");
        for (int i = 1; i <= 10; i++) {
            csv.append(i + "," + (10 * i + (i > 5 ? 500 : 0)) + ",0," + (i <= lastOfLow ? "low" : "high") + "\n");
        }
        assertThat(ofShape(Map.of("s.csv", csv.toString()), "\"pixels\": \"s.csv\""))
                .hasSize(told)
                .allMatch(line -> line.equals(
                        "the spacing of shape \"s\" jumps: pixel 6 is 510 from the one before, most are 10"));
    }
}
