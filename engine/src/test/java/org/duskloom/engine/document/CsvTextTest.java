package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTextTest {
    /** RFC 4180, section 2, rules 5 to 7. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '^', nullValues = "-", textBlock = """
            fence           | fence
            say "hi"        | "say ""hi""\"
            0.5, 2 cores    | "0.5, 2 cores"
            rim;top/foot#2  | rim;top/foot#2
            ^^              | ^^
            Übertopf        | Übertopf
            #3              | "#3"
            ^ aside^        | " aside"
            ^aside ^        | "aside "
            """)
    void quotesOnlyWhereItMust(String plain, String cell) {
        assertThat(CsvText.cell(plain)).isEqualTo(cell);
    }

    @Test
    void keepsLineEndsInQuotes() {
        assertThat(CsvText.cell("a\nb")).isEqualTo("\"a\nb\"");
        assertThat(CsvText.cell("\r")).isEqualTo("\"\r\"");
    }

    @Test
    void endsRowsWithLineFeeds() {
        StringBuilder rows = new StringBuilder("head\n");
        CsvText.appendRow(rows, "a", "", "b,c");
        CsvText.appendRow(rows, "1");
        assertThat(rows).hasToString("head\na,,\"b,c\"\n1\n");
    }

    /** Why the printer of Commons CSV 1.14.1 is not asked: one that quotes no more than it must can take its place. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '^', textBlock = """
            ^^, ^""^
            !, ^"!"^
            """)
    void quotesLessThanThePrinterOfTheLibrary(String plain, String printed) {
        assertThat(CSVFormat.RFC4180.format(plain, "b")).isEqualTo(printed + ",b");
        assertThat(CsvText.cell(plain)).isEqualTo(plain);
    }

    /** Names of all kinds, by our reader, and by that of Commons CSV, which keeps blanks and knows no comments. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void isReadBack(long seed) throws Exception {
        List<List<String>> rows = new ArrayList<>();
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("one,two,three\n");
        for (int i = 0; i < 200; i++) {
            // A row of nothing but empty cells is left out.
            List<String> row = List.of(cell(random), cell(random), "x" + cell(random));
            rows.add(row);
            CsvText.appendRow(text, row.toArray(String[]::new));
        }
        assertThat(read(text.toString())).isEqualTo(rows);
        try (CSVParser parser = CSVParser.parse(text.toString(), CSVFormat.RFC4180)) {
            List<List<String>> seen = new ArrayList<>();
            parser.forEach(row -> seen.add(row.toList()));
            assertThat(seen.subList(1, seen.size())).isEqualTo(rows);
        }
    }

    private static String cell(Random random) {
        String signs = "ab#,;\"\n\r \t\u00a0\u2003ü光'=/";
        StringBuilder cell = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            cell.append(signs.charAt(random.nextInt(signs.length())));
        }
        return cell.toString();
    }

    private static List<List<String>> read(String text) {
        Problems problems = new Problems();
        CsvTable table = CsvReader.read(Inputs.source("rows.csv", text), problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
        List<List<String>> rows = new ArrayList<>();
        table.forEachRow(row -> rows.add(List.of(row.text(0), row.text(1), row.text(2))));
        assertThat(Inputs.shown(problems)).isEmpty();
        return rows;
    }
}
