package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells of the column "part", and what becomes of them. */
class PartCellTest {
    private static String shown(String cell) throws TextFormatException {
        return PartCell.parse(cell).stream()
                .map(entry -> String.join(">", entry.path()) + " " + entry.rank())
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rim             | rim 0
            rim;petals/1    | rim 0, petals>1 0
            top#3           | top 3
            ' rim ; top#12 '| rim 0, top 12
            a/b/c#1         | a>b>c 1
            ;;              | ''
            ''              | ''
            top#9999999     | top 9999999
            """)
    void readsEntries(String cell, String entries) throws TextFormatException {
        assertThat(shown(cell)).isEqualTo(entries);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            top#            | no rank behind #
            top#0           | no rank behind #
            top#01          | no rank behind #
            top#-1          | no rank behind #
            top#1.5         | no rank behind #
            top#12345678    | no rank behind #
            top#1#2         | no rank behind #
            #1              | a part name of
            a//b            | a part name of
            /a              | a part name of
            a/              | a part name of
            a*              | a part name of
            """)
    void refusesOthers(String cell, String message) {
        assertThatThrownBy(() -> PartCell.parse(cell))
                .isInstanceOf(TextFormatException.class)
                .hasMessageContaining(message);
    }

    @Test
    void refusesPartsInPartsWithoutEnd() throws TextFormatException {
        String deep = "a" + "/a".repeat(15);
        assertThat(PartCell.parse(deep)).hasSize(1);
        assertThatThrownBy(() -> PartCell.parse(deep + "/a")).hasMessageContaining("nested deeper than 16");
    }

    /** The parts of pixels 1, 2, 3 ... with these cells, and what is wrong with them. */
    private static String built(List<String> faults, String... cells) throws TextFormatException {
        PartCollector collector = new PartCollector();
        for (int i = 0; i < cells.length; i++) {
            collector.add(PartCell.parse(cells[i]), i + 1, 100 * i);
        }
        List<PartCollector.Fault> found = new ArrayList<>();
        List<Part> parts = collector.build(number -> number - 1, found);
        found.forEach(fault -> faults.add(fault.path() + ": " + fault.message() + " @" + fault.rowStart()));
        return parts.toString();
    }

    @Test
    void outerPartsHaveThePixelsOfInnerOnes() throws TextFormatException {
        List<String> faults = new ArrayList<>();
        assertThat(built(faults, "rim/top", "rim", "eye;rim/top", "")).isEqualTo("[rim[0, 1, 2][top[0, 2]], eye[2]]");
        assertThat(faults).isEmpty();
    }

    /** A pixel that is named twice for one part is in it once. */
    @Test
    void takesAPixelOnce() throws TextFormatException {
        assertThat(built(new ArrayList<>(), "a/b;a/c;a", "a")).isEqualTo("[a[0, 1][b[0], c[0]]]");
    }

    @Test
    void ranksOrderAPart() throws TextFormatException {
        List<String> faults = new ArrayList<>();
        assertThat(built(faults, "row#3", "row#1", "row#2")).isEqualTo("[row[1, 2, 0]]");
        assertThat(faults).isEmpty();
    }

    @Test
    void ranksMustCountThePixels() throws TextFormatException {
        List<String> faults = new ArrayList<>();
        built(faults, "a/row#1", "a/row#3", "a/row");
        assertThat(faults).containsExactly("a/row: the ranks of part \"a/row\" are not 1 to 3, one for each pixel @0");
        faults.clear();
        built(faults, "", "row#1", "row#1");
        assertThat(faults).singleElement().asString().endsWith("@100");
    }

    @Test
    void aPixelHasOneRankInAPart() throws TextFormatException {
        PartCollector collector = new PartCollector();
        List<PartCell> twice = PartCell.parse("row#1;row#2");
        assertThatThrownBy(() -> collector.add(twice, 1, 0))
                .isInstanceOf(TextFormatException.class)
                .hasMessageContaining("\"row\" stands twice with a rank");
    }

    @Test
    void listsPathsOuterBeforeInner() {
        Part top = new Part("top", new int[] {0}, List.of());
        Part rim = new Part("rim", new int[] {0, 1}, List.of(top));
        Part eye = new Part("eye", new int[] {2}, List.of());
        assertThat(PartPaths.of(List.of(rim, eye))).containsExactly("rim", "rim/top", "eye");
        assertThat(PartPaths.of(List.of())).isEmpty();
    }
}
