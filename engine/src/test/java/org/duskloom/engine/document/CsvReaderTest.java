package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvReaderTest {
    private static final DeclaredField<TextNode> PIXEL = required("pixel");
    private static final DeclaredField<TextNode> Y = DeclaredField.optional("y", new ValueKind.Text("text"), "", "up");
    private static final DeclaredField<TextNode> Z =
            DeclaredField.optional("z", new ValueKind.Text("text"), "", "toward the audience");
    private static final DeclaredObject MAP =
            DeclaredObject.of("map", required("prop"), PIXEL, required("x"), required("y"), Z);

    private final Problems problems = new Problems();

    private static DeclaredField<TextNode> required(String name) {
        return DeclaredField.required(name, new ValueKind.Text("text"), "a column");
    }

    private Optional<CsvTable> table(String text) {
        return CsvReader.read(Inputs.source("map.csv", text), problems);
    }

    private List<List<String>> rows(String text) {
        List<List<String>> rows = new ArrayList<>();
        table(text).ifPresent(table -> table.forEachRow(row -> rows.add(texts(table, row))));
        return rows;
    }

    private static List<String> texts(CsvTable table, CsvRow row) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < table.header().size(); i++) {
            texts.add(row.text(i));
        }
        return texts;
    }

    /** As spreadsheets of many countries write it, the several parts of a cell in quotes. */
    @Test
    void readsSemicolonsAndDecimalCommas() {
        CsvTable table = table("# a; b, c\n;;;\n\"prop\"; pixel;x;y;part\na;1;-0,5;1,25e2;\"rim;top\"\n")
                .orElseThrow();
        List<String> seen = new ArrayList<>();
        assertThat(table.forEachRow(
                        row -> seen.add(row.text(0) + " " + row.number(2, -9, 9) + " " + row.number(3, -999, 999) + " "
                                + row.text(4) + " " + row.cell(3).location().column())))
                .isTrue();
        assertThat(seen).containsExactly("a OptionalDouble[-0.5] OptionalDouble[125.0] rim;top 10");
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** A remark with a comma comes back in quotes, and with a separator for each column, from a spreadsheet. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"# x to the right, y down\";;\nprop;x;y\na;1,5;2\n",
                "\"# x to the right, y down\",,\nprop,x,y\na,1.5,2\n",
                "\"# it says \"\"up, down\"\"\" ; ;\r\n\"prop\";\"x\";\"y\"\r\na;\"1,5\";2\r\n",
                "\"# x to the right, y down\";\"\";\"\"\nprop;x;y\na;1,5;2\n",
                "# x to the right, y down\nprop;x;y\na;1,5;2\n",
                "prop;x;y\n\"# the arch, left\";;\na;1,5;2\n",
                "prop,x,y\na,1.5,2\n\"# the pond, behind it\",\"\",\n",
                "prop,x,y\n \"# the arch, left\"\na,1.5,2\n"
            })
    void skipsARemarkThatASpreadsheetHasSaved(String text) {
        List<Object> seen = new ArrayList<>();
        table(text)
                .orElseThrow()
                .forEachRow(row -> seen.add(List.of(
                        row.text(0),
                        row.number(1, -9, 9).orElseThrow(),
                        row.number(2, -9, 9).orElseThrow())));
        assertThat(seen).containsExactly(List.of("a", 1.5, 2.0));
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "\"\"", "y, "})
    void skipsALongRemark(String piece) {
        CsvTable table = table("\"#" + piece.repeat(100_000) + "\";\nprop;x\n").orElseThrow();
        assertThat(table.header()).extracting(Cell::text).containsExactly("prop", "x");
    }

    @Test
    void aQuotedColumnOfNotesIsNoRemark() {
        CsvTable table = table("\"#note\";\"prop\"\n").orElseThrow();
        assertThat(table.header()).extracting(Cell::text).containsExactly("#note", "prop");
    }

    /** Whoever fills cells beside a remark, such as with a name and a date, writes no header. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"# by Ada, in May\";left bed;\nprop;x;y\na;1,5;2\n",
                "\"# by Ada, in May\",left bed,\nprop,x,y\na,1.5,2\n",
                "\"# drawn\",\"by Ada\",3\n\"#\",checked,\n\n\"prop\",\"x\",\"y\"\na,1.5,2\n"
            })
    void skipsARemarkOverSeveralCells(String text) {
        CsvTable table = table(text).orElseThrow();
        assertThat(table.header()).extracting(Cell::text).containsExactly("prop", "x", "y");
        List<Double> seen = new ArrayList<>();
        table.forEachRow(row -> seen.add(row.number(1, -9, 9).orElseThrow()));
        assertThat(seen).containsExactly(1.5);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** What comes under it are numbers, or nothing. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"#note\",\"prop\",\"x\"\nold,a,1.5\n",
                "\"#note\",\"prop\",\"x\"\n\"#\",a,1.5\n",
                "\"# remark\",of,Ada\n\"#note\",\"prop\",\"x\"\n,a,1.5\n",
                "\"#note\",\"prop\",\"x\"\n\n"
            })
    void aHeaderMayBeginWithAQuotedColumnOfNotes(String text) {
        assertThat(table(text).orElseThrow().header()).extracting(Cell::text).containsExactly("#note", "prop", "x");
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** A comma in the header leaves a doubt, and so does a number in the other way. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            prop;x,y\\na;1,2        ~ 1:1 ~ the header has commas and semicolons   ~ save it with one of them
            prop;x\\na;1.5          ~ 2:3 ~ "x" is "1.5"                          ~ the decimal sign of a file with semicolons is a comma: 1,5
            prop;x\\na;1.500,5      ~ 2:3 ~ "x" is "1.500,5"                      ~ write the number without signs between its thousands
            prop;x\\na;1,5mm        ~ 2:3 ~ "x" is "1,5mm"                        ~ write the number without its unit
            prop;x\\na;left         ~ 2:3 ~ "x" is "left"                         ~ a number is needed, such as 12 or -0,5
            prop;x\\na,1            ~ 2:1 ~ the row has 1 cell, the header in line 1 has 2  ~ the separator is a semicolon, not a comma
            prop;x;y\\na;1          ~ 2:1 ~ the row has 2 cells, the header in line 1 has 3 ~ an empty cell needs its semicolon too
            prop;x\\na;1;2          ~ 2:1 ~ the row has 3 cells, the header in line 1 has 2 ~ a cell that holds a semicolon stands in quotes
            prop,x\\na,"1,5"        ~ 2:3 ~ "x" is "1,5"                          ~ the decimal sign is a dot: 1.5
            prop,x\\na;1            ~ 2:1 ~ the row has 1 cell, the header in line 1 has 2  ~ the separator is a comma, not a semicolon
            """)
    void everythingElseStaysAnError(String text, String place, String message, String hint) {
        table(text.replace("\\n", "\n")).ifPresent(table -> {
            if (table.expectColumns(DeclaredObject.of("row", required("prop"), required("x"), Y))) {
                table.forEachRow(row -> row.number(1, -9, 9));
            }
        });
        assertThat(Inputs.shown(problems)).isNotEmpty();
        assertThat(Inputs.shown(problems).get(0))
                .startsWith("map.csv:" + place + ": error: " + message)
                .contains(hint);
    }

    /** The rules of RFC 4180 section 2, with the texts of its examples. */
    @Test
    void readsTheExamplesOfTheStandard() {
        String header = "field_name,field_name2,field_name3\r\n";
        List<List<String>> plain = List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
        assertThat(rows(header + "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).isEqualTo(plain);
        assertThat(rows(header + "aaa,bbb,ccc\r\nzzz,yyy,xxx")).isEqualTo(plain);
        assertThat(rows(header + "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")).isEqualTo(plain);
        assertThat(rows(header + "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"))
                .isEqualTo(List.of(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx")));
        assertThat(rows(header + "\"aaa\",\"b\"\"bb\",\"ccc\"")).isEqualTo(List.of(List.of("aaa", "b\"bb", "ccc")));
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void skipsCommentsAndIdleRows() {
        String text = "# map, \"of the arch\n\n  # indented \n prop , x\n#c\n\n a , 1 \n,\n  \n # b,2\n\"# c\",3\n";
        assertThat(rows(text)).containsExactly(List.of("a", "1"), List.of("# c", "3"));
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void knowsThePlaceOfEveryCell(String end) {
        String text = String.join(
                end,
                "# head",
                "",
                "prop,x,y",
                "\ud83c\udf3c, 1 ,\"2\"",
                "# c",
                "\"a" + end + "b\",\"x\"\"y\" , 3",
                "",
                "z,,");
        List<String> places = new ArrayList<>();
        CsvTable table = table(text).orElseThrow();
        table.forEachRow(row -> {
            for (int i = 0; i < 3; i++) {
                places.add(row.location(i).toString());
            }
            assertThat(table.location(row.start(), 2)).isEqualTo(row.location(2));
        });
        assertThat(table.header())
                .extracting(cell -> cell.location().toString())
                .containsExactly("map.csv:3:1", "map.csv:3:6", "map.csv:3:8");
        assertThat(places)
                .containsExactly(
                        "map.csv:4:1",
                        "map.csv:4:4",
                        "map.csv:4:7",
                        "map.csv:6:1",
                        "map.csv:7:4",
                        "map.csv:7:13",
                        "map.csv:9:1",
                        "map.csv:9:3",
                        "map.csv:9:4");
    }

    @Test
    void toleratesTheEmptyColumnsASpreadsheetLeaves() {
        assertThat(rows("prop,x,,\na,1,,\nb,2\nc,3,,,,\n"))
                .extracting(row -> String.join("|", row))
                .containsExactly("a|1||", "b|2||", "c|3||");
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void findsColumnsInAnyCase() {
        CsvTable table = table("Prop,PIXEL,X,y\n").orElseThrow();
        assertThat(table.expectColumns(MAP)).isTrue();
        assertThat(table.column(PIXEL)).hasValue(1);
        assertThat(table.column(Z)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            prop\tpixel\tx\ty    ~ 1:1  ~ the cells seem to be separated by tabs           ~ save it with commas between the cells and dots in numbers, or with semicolons and commas
            `\ufeff\ufeffprop,x`~ 1:1  ~ the file begins with two byte order marks        ~ type its first cell anew
            `\ufeff\ufeff"prop";x`~ 1:1  ~ the file begins with two byte order marks        ~ type its first cell anew
            prop|pixel|x|y       ~ 1:1  ~ the cells seem to be separated by vertical bars  ~ save it with commas
            `sep=,`              ~ 1:1  ~ the line "sep=," is no part of CSV               ~ remove it
            `sep=;\nprop;x`      ~ 1:1  ~ the line "sep=;" is no part of CSV               ~ remove it
            `SEP=,\nprop,x`      ~ 1:1  ~ the line "SEP=," is no part of CSV               ~ remove it
            prop,x,prop          ~ 1:8  ~ the column "prop" stands twice in the header     ~ first at map.csv:1:1
            prop;pixel,x;y       ~ 1:1  ~ the header has commas and semicolons             ~ save it with one of them
            prop,x,"prop         ~ 1:8  ~ the quote that opens here is not closed          ~ add the closing "
            `# nothing`          ~ 1:10 ~ the file holds nothing but white space           ~ ``
            `,,,`                ~ 1:4  ~ the file holds nothing but white space           ~ ``
            """)
    void refusesHeaders(String header, String place, String message, String hint) {
        assertThat(table(header.replace("\\t", "\t").replace("\\n", "\n"))).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:" + place + ": error: " + message)
                .contains(hint);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            daisy,1,0,0         ~ 1:1  ~ the first row holds numbers, so the header row is missing ~ prop,pixel,x,y
            prop,x,y            ~ 1:1  ~ the column "pixel" is missing            ~ needed: prop,pixel,x,y; allowed too: z
            light,across,height ~ 1:1  ~ the first line names none of the columns that are needed ~ needed: prop,pixel,x,y;
            {                   ~ 1:1  ~ this is no CSV, it looks like JSON       ~ is it the right file? needed: prop,pixel
            prop,pixel,x,y,zz   ~ 1:16 ~ there is no column "zz"                  ~ did you mean "z"?
            prop,pixel,x,y,note ~ 1:16 ~ there is no column "note"                ~ may stay if its name begins with #
            """)
    void expectsColumns(String header, String place, String message, String hint) {
        assertThat(table(header).orElseThrow().expectColumns(MAP)).isFalse();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:" + place + ": error: " + message)
                .contains(hint);
    }

    @Test
    void leavesColumnsOfNotesAlone() {
        assertThat(table("prop,pixel,x,y,#note; by hand,\n").orElseThrow().expectColumns(MAP))
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            a,1,2          ~ 3:1 ~ the row has 3 cells, the header in line 1 has 4      ~ an empty cell needs its comma too
            a;1;2;3        ~ 3:1 ~ the row has 1 cell, the header in line 1 has 4       ~ not a semicolon
            a;1;0,5;10,25  ~ 3:1 ~ the row has 3 cells, the header in line 1 has 4      ~ where rows have semicolons, the header has them too
            a;b,1,2        ~ 3:1 ~ the row has 3 cells, the header in line 1 has 4      ~ an empty cell needs its comma too
            a,1,1,5,2,5    ~ 3:1 ~ the row has 6 cells, the header in line 1 has 4      ~ a decimal sign is a dot (1.5, not 1,5)
            a,1,"2"3,4     ~ 3:8 ~ text follows a closing quote               ~ the quote opened at map.csv:3:5
            a,1, "2,4      ~ 3:6 ~ the quote that opens here is not closed    ~ add the closing "
            """)
    void leavesOutAFaultyRowAndGoesOn(String row, String place, String message, String hint) {
        boolean[] complete = {true};
        List<String> first = new ArrayList<>();
        CsvTable table = table("prop,pixel,x,y\n\n" + row + "\n\nb,1,2,3\n").orElseThrow();
        complete[0] = table.forEachRow(next -> first.add(next.text(0)));
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:" + place + ": error: " + message)
                .contains(hint);
        assertThat(first).containsExactly("b");
        assertThat(complete[0]).isFalse();
    }

    /** Seven rows of a note too much, two of a cell too few, one of both. */
    @Test
    void tellsRowsOfTheSameWidthOnce() {
        table("# places\n\nprop,pixel,x,y,\n" + "a,1,0,0,,old\n".repeat(7) + "a,1,0\n".repeat(2) + "a,1\n")
                .orElseThrow()
                .forEachRow(row -> {});
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "map.csv:4:1: error: the row has 6 cells, the header in line 3 has 4, and so it is with 6 more"
                                + " rows; a decimal sign is a dot (1.5, not 1,5), and a cell that holds a comma stands in quotes",
                        "map.csv:11:1: error: the row has 3 cells, the header in line 3 has 4, and so it is with 1 more"
                                + " row; if no row has a cell for \"y\", take it out of the header; an empty cell needs its comma too",
                        "map.csv:13:1: error: the row has 2 cells, the header in line 3 has 4; an empty cell needs its"
                                + " comma too");
    }

    @Test
    void saysWhereNotesInRowsBelong() {
        table("prop;pixel;x;y\n" + "a;1;0;0;old\n".repeat(2)).orElseThrow().forEachRow(row -> {});
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "map.csv:2:1: error: the row has 5 cells, the header in line 1 has 4, and so it is with 1"
                                + " more row; if the last cell is a note, write #notes at the end of the header; a cell that holds"
                                + " a semicolon stands in quotes");
    }

    @Test
    void saysWhereItStoppedReading() {
        boolean complete = table("prop,pixel,x,y\n" + "a,1,0,0\n".repeat(10_001))
                .orElseThrow()
                .forEachRow(row -> problems.error(row.location(), "wrong"));
        assertThat(complete).isFalse();
        assertThat(problems.errorCount()).isEqualTo(10_000);
        assertThat(problems.lastRead()).containsExactly(new Location("map.csv", 10_001, 1));
    }

    @ParameterizedTest
    @CsvSource({"10000, 0", "10001, 1"})
    void doesNotSayThatItStoppedWhereNothingFollows(int rows, int stops) {
        table("prop,pixel,x,y\n" + "a,1,0,0\n".repeat(rows) + "# the end\n\n")
                .orElseThrow()
                .forEachRow(row -> problems.error(row.location(), "wrong"));
        assertThat(problems.lastRead()).hasSize(stops);
    }

    @ParameterizedTest
    @CsvSource({"20, 0", "21, 21"})
    void saysThatItStoppedAtWrongQuotes(int rows, int lastLine) {
        rows("p,q\n" + "1,\"2\"x\n".repeat(rows) + "\n");
        assertThat(problems.errorCount()).isEqualTo(20);
        assertThat(problems.lastRead())
                .isEqualTo(lastLine == 0 ? List.of() : List.of(new Location("map.csv", lastLine, 3)));
    }

    @Test
    void reportsAllWrongQuotesOfAFile() {
        assertThat(rows("p,q\n1,\"a\n2,b\n3,\"c\"d\n4,e\n\"5,f\n"))
                .containsExactly(List.of("2", "b"), List.of("4", "e"));
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.substring(0, line.indexOf(" error")))
                .containsExactly("map.csv:2:3:", "map.csv:4:6:", "map.csv:6:1:");
    }

    @Test
    void stopsAfterTwentyWrongQuotes() {
        rows("p,q\n" + "1,\"a\"b\n".repeat(5_000));
        assertThat(problems.errorCount()).isEqualTo(20);
    }

    @Test
    void refusesARowBeyondTheLimit() {
        rows("p,q\n1," + "x".repeat(2 * CsvReader.MAX_ROW_CHARS) + "\n");
        assertThat(Inputs.shown(problems))
                .containsExactly("map.csv:2:1: error: this row cannot be read: longer than 1048576 characters");
    }

    @Test
    void namesTheQuoteThatSwallowsMoreThanARow() {
        rows("p,q\n1,\"x\n" + "2,y\n".repeat(CsvReader.MAX_ROW_CHARS) + "\"");
        assertThat(Inputs.shown(problems))
                .first()
                .asString()
                .startsWith("map.csv:2:3: error: the quote that opens here is not closed");
    }

    @Test
    void letsExceptionsOfTheCallerThrough() {
        CsvTable table = table("p\n1\n").orElseThrow();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.forEachRow(row -> {
                    throw new IllegalArgumentException("mine");
                }));
        assertThat(Inputs.shown(problems)).isEmpty();
    }
}
