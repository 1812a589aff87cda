package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of another type than expected: the error shows what was written, and how it was probably meant. */
class ExpectedTest {
    private final Problems problems = new Problems();

    private String told() {
        assertThat(Inputs.shown(problems)).hasSize(1);
        String line = Inputs.shown(problems).get(0);
        assertThat(line).startsWith("in.json:1:1: error: \"size\" ");
        return line.substring("in.json:1:1: error: \"size\" ".length());
    }

    private static Node node(String json) {
        return Inputs.json(json);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "5"      | must be a number, not the text "5"; write 5 without quotes
            " 5 "    | must be a number, not the text " 5 "; write 5 without quotes
            "1,5"    | must be a number, not the text "1,5"; write 1.5 without quotes; the decimal sign is a dot
            "12 cm"  | must be a number, not the text "12 cm"; write the number alone, without quotes; its unit is not written here
            "90°"    | must be a number, not the text "90°"; write the number alone, without quotes; its unit is not written here
            "wide"   | must be a number, not the text "wide"
            "05"     | must be a number, not the text "05"
            true     | must be a number, not true
            null     | must be a number, not null; leave the field out instead
            [5]      | must be a number, not a list
            {"a": 1} | must be a number, not an object
            """)
    void wantsANumber(String json, String message) {
        assertThat(Expected.number(node(json), "\"size\"", -10, 10, problems)).isEmpty();
        assertThat(told()).isEqualTo(message);
    }

    /** Where 1 is all, who writes a percentage is told its share; elsewhere not. */
    @ParameterizedTest
    @CsvSource({
        "1, 50%, 1 is all: write 0.5 without quotes",
        "1, 100 %, 1 is all: write 1 without quotes",
        "1, 101%, ''",
        "9, 50%, ''"
    })
    void knowsWhatAPercentageIs(double max, String text, String hint) {
        Expected.number(node("\"" + text + "\""), "\"size\"", 0, max, problems);
        assertThat(told()).endsWith(hint).matches(line -> hint.isEmpty() != line.contains("1 is all"));
    }

    /** Both bounds are allowed; an open side is not told. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            -0.001 | 0         | 1        | is -0.001; allowed: a number from 0 to 1
            1.001  | 0         | 1        | is 1.001; allowed: a number from 0 to 1
            -5     | -2.5      | Infinity | is -5; allowed: a number from -2.5
            7      | -Infinity | 6        | is 7; allowed: a number up to 6
            """)
    void wantsANumberWithinBounds(String json, double min, double max, String message) {
        assertThat(Expected.number(node(json), "\"size\"", min, max, problems)).isEmpty();
        assertThat(told()).isEqualTo(message);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 1", "0.5, 0.5", "1e-3, 0.001", "-0, 0"})
    void takesBounds(String json, double value) {
        assertThat(Expected.number(node(json), "\"size\"", 0, 1, problems).orElseThrow())
                .isEqualTo(value + (json.equals("-0") ? -0.0 : 0));
        assertThat(problems.errorCount()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"3, 3", "3.0, 3", "3e2, 300", "-7, -7"})
    void wholeNumbersMayBeWrittenWithAPoint(String json, long value) {
        assertThat(Expected.whole(node(json), "\"size\"", -10, 1000, problems)).hasValue(value);
        assertThat(problems.errorCount()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2.5  | is 2.5; allowed: a whole number from 1 to 9
            0    | is 0; allowed: a whole number from 1 to 9
            1e20 | is 1e20; allowed: a whole number from 1 to 9
            "3"  | must be a whole number, not the text "3"; write 3 without quotes
            """)
    void refusesOthers(String json, String message) {
        assertThat(Expected.whole(node(json), "\"size\"", 1, 9, problems)).isEmpty();
        assertThat(told()).isEqualTo(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "true"  | must be true or false, not the text "true"; write true without quotes
            "yes"   | must be true or false, not the text "yes"
            1       | must be true or false, not the number 1
            """)
    void wantsAFlag(String json, String message) {
        assertThat(Expected.flag(node(json), "\"size\"", problems)).isEmpty();
        assertThat(told()).isEqualTo(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            7      | must be a text, not the number 7; write "7" in quotes
            false  | must be a text, not false
            ["a"]  | must be a text, not a list
            """)
    void wantsAText(String json, String message) {
        assertThat(Expected.text(node(json), "\"size\"", problems)).isEmpty();
        assertThat(told()).isEqualTo(message);
    }

    /** Numbers in one text were meant as a list of them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "1, 2"     | must be a list [ ], not the text "1, 2"; write [1, 2], without quotes
            "(200,0)"  | must be a list [ ], not the text "(200,0)"; write [200, 0], without quotes
            "[ 1; 2 ]" | must be a list [ ], not the text "[ 1; 2 ]"; write [1, 2], without quotes
            "1;2.5;-3" | must be a list [ ], not the text "1;2.5;-3"; write [1, 2.5, -3], without quotes
            "one"      | must be a list [ ], not the text "one"; put it in brackets: [ ]
            5          | must be a list [ ], not the number 5; put it in brackets: [ ]
            {"a": 1}   | must be a list [ ], not an object
            """)
    void wantsAList(String json, String message) {
        assertThat(Expected.list(node(json), "\"size\"", problems)).isEmpty();
        assertThat(told()).isEqualTo(message);
    }

    @Test
    void textsMayBeOneOrSeveral() {
        assertThat(Expected.texts(node("\"a\""), "\"size\"", problems).orElseThrow())
                .hasSize(1);
        assertThat(Expected.texts(node("[\"a\", \"b\"]"), "\"size\"", problems).orElseThrow())
                .hasSize(2);
        assertThat(Expected.texts(node("3"), "\"size\"", problems)).isEmpty();
        assertThat(told()).startsWith("must be a text or a list of texts, not the number 3");
    }

    /** A few fields are told by name, many are not. */
    @Test
    void anObjectSaysWhichFieldsItHas() {
        Expected.object(node("5"), "\"size\"", () -> List.of("x", "y"), problems);
        assertThat(told()).isEqualTo("must be an object { }, not the number 5; its fields are x, y");
        Problems many = new Problems();
        Expected.object(node("5"), "\"size\"", () -> List.of("a", "b", "c", "d", "e"), many);
        assertThat(Inputs.shown(many)).singleElement().asString().doesNotContain("its fields");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "lef"  | is "lef"; did you mean "left"? allowed: left, right
            "LEFT" | is "LEFT"; did you mean "left"? allowed: left, right
            "up"   | is "up"; allowed: left, right
            3      | must be a text, not the number 3; allowed: left, right
            null   | must be a text, not null; leave the field out instead
            """)
    void wantsOneOfTheWords(String json, String message) {
        assertThat(Expected.choice(node(json), "\"size\"", List.of("left", "right"), problems))
                .isEmpty();
        assertThat(told()).isEqualTo(message);
        assertThat(Expected.choice(node("\"right\""), "\"size\"", List.of("left", "right"), problems))
                .contains("right");
    }

    private Optional<?> read(ValueKind<?> kind, String json) {
        return kind.read(node(json), "\"size\"", problems);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            []           | is empty; add one
            [1, 2, 3, 4] | has 4 items; allowed: 1 to 3
            """)
    void listsHaveSoManyItems(String json, String message) {
        ValueKind.Items items = new ValueKind.Items(new ValueKind.Number("", 0, 1), 1, 3, "add one");
        assertThat(read(items, json)).isEmpty();
        assertThat(told()).isEqualTo(message);
        assertThat(read(items, "[1, 2, 3]")).isPresent();
    }

    @Test
    void aVersionIsReadByItself() {
        ValueKind.Format format = new ValueKind.Format("display/1");
        assertThat(read(format, "\"display/1\"")).isPresent();
        assertThat(read(format, "\"display/2\"")).isEmpty();
        assertThat(told()).isEqualTo("is \"display/2\"; this version reads \"duskloom\": \"display/1\"");
    }

    /** Phrases stand in the tables of the handbook. */
    @Test
    void kindsSayWhatIsAllowed() {
        ValueKind.Number share = new ValueKind.Number("turns", 0, 0.5);
        assertThat(share.phrase()).isEqualTo("number of turns, 0 to 0.5");
        assertThat(new ValueKind.Whole("", 1, 1_000_000).phrase()).isEqualTo("whole number, 1 to 1,000,000");
        assertThat(ValueKind.Items.any(share).phrase()).isEqualTo("list; each item: number of turns, 0 to 0.5");
        assertThat(new ValueKind.Items(new ValueKind.Flag(), 2, 2, "").phrase())
                .isEqualTo("list of 2; each item: true or false");
        assertThat(ValueKind.Choice.of(List.of("a", "b"), word -> word).phrase())
                .isEqualTo("one of \"a\", \"b\"");
        assertThat(ValueKind.Choice.of(List.of(1, 2), number -> "n" + number).written(2))
                .isEqualTo("\"n2\"");
        assertThat(share.written(0.25)).isEqualTo("0.25");
    }
}
