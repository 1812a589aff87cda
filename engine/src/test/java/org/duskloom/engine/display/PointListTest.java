package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PointListTest {
    private final Problems problems = new Problems();

    private List<Point> read(String json, int atLeast) {
        return PointList.read(Inputs.json(json), "\"points\"", atLeast, problems)
                .orElse(List.of());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            [3, -4]              ~ 3    ~ -4  ~ 0
            [3, -4, 5.5]         ~ 3    ~ -4  ~ 5.5
            [1e3, 2E-1]          ~ 1000 ~ 0.2 ~ 0
            [1000000000, -1e9]   ~ 1e9  ~ -1e9 ~ 0
            [-0, 0.0, 1e-400]    ~ 0    ~ 0   ~ 0
            """)
    void aPlaceHasTwoOrThreeNumbers(String json, double x, double y, double z) {
        Point point = PointList.point(Inputs.json(json), "\"at\"", problems).orElseThrow();
        assertThat(point.distance(new Point(x, y, z))).isZero();
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            []                   ~ "at" has 0 items; allowed: 2 or 3 numbers, [x, y] or [x, y, z]
            [1]                  ~ "at" has 1 item; allowed: 2 or 3 numbers, [x, y] or [x, y, z]
            [1,5, 2,5]           ~ "at" has 4 items; allowed: 2 or 3 numbers, [x, y] or [x, y, z]; the decimal sign is a dot: [1.5, 2.5]
            [1, 2, 3, 4, 5]      ~ "at" has 5 items; allowed: 2 or 3 numbers, [x, y] or [x, y, z]
            [[1, 2], 3]          ~ x in "at" must be a number, not a list
            [1, null]            ~ y in "at" must be a number, not null; leave the field out instead
            [1, 2, "3"]          ~ z in "at" must be a number, not the text "3"; write 3 without quotes
            [1, 2, 1000000001]   ~ z in "at" is 1000000001; allowed: a number from -1000000000 to 1000000000
            [1, -1e308]          ~ y in "at" is -1e308; allowed: a number from -1000000000 to 1000000000
            {"x": 1, "y": 2}     ~ "at" must be a list [ ], not an object
            "1, 2"               ~ "at" must be a list [ ], not the text "1, 2"; write [1, 2], without quotes
            """)
    void teachesWhatAPlaceIs(String json, String expected) {
        assertThat(PointList.point(Inputs.json(json), "\"at\"", problems)).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().endsWith(": error: " + expected);
    }

    /** Every wrong coordinate of every place is told in one run, where it stands; and no place is made up. */
    @Test
    void tellsAllThatIsWrongAtOnce() {
        assertThat(read("[[0, 0],\n [true, \"b\"],\n [1],\n [2, 2, {}]]", 1)).isEmpty();
        assertThat(Inputs.shown(problems)).hasSize(4);
        assertThat(Inputs.shown(problems).get(0)).startsWith("in.json:2:3: error: x in item 2 of \"points\" must");
        assertThat(Inputs.shown(problems).get(1)).startsWith("in.json:2:9: error: y in item 2 of \"points\" must");
        assertThat(Inputs.shown(problems).get(2)).startsWith("in.json:3:2: error: item 3 of \"points\" has 1 item");
        assertThat(Inputs.shown(problems).get(3)).startsWith("in.json:4:9: error: z in item 4 of \"points\" must");
    }

    @ParameterizedTest
    @CsvSource({"0, 1, true", "1, 1, false", "1, 2, true", "2, 2, false", "9, 2, false"})
    void asksForAsManyPlacesAsAStepNeeds(int places, int atLeast, boolean tooFew) {
        String json = IntStream.range(0, places).mapToObj(i -> "[0, " + i + "]").collect(Collectors.joining(","));
        assertThat(read("[" + json + "]", atLeast)).hasSize(tooFew ? 0 : places);
        assertThat(problems.errorCount()).isEqualTo(tooFew ? 1 : 0);
    }

    /** What is written with all its digits is read to the last bit, in its order. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void writtenPlacesComeBack(long seed) {
        Random random = new Random(seed);
        List<Point> points = IntStream.range(0, 300)
                .mapToObj(i ->
                        new Point(random.nextGaussian() * 1e4, random.nextInt(9999) / 8.0, random.nextDouble() * 1e-6))
                .toList();
        String json = points.stream()
                .map(point -> "[" + point.x() + ", " + point.y() + ", " + point.z() + "]")
                .collect(Collectors.joining(", "));
        assertThat(read("[" + json + "]", 1)).isEqualTo(points);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** A list of a hundred thousand wrong places ends with a limit, not with a hundred thousand lines. */
    @Test
    void hugeWrongListsEndSoon() {
        assertThat(read("[" + "[1], ".repeat(100_000) + "[1]]", 1)).isEmpty();
        assertThat(Inputs.shown(problems)).hasSize(Problems.LIMIT);
    }
}
