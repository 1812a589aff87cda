package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

class PageTextTest {
    private static final PageText PAGE = new PageText("<link rel=\"stylesheet\" href=\"a.css\">"
            + "<!-- film -->small<!-- end of film --><script src=\"a.js\"></script><script src=\"b.js\"></script>");

    @Test
    void takesItsFilesIn() {
        assertThat(PAGE.inOneFile(name -> "$1 " + name + "\n").html())
                .isEqualTo("<style>\n$1 a.css\n</style><!-- film -->small<!-- end of film -->"
                        + "<script>\n$1 a.js\n</script><script>\n$1 b.js\n</script>");
    }

    @Test
    void isFilledBetweenMarks() {
        assertThat(PAGE.filled(Map.of("film", "large")).html())
                .startsWith("<link rel=\"stylesheet\" href=\"a.css\">large<script");
        assertThatThrownBy(() -> PAGE.filled(Map.of("flim", ""))).isInstanceOf(IllegalArgumentException.class);
    }

    /** HTML Living Standard, 4.12.1.3: what ends a script, or lets it go on beyond its end. */
    @Test
    void scriptsEndWhereTheyEnd() {
        for (String script : new String[] {"'</script>'", "'<!--'", "'</SCRIPT>'"}) {
            assertThatThrownBy(() -> PAGE.inOneFile(name -> script)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(PageText.harmless("{\"a\": \"</script><!--\"}")).isEqualTo("{\"a\": \"\\u003c/script>\\u003c!--\"}");
    }

    /** Several marks, one of them at the end, each with a text of its own; the others keep what they have. */
    @Test
    void marksDoNotHangOnEachOther() {
        PageText page = new PageText(
                "1<!-- a --><!-- end of a -->2<!-- b -->old<!-- end of b -->3<!-- c -->kept<!-- end of c -->");
        assertThat(page.filled(Map.of("a", "longer than it was", "b", "")).html())
                .isEqualTo("1longer than it was23<!-- c -->kept<!-- end of c -->");
        assertThat(page.filled(Map.of())).isEqualTo(page);
        assertThat(page.before("b") + "|" + page.after("b"))
                .isEqualTo("1<!-- a --><!-- end of a -->2|3<!-- c -->kept<!-- end of c -->");
    }

    /** A mark that is not closed, or closed before it opens, would swallow the page. */
    @Test
    void aMarkHasTwoEnds() {
        for (String html : new String[] {"<!-- a -->", "<!-- end of a -->", "<!-- end of a --><!-- a -->", ""}) {
            PageText page = new PageText(html);
            assertThatThrownBy(() -> page.before("a"))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("the page has no mark a");
            assertThatThrownBy(() -> page.after("a")).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
