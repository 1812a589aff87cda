package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
}
