package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Rows without quotes are read without the CSV library; here they are compared with what the library makes of them. */
class PlainRowsTest {
    private static final String[] PIECES = {
        ",",
        ",",
        ",",
        ";",
        "\n",
        "\r",
        "\r\n",
        " ",
        "\t",
        "\f",
        "\u00a0",
        "\u2003",
        "#",
        "a",
        "-1.5",
        "\u00e9",
        "\ud83c\udf3c",
        "'",
        "\\"
    };

    private record Row(List<String> cells, int start) {}

    private static List<Row> rows(String text, CsvStyle style) {
        List<Row> rows = new ArrayList<>();
        Problems problems = new Problems();
        boolean sound = CsvReader.forEachRecord(
                Inputs.source("map.csv", text),
                style,
                0,
                problems,
                (cells, start) -> rows.add(new Row(List.of(cells), start)));
        assertThat(sound).isTrue();
        return rows;
    }

    /** From the first quote on everything goes to the library. */
    private static List<Row> rowsOfTheLibrary(String text, CsvStyle style) {
        String quoted = "\"q\"\n";
        return rows(quoted + text, style).stream()
                .skip(1)
                .map(row -> new Row(row.cells(), row.start() - quoted.length()))
                .toList();
    }

    @RepeatedTest(300)
    void readsAsTheLibraryDoes(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        StringBuilder text = new StringBuilder("x");
        for (int i = random.nextInt(40); i > 0; i--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        for (CsvStyle style : CsvStyle.values()) {
            assertThat(rows(text.toString(), style)).isEqualTo(rowsOfTheLibrary(text.toString(), style));
        }
    }

    /** One string for what stands in the row above as well, so that its hash code is worked out once. */
    @Test
    void keepsTheStringOfTheRowAbove() {
        List<Row> rows = rows("fence,1\nfence,12\nfenced,2\n fence, 2\nfen,2 \n,2\n", CsvStyle.COMMAS);
        assertThat(rows)
                .extracting(row -> String.join("|", row.cells()))
                .containsExactly("fence|1", "fence|12", "fenced|2", "fence|2", "fen|2", "|2");
        assertThat(rows.get(1).cells().get(0)).isSameAs(rows.get(0).cells().get(0));
    }

    /** RFC 4180, 2.5 to 2.7: quotes may stand round any cell, hold separators and line ends, and are doubled. */
    @Test
    void leavesRowsWithQuotesToTheLibrary() {
        assertThat(rows("a, b ,\nc,\"d,\n\"\"\",e\nf,g,h", CsvStyle.COMMAS))
                .extracting(Row::cells)
                .containsExactly(List.of("a", "b", ""), List.of("c", "d,\n\"", "e"), List.of("f", "g", "h"));
    }

    @Test
    void stopsWhereTheActionWantsNoMore() {
        List<String> seen = new ArrayList<>();
        CsvReader.forEachRecord(
                Inputs.source("map.csv", "a\nb\nc\n"), CsvStyle.COMMAS, 0, new Problems(), (cells, start) -> {
                    seen.add(cells[0]);
                    return seen.size() < 2;
                });
        assertThat(seen).containsExactly("a", "b");
    }

    /** A row that is longer than rows may be is refused by whoever reads it. */
    @Test
    void doesNotReadRowsWithoutEnd() {
        String row = "x".repeat(CsvReader.MAX_ROW_CHARS);
        assertThat(new PlainRows(row, ',').read(0)).containsExactly(row);
        assertThat(new PlainRows(row + "y", ',').read(0)).isNull();
    }
}
