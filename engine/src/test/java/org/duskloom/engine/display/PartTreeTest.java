package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts by path, and in each other: {@link PartTree}, {@link MadeParts} and {@link PartPath}. */
class PartTreeTest {
    private final Problems problems = new Problems();
    private final MadeParts made = new MadeParts();

    private static List<String> shown(Map<String, int[]> byPath) {
        return byPath.entrySet().stream()
                .map(part -> part.getKey() + Arrays.toString(part.getValue()))
                .toList();
    }

    private List<Part> tree(Map<String, int[]> byPath) {
        return new PartTree(byPath, path -> new Location("garden.json", path.length(), 5), problems).parts();
    }

    private static int[] pixels(int... pixels) {
        return pixels;
    }

    @Test
    void stepsOfOneNameShareAPartAndCountItsLinesOn() {
        made.add("petals", 4, 4, List.of(pixels(0, 1), pixels(3, 2)));
        made.add("rim", 0, 2, List.of());
        made.add("petals", 8, 2, List.of(pixels(0, 1)));
        assertThat(shown(made.byPath()))
                .containsExactly(
                        "petals[4, 5, 6, 7, 8, 9]", "petals/1[4, 5]", "petals/2[7, 6]", "petals/3[8, 9]", "rim[0, 1]");
    }

    /** A part that the user numbers is not run into by the lines of a grid. */
    @Test
    void linesTakeNumbersThatAreFree() {
        made.add("rows/7", 0, 2, List.of());
        made.add("rows", 2, 2, List.of(pixels(0), pixels(1)));
        made.add("rows/seven", 4, 1, List.of());
        made.add("rows/08", 5, 1, List.of());
        made.add("rows/3", 7, 1, List.of());
        made.add("rows", 6, 1, List.of(pixels(0)));
        assertThat(shown(made.byPath()))
                .containsExactly(
                        "rows[0, 1, 2, 3, 4, 5, 7, 6]",
                        "rows/08[5]",
                        "rows/10[6]",
                        "rows/3[7]",
                        "rows/7[0, 1]",
                        "rows/8[2]",
                        "rows/9[3]",
                        "rows/seven[4]");
    }

    @Test
    void pixelsOfAnInnerPartAreInAllThoseRoundIt() {
        made.add("arch/left/top", 3, 2, List.of());
        made.add("arch/left", 0, 1, List.of());
        assertThat(shown(made.byPath())).containsExactly("arch[3, 4, 0]", "arch/left[3, 4, 0]", "arch/left/top[3, 4]");
    }

    /** A name of ten digits or more is a name, and not the number that the next line has to be above. */
    @Test
    void hugeNumbersAreNames() {
        made.add("rows/99999999999999999999", 0, 1, List.of());
        made.add("rows", 1, 1, List.of(pixels(0)));
        assertThat(made.byPath()).containsKeys("rows/1", "rows/99999999999999999999");
    }

    /** Into each other and out again is the same, whatever the paths are. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void comesBackFromTheTree(long seed) {
        Random random = new Random(seed);
        for (int step = 0; step < 30; step++) {
            StringBuilder path = new StringBuilder("p" + random.nextInt(3));
            for (int depth = random.nextInt(4); depth > 0; depth--) {
                path.append('/').append(random.nextBoolean() ? "a b" : "" + (1 + random.nextInt(3)));
            }
            made.add(path.toString(), step * 4, 4, random.nextBoolean() ? List.of() : List.of(pixels(3, 2, 1, 0)));
        }
        TreeMap<String, int[]> byPath = made.byPath();
        List<Part> parts = tree(byPath);
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(shown(MadeParts.byPath(parts))).isEqualTo(shown(byPath));
        assertThat(parts).extracting(Part::name).isSorted().allMatch(name -> name.length() == 2);
    }

    /** Only the part that reaches out is left out, with what is in it; each is told where it stands. */
    @Test
    void aPartThatReachesOutIsTold() {
        TreeMap<String, int[]> byPath = new TreeMap<>(Map.of(
                "a",
                pixels(0, 1, 2),
                "a/in",
                pixels(2, 0),
                "a/out",
                pixels(1, 3, 4),
                "a/out/deep",
                pixels(9),
                "b",
                pixels(3)));
        List<Part> parts = tree(byPath);
        assertThat(shown(MadeParts.byPath(parts))).containsExactly("a[0, 1, 2]", "a/in[2, 0]", "b[3]");
        assertThat(Inputs.shown(problems))
                .containsExactly("garden.json:5:5: error: part \"a/out\" has pixel 4, which is not in \"a\"; a part"
                        + " inside another has pixels of that one only");
    }

    @ParameterizedTest
    @CsvSource({"rim, '', rim", "petals/1, petals, 1", "a/b/c d, a/b, c d"})
    void pathsComeApartAtTheirLastSlash(String path, String parent, String name) {
        assertThat(PartPath.parent(path)).isEqualTo(parent);
        assertThat(PartPath.name(path)).isEqualTo(name);
    }

    /** Fifteen names fit into each other, so that a numbered part inside makes sixteen. */
    @ParameterizedTest
    @CsvSource({"1, true", "14, true", "15, true", "16, false", "5000, false"})
    void pathsHaveALastDepth(int names, boolean sound) {
        String path = String.join(
                "/", IntStream.range(0, names).mapToObj(i -> "n" + i).toList());
        assertThat(PartPath.isSound(path, Location.ofFile("garden.json"), problems))
                .isEqualTo(sound);
        assertThat(problems.errorCount()).isEqualTo(sound ? 0 : 1);
    }

    /** One wrong path is one message, however many of its names are wrong. */
    @ParameterizedTest
    @ValueSource(strings = {"", "/", "/a", "a/", "a//b", "*/*", "a/\u0000", "a\nb", "?"})
    void wrongPathsAreToldOnce(String path) {
        assertThat(PartPath.isSound(path, new Location("garden.json", 2, 3), problems))
                .isFalse();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("garden.json:2:3: error: ")
                .doesNotContain("\n", "\u0000")
                .endsWith("parts are nested with /, as in petals/1");
    }
}
