package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What HTML (WHATWG HTML, section 13.1) takes for markup, and what XML 1.0 (section 2.2) has no character for. */
class HtmlTest {
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            a < b                 ~ a &lt; b
            </td>                 ~ &lt;/td&gt;
            "shed" 'old'          ~ &quot;shed&quot; &#39;old&#39;
            R&D &amp;             ~ R&amp;D &amp;amp;
            \u540d \ud83c\udf3c   ~ \u540d \ud83c\udf3c
            """)
    void escapesMarkup(String text, String html) {
        assertThat(Html.escaped(text)).isEqualTo(html);
    }

    /** Each is replaced by itself: none takes its neighbours with it. */
    @Test
    void replacesWhatIsNoText() {
        assertThat(Html.escaped("a\u0000b\u001fc\u007fd\ud800e\udc00f"))
                .isEqualTo("a\ufffdb\ufffdc\ufffdd\ufffde\ufffdf");
        assertThat(Html.escaped("a\tb\nc")).isEqualTo("a\tb\nc");
    }

    @Test
    void closesElementsWithoutTheirAttributes() {
        assertThat(new Html().element("p class=\"quiet\"", "1 < 2")).hasToString("<p class=\"quiet\">1 &lt; 2</p>\n");
    }

    /** Column heads and row heads say what they are heads of (WCAG 2.2, technique H63). */
    @Test
    void tablesHaveHeads() {
        Html table = new Html().table(List.of(List.of("prop", "a & b"), List.of("<gate>", "1"), List.of("post", "2")));

        assertThat(table.toString().replace("\n", ""))
                .isEqualTo("<div class=\"wide\" tabindex=\"0\"><table><thead><tr><th scope=\"col\">prop</th>"
                        + "<th scope=\"col\">a &amp; b</th></tr></thead><tbody>"
                        + "<tr><th scope=\"row\">&lt;gate&gt;</th><td>1</td></tr>"
                        + "<tr><th scope=\"row\">post</th><td>2</td></tr></tbody></table></div>");
    }

    /** Whatever somebody calls a prop, a page with that name is whole, and the name on it is the name. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void anyTextIsReadBack(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 300; round++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(8); length >= 0; length--) {
                text.appendCodePoint(random.nextInt(4) > 0 ? random.nextInt(0x100) : random.nextInt(0x110000));
            }
            String read = Page.ofPiece(new Html().element("p", text.toString()))
                    .texts("p")
                    .get(0);
            assertThat(read.codePoints().toArray())
                    .isEqualTo(text.codePoints().map(HtmlTest::shown).toArray());
        }
    }

    /**
     * WHATWG HTML, section 13.2.3.5: surrogates, noncharacters and controls other than white space are errors in a
     * page; U+FFFD stands for them.
     */
    private static int shown(int c) {
        boolean noncharacter = c >= 0xFDD0 && c <= 0xFDEF || (c & 0xFFFF) >= 0xFFFE;
        boolean control = Character.isISOControl(c) && c != '\t' && c != '\n';
        return noncharacter || control || c >= 0xD800 && c <= 0xDFFF ? 0xFFFD : c;
    }

    @ParameterizedTest
    @ValueSource(ints = {0xD, 0x80, 0x9F, 0xFDD0, 0xFDEF, 0xFFFE, 0xFFFF, 0x1FFFE, 0x10FFFF})
    void noncharactersAndControlsAreReplaced(int c) {
        assertThat(Html.escaped("a" + Character.toString(c) + "b")).isEqualTo("a\ufffdb");
    }

    /** What is long gets room in a table that scrolls; a figure and its unit do not. */
    @Test
    void longCellsAreNotes() {
        String row = new Html()
                .table(List.of(List.of("a", "b", "c"), List.of("1", "x".repeat(40), "x".repeat(41))))
                .toString();
        assertThat(row).contains("<td>" + "x".repeat(40) + "</td>", "<td class=\"note\">" + "x".repeat(41) + "</td>");
    }
}
