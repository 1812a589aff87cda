package org.duskloom.engine.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Unicode Standard Annex #15, figures 3 to 5: what has one character and what has two. */
class LookAlikeTest {
    @ParameterizedTest
    @CsvSource({
        "\u00C5, A\u030A",
        "\u00F4, o\u0302",
        "\u1E69, s\u0323\u0307",
        "\u1E0B\u0323, d\u0323\u0307",
        "G\u00E4nsebl\u00FCmchen, Ga\u0308nseblu\u0308mchen"
    })
    void accentsMayBeStoredInTwoWays(String one, String other) {
        assertThat(LookAlike.are(one, other)).isTrue();
        assertThat(LookAlike.are(other, one)).isTrue();
        assertThat(LookAlike.composed(one)).isEqualTo(LookAlike.composed(other));
    }

    /** What is the same is no look-alike; a ligature and its letters, or a raised digit, do not look the same. */
    @ParameterizedTest
    @CsvSource({"a, a", "\u00E4, a", "A, a", "\uFB01, fi", "2\u2075, 25"})
    void othersAreNone(String one, String other) {
        assertThat(LookAlike.are(one, other)).isFalse();
    }
}
