package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonReaderTest {
    private final Problems problems = new Problems();

    private Optional<Node> read(String text) {
        return JsonReader.read(Inputs.source("show.json", text), problems);
    }

    /** The first example of RFC 8259 section 13. */
    @Test
    void readsTheExampleOfTheStandard() {
        String image = """
                {
                  "Image": {
                      "Width":  800,
                      "Height": 600,
                      "Title":  "View from 15th Floor",
                      "Thumbnail": {
                          "Url":    "http://www.example.com/image/481989943",
                          "Height": 125,
                          "Width":  100
                      },
                      "Animated" : false,
                      "IDs": [116, 943, 234, 38793]
                    }
                }
                """;
        ObjectNode object =
                (ObjectNode) ((ObjectNode) Inputs.json(image)).value("Image").orElseThrow();
        assertThat(object.fields())
                .extracting(Field::name)
                .containsExactly("Width", "Height", "Title", "Thumbnail", "Animated", "IDs");
        assertThat(object.value("Width").orElseThrow()).isInstanceOfSatisfying(NumberNode.class, width -> {
            assertThat(width.value()).isEqualTo(800);
            assertThat(width.written()).isEqualTo("800");
            assertThat(width.location()).hasToString("in.json:3:17");
        });
        assertThat(object.value("Animated").orElseThrow())
                .isInstanceOfSatisfying(
                        FlagNode.class, flag -> assertThat(flag.value()).isFalse());
        assertThat(object.value("IDs").orElseThrow())
                .isInstanceOfSatisfying(
                        ListNode.class, list -> assertThat(list.items()).hasSize(4));
        assertThat(object.fields().get(5).nameLocation()).hasToString("in.json:12:7");
    }

    /** A show of ten thousands of cues says the same words in all of them: their strings are kept once. */
    @Test
    void keepsEqualTextsOnce() {
        ListNode list = (ListNode) Inputs.json("[{\"on\": \"daisy\"}, {\"on\": \"daisy\"}]");
        Field first = ((ObjectNode) list.items().get(0)).fields().get(0);
        Field second = ((ObjectNode) list.items().get(1)).fields().get(0);

        assertThat(second.name()).isSameAs(first.name());
        assertThat(((TextNode) second.value()).value()).isSameAs(((TextNode) first.value()).value());
    }

    /** RFC 8259 section 7: the G clef, U+1D11E, may be written as the pair \\uD834\\uDD1E. */
    @Test
    void resolvesEscapes() {
        TextNode text = (TextNode) Inputs.json("\"\\uD834\\uDD1E \\\\ \\/ \\\" \\b\\f\\n\\r\\t\"");
        assertThat(text.value()).isEqualTo(Character.toString(0x1D11E) + " \\ / \" \b\f\n\r\t");
    }

    @Test
    void allowsCommentsAndACommaAfterTheLastItem() {
        Node node = Inputs.json("// arch\n{\"a\": [1, 2,], /* two\nlines */ \"b\": null,}\n// end");
        assertThat(((ObjectNode) node).fields()).hasSize(2);
        assertThat(((ObjectNode) node).value("b").orElseThrow().location()).hasToString("in.json:3:15");
    }

    @Test
    void countsColumnsInCodePointsBehindCharactersOutsideTheBasicPlane() {
        ListNode list = (ListNode) Inputs.json("[\"\ud83c\udf3c\", 1]");
        assertThat(list.items().get(1).location()).hasToString("in.json:1:7");
    }

    @Test
    void namesTheKindOfEveryValue() {
        ListNode list = (ListNode) Inputs.json("[\"a\", 1, true, null, [], {}]");
        assertThat(list.items())
                .extracting(Node::kind)
                .containsExactly("a text", "a number", "true or false", "null", "a list", "an object");
    }

    @Test
    void givesBothPlacesOfADoubleName() {
        Optional<Node> node = read("{\"rate\": 40,\n \"rate\": 20}");
        assertThat(Inputs.shown(problems))
                .containsExactly("show.json:2:2: error: \"rate\" stands twice in one object; first at show.json:1:2;"
                        + " rename or remove one of them");
        assertThat(((ObjectNode) node.orElseThrow()).fields()).hasSize(1);
    }

    /**
     * RFC 7493 section 2.2: whole numbers are exact for every reader up to 2^53 - 1; who reads 2^53 as a double cannot
     * tell it from 2^53 + 1.
     */
    @Test
    void refusesNumbersThatCannotBeKept() {
        Optional<Node> node =
                read("[NaN, -Infinity, 1e400, 9007199254740992, -9007199254740992, 123456789012345678901]");
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.substring(0, line.indexOf(';')))
                .containsExactly(
                        "show.json:1:2: error: NaN is not a number",
                        "show.json:1:7: error: -Infinity is not a number",
                        "show.json:1:18: error: 1e400 is too large for a number",
                        "show.json:1:25: error: 9007199254740992 is too large to be kept exactly",
                        "show.json:1:43: error: -9007199254740992 is too large to be kept exactly",
                        "show.json:1:62: error: 123456789012345678901 is too large to be kept exactly");
        assertThat(((ListNode) node.orElseThrow()).items())
                .allSatisfy(item -> assertThat(((NumberNode) item).value()).isNaN());
    }

    @ParameterizedTest
    @ValueSource(strings = {"9007199254740991", "-9007199254740991", "1e308", "0.1", "-0", "0e-400", "0.000"})
    void keepsNumbersAtTheEdge(String written) {
        NumberNode number = (NumberNode)
                ((ListNode) read("[" + written + "]").orElseThrow()).items().get(0);
        assertThat(number.value()).isEqualTo(Double.parseDouble(written));
        assertThat(number.written()).isEqualTo(written);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void warnsOfANumberThatVanishes() {
        read("[1e-400]");
        assertThat(problems.hasErrors()).isFalse();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("1:2: warning: 1e-400", "reads as 0");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {"a": 1 "b": 2}       ~ 1:9  ~ found a quote " where a comma or } should stand ~ the { of line 1, column 1 is still open
            {"a" 1}               ~ 1:6  ~ found "1" where a colon should stand            ~ the { of line 1, column 1
            {"a": [1, 2}          ~ 1:12 ~ found "}" where ] should stand                  ~ the [ of line 1, column 7 is still open
            {"a": (1)}            ~ 1:7  ~ found "(" where a value should stand            ~ the { of line 1, column 1
            {"a": 1, # red        ~ 1:10 ~ found "#" where a field name in double quotes should stand ~ remarks begin with // here, or stand between /* and */
            [1, 2 # green         ~ 1:7  ~ found "#" where a comma or ] should stand       ~ remarks begin with // here, or stand between /* and */
            [1 2]                 ~ 1:4  ~ found "2" where a comma or ] should stand       ~ the [ of line 1, column 1
            {"width": 20%}        ~ 1:13 ~ found "%" where a comma or } should stand       ~ a number with its unit stands in double quotes: "20%"
            [1.5s, 2]             ~ 1:5  ~ found "s" where a comma or ] should stand       ~ a number with its unit stands in double quotes: "1.5s"
            [-20 %]               ~ 1:6  ~ found "%" where a comma or ] should stand       ~ the [ of line 1, column 1
            [1;2]                 ~ 1:3  ~ found ";" where a comma or ] should stand       ~ the [ of line 1, column 1
            {"a": 1               ~ 1:8  ~ the file ends, but the { of line 1, column 1 is still open ~ add the missing }
            [[1, 2]               ~ 1:8  ~ the file ends, but the [ of line 1, column 1 is still open ~ add the missing ]
            {"a":                 ~ 1:6  ~ the file ends, but the { of line 1, column 1    ~ add the missing }
            {"a": }               ~ 1:7  ~ found "}" where a value should stand            ~ the { of line 1, column 1
            [,1]                  ~ 1:2  ~ found "," where a value should stand            ~ the [ of line 1, column 1
            {,}                   ~ 1:2  ~ found "," where a field name in double quotes   ~ the { of line 1, column 1
            {a: 1}                ~ 1:2  ~ found "a" where a field name in double quotes   ~ the { of line 1, column 1
            {'a': 1}              ~ 1:2  ~ found "'" where a field name in double quotes   ~ straight double quotes
            {“a”: 1}              ~ 1:2  ~ found "“" where a field name in double quotes   ~ straight double quotes
            {"x": 1,5}            ~ 1:9  ~ found "5" where a field name                    ~ 1.5, not 1,5
            [True]                ~ 1:2  ~ "True" is not a value                           ~ small letters
            [dusk]                ~ 1:2  ~ "dusk" is not a value                           ~ a text stands in double quotes
            [.5]                  ~ 1:2  ~ found "." where a value should stand            ~ write 0.5
            [5.]                  ~ 1:2  ~ "5." is not a number as JSON writes it          ~ write 0.5
            [+5]                  ~ 1:2  ~ "+5" is not a number as JSON writes it          ~ write 0.5
            [05]                  ~ 1:2  ~ "05" is not a number as JSON writes it          ~ write 0.5
            ["abc                 ~ 1:2  ~ the text that opens here has no closing quote   ~ the file ends at line 1, column 6
            {"abc                 ~ 1:2  ~ the text that opens here has no closing quote   ~ the file ends at line 1, column 6
            ["C:\\dusk"]          ~ 1:5  ~ this is not an escape that JSON knows           ~ / in paths
            [1] /* open           ~ 1:5  ~ the comment that opens here is not closed       ~ */
            [1] [2]               ~ 1:5  ~ the document has ended, but more follows        ~ one file holds one value
            [1]]                  ~ 1:4  ~ found "]", but no bracket is open               ~ ``
            """)
    void teachesWhatIsWrong(String text, String place, String message, String hint) {
        assertThat(read(text)).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("show.json:" + place + ": error: " + message)
                .contains(hint);
    }

    @Test
    void saysWhereATextOpensThatALineEndCuts() {
        read("{\n  \"title\": \"Longest day,\n  \"rate\": 40\n}");
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "show.json:2:12: error: the line ends inside the text that opens here; a closing quote is missing");
    }

    @Test
    void showsControlCharactersEscaped() {
        read("[\"a\u0000\"]");
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("1:4: error: control character \\u0000");
    }

    @Test
    void showsControlCharactersBetweenValues() {
        read("[1,\u0000 2]");
        assertThat(Inputs.shown(problems))
                .containsExactly("show.json:1:4: error: found \\u0000 between the values, which is a control character;"
                        + " remove it; is this a text file?");
    }

    @Test
    void knowsRemarksBeforeADocument() {
        read("# our garden\n# 2026\n\n{\"a\": 1}\n");
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "show.json:1:1: error: this is no JSON; remarks begin with // here, or stand between /* and"
                                + " */; a timeline or a display starts with {");
    }

    /** Tables, pictures and programs that were given in place of a document. */
    @ParameterizedTest
    @ValueSource(
            strings = {"prop,pixel,x,y\ndaisy,1,0,0\n", "1,2,3\n", "# map\n", "<svg/>", "\u0001\u0002\u0003", "True"})
    void saysThatOtherTextsAreNoJson(String text) {
        assertThat(read(text)).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("show.json:1:1: error: this is no JSON; a timeline or a display starts with {");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[\"\\ud83c\"]", "[\"\\udf3c\"]", "[\"\\udf3c\\ud83c\"]"})
    void refusesHalfASurrogatePair(String text) {
        assertThat(read(text)).isPresent();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("1:2: error: the escape", "half a character");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"\\ud83c\": 1}", "{\"\\udf3c\\ud83c\": 1}"})
    void refusesHalfASurrogatePairInAName(String text) {
        assertThat(read(text)).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("1:9: error: an escape", "half a character");
    }

    @Test
    void asksForFourDigitsInAnEscape() {
        read("[\"\\u12\"]");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("1:7: ", "four hexadecimal digits follow \\u");
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "\n\n", "// nothing here\n", "/* nothing */"})
    void refusesAFileWithoutAValue(String text) {
        assertThat(read(text)).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(Inputs.source("show.json", text).end()
                        + ": error: the file holds nothing but white space or comments");
    }

    @Test
    void refusesDeepNestingWhereItGoesTooDeep() {
        assertThat(read("[".repeat(100_000))).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("show.json:1:65: error: lists and objects are nested deeper than 64");
    }

    @Test
    void readsAsDeepAsAllowed() {
        assertThat(read("[".repeat(64) + "]".repeat(64))).isPresent();
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void refusesWhatIsTooLong() {
        assertThat(read("[\"" + "a".repeat((1 << 20) + 1) + "\"]")).isEmpty();
        assertThat(read("[" + "1".repeat(101) + "]")).isEmpty();
        assertThat(read("{\"" + "a".repeat(1001) + "\": 1}")).isEmpty();
        assertThat(Inputs.shown(problems))
                .hasSize(3)
                .anySatisfy(line -> assertThat(line).contains("1:1: error: the text is too long"))
                .anySatisfy(line -> assertThat(line).contains("1:2: error: the text is too long"))
                .anySatisfy(line -> assertThat(line).contains("1:2: error: the number has more than 100 digits"));
    }

    @Test
    void refusesTooManyValues() {
        assertThat(read("[" + "1,".repeat(JsonReader.MAX_TOKENS) + "1]")).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("holds more than 1000000 values");
    }

    @CsvSource({"\\n", "\\r", "\\r\\n"})
    @ParameterizedTest
    void countsLinesWithAnyLineEnds(String escaped) {
        String end = escaped.replace("\\r", "\r").replace("\\n", "\n");
        ListNode list = (ListNode) Inputs.json("[" + end + "1," + end + " 2]");
        assertThat(list.items())
                .extracting(item -> item.location().toString())
                .containsExactly("in.json:2:1", "in.json:3:2");
    }
}
