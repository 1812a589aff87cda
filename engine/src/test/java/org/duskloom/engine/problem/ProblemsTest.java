package org.duskloom.engine.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ProblemsTest {
    private final Problems problems = new Problems();

    @Test
    void keepsAProblemOnceButCountsItAsOftenAsItIsFound() {
        for (int i = 0; i < 3; i++) {
            problems.error(new Location("show.json", 4, 2), "there is no look \"glwo\"", "did you mean \"glow\"?");
        }
        assertThat(problems.inFileOrder())
                .extracting(Problem::toString)
                .containsExactly("show.json:4:2: error: there is no look \"glwo\"; did you mean \"glow\"?");
        assertThat(problems.errorCount()).isEqualTo(3);
        assertThat(problems.omitted()).isZero();
    }

    @Test
    void repeatsDoNotDriveOthersOut() {
        for (int i = 0; i < 10_000; i++) {
            problems.error(new Location("show.json", 4, 2), "the same");
        }
        problems.warn(new Location("map.csv", 1, 1), "another", "");
        assertThat(problems.inFileOrder()).extracting(Problem::message).containsExactly("another", "the same");
        assertThat(problems.omitted()).isZero();
    }

    @Test
    void countsWhatGoesBeyondTheLimit() {
        for (int line = 1; line <= Problems.LIMIT + 5; line++) {
            problems.error(new Location("map.csv", line, 1), "wrong");
        }
        problems.error(new Location("map.csv", 7, 1), "wrong");
        assertThat(problems.inFileOrder()).hasSize(Problems.LIMIT);
        assertThat(problems.omitted()).isEqualTo(5);
        assertThat(problems.errorCount()).isEqualTo(Problems.LIMIT + 6);
    }

    @Test
    void endsTheReadingWithEverythingIfThereAreErrors() throws InputException {
        problems.warn(Location.ofFile("show.json"), "doubtful", "look again");
        problems.throwIfErrors();
        problems.error(new Location("show.json", 2, 0), "wrong");
        assertThatThrownBy(problems::throwIfErrors)
                .isInstanceOf(InputException.class)
                .hasMessage("show.json: warning: doubtful; look again\nshow.json:2: error: wrong");
    }
}
