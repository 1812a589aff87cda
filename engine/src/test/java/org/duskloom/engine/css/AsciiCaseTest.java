package org.duskloom.engine.css;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AsciiCaseTest {
    /** W3C Infra Standard, "ASCII lowercase": U+0041 to U+005A become U+0061 to U+007A, nothing else changes. */
    @Test
    void changesTwentySixLettersOfAllCodePoints() {
        for (int point = 0; point <= Character.MAX_CODE_POINT; point++) {
            String text = Character.toString(point);
            boolean isCapital = point >= 0x41 && point <= 0x5A;
            if (!AsciiCase.lower(text).equals(isCapital ? Character.toString(point + 0x20) : text)) {
                throw new AssertionError(String.format("U+%04X", point));
            }
        }
        String capitals =
                IntStream.rangeClosed('A', 'Z').mapToObj(Character::toString).collect(Collectors.joining());
        assertThat(AsciiCase.lower("x" + capitals + "é\ud83c\udf3c"))
                .isEqualTo("xabcdefghijklmnopqrstuvwxyzé\ud83c\udf3c");
    }

    /** In Turkish the small letter of I has no dot, so that "LINEAR" would be no word on a Turkish computer. */
    @Test
    void doesNotDependOnTheLanguageOfTheSystem() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat("LINEAR".toLowerCase()).as("what it guards against").isNotEqualTo("linear");
            assertThat(AsciiCase.lower("LINEAR")).isEqualTo("linear");
        } finally {
            Locale.setDefault(before);
        }
    }
}
