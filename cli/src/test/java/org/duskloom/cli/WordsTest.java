package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0.0 s",
        "0.84, 0.8 s",
        "59.94, 59.9 s",
        "59.95, 1:00 min",
        "62.4, 1:02 min",
        "3599.4, 59:59 min",
        "3599.5, 1:00:00 h",
        "90061, 25:01:01 h"
    })
    void saysHowLong(double seconds, String text) {
        assertThat(Words.duration(seconds)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 bytes",
        "1, 1 byte",
        "999, 999 bytes",
        "1000, 1.0 kB",
        "999949, 999.9 kB",
        "999950, 1.0 MB",
        "14400000, 14.4 MB",
        "9223372036854775807, 9223.4 PB"
    })
    void saysHowMuch(long bytes, String text) {
        assertThat(Words.bytes(bytes)).isEqualTo(text);
    }

    /** Arabic digits and decimal commas are for other programs. */
    @Test
    void doesNotFollowTheLocale() {
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Words.duration(1.5)).isEqualTo("1.5 s");
            assertThat(Words.bytes(1500)).isEqualTo("1.5 kB");
        } finally {
            Locale.setDefault(usual);
        }
    }
}
