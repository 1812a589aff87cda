package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
        assertThat(CsvStyle.COMMAS.cell(plain)).isEqualTo(cell);
    }

    @Test
    void keepsLineEndsInQuotes() {
        assertThat(CsvStyle.COMMAS.cell("a\nb")).isEqualTo("\"a\nb\"");
        assertThat(CsvStyle.COMMAS.cell("\r")).isEqualTo("\"\r\"");
    }

    @Test
    void endsRowsWithLineFeeds() {
        CsvText rows = new CsvText(CsvStyle.COMMAS, "head");
        rows.row("a", "", "b,c");
        rows.row("1");
        assertThat(rows).hasToString("head\na,,\"b,c\"\n1\n");
    }

    /** What spreadsheets write and open where a comma is the decimal sign; common practice, no source. */
    @Test
    void writesSemicolonsToo() {
        CsvText rows = new CsvText(CsvStyle.SEMICOLONS, "name,x");
        rows.row("a;b", CsvStyle.SEMICOLONS.number("-0.5"));
        rows.row("a,b", CsvStyle.SEMICOLONS.number("1.5E-7"));
        assertThat(rows).hasToString("\uFEFFname;x\n\"a;b\";-0,5\na,b;1,5E-7\n");
    }

    /** Why the printer of Commons CSV 1.14.1 is not asked: one that quotes no more than it must can take its place. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '^', textBlock = """
            ^^, ^""^
            !, ^"!"^
            """)
    void quotesLessThanThePrinterOfTheLibrary(String plain, String printed) {
        assertThat(CSVFormat.RFC4180.format(plain, "b")).isEqualTo(printed + ",b");
        assertThat(CsvStyle.COMMAS.cell(plain)).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void isReadBack(long seed) throws Exception {
        readBack(seed, CsvStyle.COMMAS, CSVFormat.RFC4180);
        readBack(
                seed,
                CsvStyle.SEMICOLONS,
                CSVFormat.RFC4180.builder().setDelimiter(';').get());
    }

    /** Names of all kinds, by our reader, and by that of Commons CSV, which keeps blanks and knows no comments. */
    private static void readBack(long seed, CsvStyle style, CSVFormat format) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        Random random = new Random(seed);
        CsvText text = new CsvText(style, "one,two,three");
        for (int i = 0; i < 200; i++) {
            // A row of nothing but empty cells is left out.
            List<String> row = List.of(cell(random), cell(random), "x" + cell(random));
            rows.add(row);
            text.row(row.toArray(String[]::new));
        }
        assertThat(read(text.toString())).isEqualTo(rows);
        try (CSVParser parser = CSVParser.parse(text.toString(), format)) {
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
