package org.duskloom.engine.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LocationTest {
    @Test
    void saysAsMuchAsIsKnown() {
        assertThat(new Location("garden/show.json", 12, 7)).hasToString("garden/show.json:12:7");
        assertThat(new Location("pixels.csv", 3, 0)).hasToString("pixels.csv:3");
        assertThat(Location.ofFile("pixels.csv")).hasToString("pixels.csv");
    }

    /** By numbers, not by letters: line 9 comes before line 10; the whole before its parts. */
    @Test
    void comesInTheOrderOfReading() {
        Location whole = Location.ofFile("a.json");
        Location line = new Location("a.json", 9, 0);
        Location early = new Location("a.json", 9, 80);
        Location late = new Location("a.json", 10, 2);
        Location other = new Location("b.json", 1, 1);
        assertThat(Stream.of(other, late, early, line, whole).sorted())
                .isEqualTo(List.of(whole, line, early, late, other));
    }

    @Test
    void needsAFile() {
        assertThatThrownBy(() -> new Location(null, 1, 1)).isInstanceOf(NullPointerException.class);
    }

    /** One line: where, how bad, what, and what is allowed, if anything. */
    @Test
    void standsBeforeItsProblem() {
        Location place = new Location("show.json", 4, 9);
        assertThat(new Problem(Severity.ERROR, place, "no prop \"diasy\"", "did you mean \"daisy\"?"))
                .hasToString("show.json:4:9: error: no prop \"diasy\"; did you mean \"daisy\"?");
        assertThat(new Problem(Severity.WARNING, Location.ofFile("show.json"), "nothing to see", ""))
                .hasToString("show.json: warning: nothing to see");
    }
}
