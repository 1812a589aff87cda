package org.duskloom.engine.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
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
        assertThat(problems.omittedErrors()).isZero();
    }

    @Test
    void repeatsDoNotDriveOthersOut() {
        for (int i = 0; i < 10_000; i++) {
            problems.error(new Location("show.json", 4, 2), "the same");
        }
        problems.warn(new Location("map.csv", 1, 1), "another", "");
        assertThat(problems.inFileOrder()).extracting(Problem::message).containsExactly("another", "the same");
        assertThat(problems.omittedErrors()).isZero();
        assertThat(problems.omittedWarnings()).isZero();
    }

    @Test
    void countsWhatGoesBeyondTheLimit() {
        for (int line = 1; line <= Problems.LIMIT + 5; line++) {
            problems.error(new Location("map.csv", line, 1), "wrong");
        }
        problems.error(new Location("map.csv", 7, 1), "wrong");
        assertThat(problems.inFileOrder()).hasSize(Problems.LIMIT);
        assertThat(problems.omittedErrors()).isEqualTo(5);
        assertThat(problems.errorCount()).isEqualTo(Problems.LIMIT + 6);
    }

    /** Warnings make room for errors, whichever come first, and what is listed stands in the order of the files. */
    @Test
    void noNumberOfWarningsHidesAnError() {
        int many = 3 * Problems.LIMIT;
        for (int line = 1; line <= many; line++) {
            problems.warn(new Location("map.csv", line, 1), "odd", "");
        }
        problems.error(new Location("show.json", 9, 5), "wrong");
        problems.error(new Location("map.csv", 2, 7), "wrong too");
        assertThat(problems.inFileOrder())
                .hasSize(Problems.LIMIT)
                .isSortedAccordingTo(Comparator.comparing(Problem::location))
                .extracting(Problem::message)
                .contains("wrong", "wrong too");
        assertThat(problems.inFileOrder().get(2).message()).isEqualTo("wrong too");
        assertThat(problems.omittedErrors()).isZero();
        assertThat(problems.omittedWarnings()).isEqualTo(many - (Problems.LIMIT - 2));
        assertThat(problems.warningCount()).isEqualTo(many);
    }

    @Test
    void noWarningIsListedWhereErrorsFillTheList() {
        problems.warn(new Location("map.csv", 1, 1), "odd", "");
        for (int line = 1; line <= Problems.LIMIT; line++) {
            problems.error(new Location("map.csv", line, 1), "wrong");
        }
        assertThat(problems.inFileOrder()).extracting(Problem::message).containsOnly("wrong");
        assertThat(problems.omittedErrors()).isZero();
        assertThat(problems.omittedWarnings()).isEqualTo(1);
    }

    /** So that whoever looks for new errors finds it. */
    @Test
    void anErrorCanBeCountedAgainWithoutWords() {
        problems.error(new Location("map.csv", 1, 1), "wrong");
        problems.countAgain();
        assertThat(problems.errorCount()).isEqualTo(2);
        assertThat(problems.inFileOrder()).hasSize(1);
        assertThat(problems.omittedErrors()).isZero();
    }
}
