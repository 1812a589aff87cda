package org.duskloom.engine.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlobTest {
    @ParameterizedTest
    @CsvSource({
        "daisy-*, daisy-1, true",
        "daisy-*, daisy-, true",
        "daisy-?, daisy-, false",
        "daisy-?, daisy-12, false",
        "*, anything, true",
        "*a*b, xaxxb, true",
        "*a*b, xaxxbx, false",
        "a.c, abc, false",
        "[a], a, false",
        "Daisy*, daisy, false"
    })
    void matchesOneName(String pattern, String name, boolean matches) {
        assertThat(Glob.matches(pattern, name)).isEqualTo(matches);
    }

    @Test
    void takesACharacterOutsideTheBasicPlaneAsOne() {
        assertThat(Glob.matches("?", "\ud83c\udf3c")).isTrue();
        assertThat(Glob.matches("??", "\ud83c\udf3c")).isFalse();
        assertThat(Glob.matches("*?", "\ud83c\udf3c")).isTrue();
    }

    /** The regular expressions of the Java library judge: {@code *} is {@code .*} and {@code ?} is {@code .}. */
    @Test
    void agreesWithRegularExpressions() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            String pattern = text("ab*?", random);
            String name = text("ab", random);
            boolean expected = Pattern.matches(pattern.replace("*", ".*").replace('?', '.'), name);
            assertThat(Glob.matches(pattern, name)).as(pattern + " " + name).isEqualTo(expected);
        }
    }

    @Test
    void doesNotBlowUpOnManyStars() {
        assertThat(Glob.matches("*a".repeat(90) + "b", "a".repeat(200))).isFalse();
    }

    private static String text(String alphabet, Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            text.append(alphabet.charAt(random.nextInt(alphabet.length())));
        }
        return text.toString();
    }
}
