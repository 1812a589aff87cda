package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 8259, rule by rule; what this reader allows beyond it is held in {@link JsonReaderTest}. */
class JsonGrammarTest {
    private final Problems problems = new Problems();

    private boolean isRead(String text) {
        int before = problems.errorCount();
        return JsonReader.read(Inputs.source("show.json", text), problems).isPresent()
                && problems.errorCount() == before;
    }

    /** Section 2: "insignificant whitespace" is a space, a tab, a line feed and a carriage return, and nothing else. */
    @Test
    void onlyFourCharactersAreGaps() {
        for (int c = 0; c < 0x3100; c++) {
            boolean gap = c == ' ' || c == '\t' || c == '\n' || c == '\r';
            assertThat(isRead("[1," + (char) c + "2]"))
                    .as("U+%04X", c)
                    .isEqualTo(gap || c == '-' || c >= '1' && c <= '9');
        }
    }

    /** Section 6: number = [ minus ] int [ frac ] [ exp ]; of those the finite ones are taken. */
    @Test
    void numbersAreThoseOfTheRule() {
        String[] parts = {"-", "0", "7", ".", "e", "E", "+", "12"};
        String rule = "-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?";
        int numbers = 0;
        for (int code = 0; code < 8 * 8 * 8 * 8; code++) {
            String text = parts[code & 7] + parts[code >> 3 & 7] + parts[code >> 6 & 7] + parts[code >> 9];
            boolean number = text.matches(rule) && Double.isFinite(Double.parseDouble(text));
            assertThat(isRead("[" + text + "]")).as(text).isEqualTo(number);
            numbers += number ? 1 : 0;
        }
        assertThat(numbers).isGreaterThan(200);
    }

    /** Section 7: all characters may stand in a text but the quote, the backslash and U+0000 to U+001F. */
    @Test
    void textsHoldWhateverIsNoControlCharacter() {
        for (int c = 0; c < 0xD800; c++) {
            if (c >= 0x20 && c != '"' && c != '\\') {
                assertThat(((TextNode) Inputs.json("\"" + (char) c + "\"")).value())
                        .isEqualTo(String.valueOf((char) c));
            } else {
                assertThat(isRead("[\"" + (char) c + "\"]")).as("U+%04X", c).isFalse();
            }
        }
    }

    /** Section 7: behind a backslash stands one of eight characters, or u and four digits in either case. */
    @Test
    void escapesAreThoseOfTheRule() {
        String allowed = "\"\\/bfnrt";
        String meant = "\"\\/\b\f\n\r\t";
        for (char c = 0x20; c < 0x80; c++) {
            int place = allowed.indexOf(c);
            if (place >= 0) {
                assertThat(((TextNode) Inputs.json("\"\\" + c + "\"")).value())
                        .isEqualTo(meant.substring(place, place + 1));
            } else {
                assertThat(isRead("[\"\\" + c + "\"]")).as("\\%s", c).isFalse();
            }
        }
        for (int c = 0; c < 0xD800; c += 7) {
            assertThat(((TextNode) Inputs.json("\"\\u%04x\\u%04X\"".formatted(c, c))).value())
                    .isEqualTo(Character.toString(c).repeat(2));
        }
    }

    /** Section 2: any value is a document; section 3: the literal names are in small letters. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            true | true
            null | true
            7    | true
            ""   | true
            []   | true
            {}   | true
            True | false
            NULL | false
            nul  | false
            nulls | false
            undefined | false
            """)
    void aDocumentIsOneValue(String text, boolean allowed) {
        assertThat(isRead(text)).isEqualTo(allowed);
    }

    /** A text without an end is told where it opens, though quotes are escaped in it. */
    @ParameterizedTest
    @ValueSource(strings = {"the \\\"dew\\\"", "\\\"", "a \\\\\\\"", "\\\\"})
    void anUnclosedTextIsToldWhereItOpens(String inside) {
        assertThat(isRead("{\n  \"title\": \"" + inside + "\n}")).isFalse();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "show.json:2:12: error: the line ends inside the text that opens here; a closing quote is"
                                + " missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"the \\\"dew\\\"", "\\\"", "a \\\\\\\""})
    void anUnclosedNameIsToldWhereItOpens(String inside) {
        assertThat(isRead("{\n  \"" + inside)).isFalse();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith(
                        "show.json:2:3: error: the text that opens here has no closing quote; the file ends at line 2");
    }
}
