package org.duskloom.engine.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemTest {
    private static final Location PLACE = new Location("show.json", 2, 5);

    /**
     * Each of these ends a line or takes hold of a terminal, were it written as it is: line feed, carriage return, next
     * line and line separator (Unicode Standard, section 5.8), the escape sequences of ECMA-48 with both introducers,
     * and the override that turns letters round (Unicode Standard Annex #9).
     */
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\u0085", "\u2028", "\u001b[2J", "\u009b2J", "\u202e", "\u0000"})
    void nothingOfAnInputGetsOutOfItsLine(String hostile) {
        String text = "a" + hostile + "b";
        Problem problem = new Problem(Severity.ERROR, new Location(text, 1, 1), "is " + text, "not " + text);
        String escaped = String.format("a\\u%04x", (int) hostile.charAt(0)) + hostile.substring(1) + "b";
        assertThat(problem)
                .hasToString(escaped + ":1:1: error: is " + escaped + "; not " + escaped)
                .asString()
                .doesNotContain(hostile.substring(0, 1));
        assertThat(problem.message()).isEqualTo("is " + escaped);
        assertThat(problem.hint()).isEqualTo("not " + escaped);
    }

    /** What is a problem once more is kept once, so equal texts must be equal problems; all four parts count. */
    @Test
    void isTheSameOnlyIfAllItsPartsAre() {
        Problem problem = new Problem(Severity.ERROR, PLACE, "is \"a\tb\"", "name a prop");
        assertThat(problem)
                .isEqualTo(
                        new Problem(Severity.ERROR, new Location("show.json", 2, 5), "is \"a\\u0009b\"", "name a prop"))
                .isNotEqualTo(new Problem(Severity.WARNING, PLACE, "is \"a\tb\"", "name a prop"))
                .isNotEqualTo(
                        new Problem(Severity.ERROR, new Location("show.json", 2, 6), "is \"a\tb\"", "name a prop"))
                .isNotEqualTo(new Problem(Severity.ERROR, PLACE, "is \"ab\"", "name a prop"))
                .isNotEqualTo(new Problem(Severity.ERROR, PLACE, "is \"a\tb\"", ""));
    }

    @Test
    void isWholeOrIsNotMade() {
        assertThatThrownBy(() -> new Problem(null, PLACE, "", "")).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Problem(Severity.ERROR, null, "", "")).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Problem(Severity.ERROR, PLACE, null, "")).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Problem(Severity.ERROR, PLACE, "", null)).isInstanceOf(NullPointerException.class);
    }
}
