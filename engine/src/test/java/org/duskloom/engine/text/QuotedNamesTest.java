package org.duskloom.engine.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names and single characters in messages: promises of the design, no source. */
class QuotedNamesTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            0 | ``
            1 | "bed 1"
            3 | "bed 1", "bed 2", "bed 3"
            4 | "bed 1", "bed 2", "bed 3" and 1 more
            1000 | "bed 1", "bed 2", "bed 3" and 997 more
            """)
    void namesThreeAndCountsTheRest(int names, String shown) {
        List<String> beds =
                IntStream.rangeClosed(1, names).mapToObj(bed -> "bed " + bed).toList();
        assertThat(Quoted.few(beds)).isEqualTo(shown);
    }

    /** A name of a spreadsheet may hold anything. */
    @Test
    void showsNamesOnOneLine() {
        assertThat(Quoted.few(List.of("a\nb", "c".repeat(61)))).isEqualTo("\"a\\u000ab\", \"" + "c".repeat(60) + "…\"");
    }

    /** General categories of the Unicode Character Database: Lu, So, Cc, Cf, Zs, Zp, Co, Cn. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            41    | "A"
            20    | " "
            22    | a quote "
            1f33c | "🌼"
            9     | \\u0009
            feff  | \\ufeff
            3000  | \\u3000
            2029  | \\u2029
            e000  | \\ue000
            e0fff | \\ue0fff
            """)
    void showsACharacterOrItsNumber(String hex, String shown) {
        assertThat(Quoted.ofPoint(Integer.parseInt(hex, 16))).isEqualTo(shown);
    }
}
