package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What hangs on data lines: every pixel on one line at most, and messages that say where the other one is. */
class ChainReaderTest {
    /** Global indices: bed-1 to bed-9 have two pixels each, so that bed-3 has 4 and 5; then an arch of nine. */
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y,part\n"
            + rows(bed -> "bed-" + bed + ",1,0," + bed + ",\nbed-" + bed + ",2,1," + bed + ",\n")
            + rows(foot -> "arch," + foot + "," + foot + ",20,foot-" + foot + "\n"));

    private final Problems problems = new Problems();
    private final ChainReader reader = new ChainReader(
            GroupReader.read(Inputs.json("{\"edge\": [\"bed-9\", \"bed-1\"], \"skip 4\": [\"bed-2\"]}"), MAP, problems),
            problems);

    private static String rows(IntFunction<String> row) {
        return IntStream.rangeClosed(1, 9).mapToObj(row).collect(Collectors.joining());
    }

    private List<Link> read(String port, String chain) {
        return reader.read(port, (ListNode) Inputs.json("[" + chain + "]")).orElse(List.of());
    }

    @Test
    void keepsTheOrderOfTheLine() {
        List<Link> links = read("a", "{\"skip\": 2}, \"bed-5\", \"edge\", {\"skip\": 1}");
        assertThat(links).extracting(Link::name).containsExactly("", "bed-5", "bed-9", "bed-1", "");
        assertThat(links).extracting(Link::propIndex).containsExactly(-1, 4, 8, 0, -1);
        assertThat(Link.pixels(links)).containsExactly(-1, -1, 8, 9, 16, 17, 0, 1, -1);
        assertThat(links.get(1).location()).hasToString("in.json:1:15");
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** A repeater before every line is no pixel that could be on two of them. */
    @Test
    void darkPixelsAreOnAnyNumberOfLines() {
        assertThat(read("a", "{\"skip\": 3}, {\"skip\": 3}")).hasSize(2);
        assertThat(read("b", "{\"skip\": 3}, \"bed-1\"")).hasSize(2);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** The group is called so; what looks like an order to skip is one only where nothing has that name. */
    @Test
    void aGroupMayBeCalledSkip() {
        assertThat(Link.pixels(read("a", "\"skip 4\""))).containsExactly(2, 3);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "skip 3"     | there is no prop and no group "skip 3"; pixels that stay dark are written {"skip": 3}
            "SKIP=10000" | there is no prop and no group "SKIP=10000"; pixels that stay dark are written {"skip": 10000}
            "skip007"    | there is no prop and no group "skip007"; pixels that stay dark are written {"skip": 7}
            "skip: 0"    | there is no prop and no group "skip: 0"; pixels that stay dark are written {"skip": 1}
            "skip 10001" | there is no prop and no group "skip 10001"; pixels that stay dark are written {"skip": 10000}
            """)
    void whatItAdvisesForDarkPixelsCanBeWritten(String chain, String message) {
        assertThat(read("a", chain)).isEmpty();
        assertThat(Inputs.shown(problems)).containsExactly("in.json:1:2: error: " + message);
        String advice = message.substring(message.indexOf('{'));
        assertThat(new ChainReader(GroupTree.of(Lines.fence(1)), new Problems())
                        .read("a", (ListNode) Inputs.json("[" + advice + "]")))
                .isPresent();
    }

    /** One message for each line that has pixels of it, in the order in which the data would reach them. */
    @Test
    void tellsOfEveryOtherLineInTheOrderOfThePixels() {
        for (int foot : List.of(7, 2, 9, 4, 1, 8, 3, 6, 5)) {
            read("line-" + foot, "\"arch/foot-" + foot + "\"");
        }
        assertThat(read("all", "\n\"arch\"")).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 9)
                        .mapToObj(foot -> "in.json:2:1: error: pixel " + foot + " of \"arch\" is on two ports: \"line-"
                                + foot + "\" and \"all\"; the first time at in.json:1:2; a pixel has one data line")
                        .toList());
    }

    /** A line with an error keeps its pixels, so that the next one is told of them as well: all problems at once. */
    @Test
    void alsoALineWithErrorsHasItsPixels() {
        assertThat(read("a", "\"bed-1\", \"shed\"")).isEmpty();
        assertThat(read("b", "\"bed-1\"")).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "in.json:1:2: error: pixel 1 of \"bed-1\" and 1 more are on two ports: \"a\" and \"b\"; the first"
                                + " time at in.json:1:2; a pixel has one data line",
                        "in.json:1:11: error: there is no prop and no group \"shed\"; known: edge, skip 4, bed-1, bed-2, bed-3,"
                                + " bed-4, bed-5, bed-6, bed-7, bed-8, bed-9, arch");
    }
}
