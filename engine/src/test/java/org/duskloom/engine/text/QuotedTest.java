package org.duskloom.engine.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuotedTest {
    /** General categories from the Unicode Character Database: Cc, Cf, Zs, Zl, Cs. */
    @ParameterizedTest
    @CsvSource({"0, \\u0000", "a, \\u000a", "200b, \\u200b", "a0, \\u00a0", "2028, \\u2028", "d83c, \\ud83c"})
    void escapesWhatCannotBeSeen(String hex, String shown) {
        String text = "a" + Character.toString(Integer.parseInt(hex, 16)) + "b";
        assertThat(Quoted.of(text)).isEqualTo("\"a" + shown + "b\"");
    }

    @Test
    void leavesLettersAlone() {
        String text = "Gänseblümchen \ud83c\udf3c 5 m²";
        assertThat(Quoted.of(text)).isEqualTo('"' + text + '"');
    }

    @Test
    void cutsBehindSixtyCodePoints() {
        String daisies = "\ud83c\udf3c".repeat(60);
        assertThat(Quoted.of(daisies)).isEqualTo('"' + daisies + '"');
        assertThat(Quoted.of(daisies + "x")).isEqualTo('"' + daisies + "…\"");
    }

    @Test
    void showsAWholeTextOnOneLine() {
        assertThat(Quoted.plain("fence: \u001b[2J\n\u202e\u009b")).isEqualTo("fence: \\u001b[2J\\u000a\\u202e\\u009b");
        assertThat(Quoted.plain("x".repeat(100) + " \"ü\" \\")).isEqualTo("x".repeat(100) + " \"ü\" \\");
    }

    @Test
    void listsNamesWithoutQuotes() {
        assertThat(Quoted.choices(List.of("a", "b\u0007", "c".repeat(61))))
                .isEqualTo("a, b\\u0007, " + "c".repeat(60) + "…");
        assertThat(Quoted.choices(List.of())).isEmpty();
    }
}
