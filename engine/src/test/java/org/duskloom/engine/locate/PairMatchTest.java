package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PairMatchTest {
    /**
     * A letter for each reading: a capital and its small letter are a pair, in whichever order. What x shows is seen
     * elsewhere.
     */
    private static PairMatch match(String readings, int pairs) {
        return PairMatch.of(
                readings.length(),
                pairs,
                (one, other) -> (readings.charAt(one) ^ readings.charAt(other)) == 0x20,
                reading -> readings.charAt(reading) == 'x');
    }

    @Test
    void nothingIsMissing() {
        assertThat(match("AaBbCc", 3)).isEqualTo(new PairMatch(List.of(), List.of(), 0));
        assertThat(match("", 0).faults()).isZero();
    }

    @Test
    void partnersAreMissing() {
        assertThat(match("AaBCcd", 4))
                .isEqualTo(new PairMatch(List.of(new PairMatch.Alone(2, 1), new PairMatch.Alone(5, 3)), List.of(), 0));
        assertThat(match("aBCc", 3))
                .isEqualTo(new PairMatch(List.of(new PairMatch.Alone(0, 0), new PairMatch.Alone(1, 1)), List.of(), 0));
    }

    /** Two readings that are a pair are not two of which the partners are missing. */
    @Test
    void aWholePairIsMissing() {
        assertThat(match("AaCc", 3)).isEqualTo(new PairMatch(List.of(), List.of(), 1));
        assertThat(match("AaCcD", 4).missingPairs()).isEqualTo(1);
        assertThat(match("", 2)).isEqualTo(new PairMatch(List.of(), List.of(), 2));
    }

    @Test
    void someAreTooMany() {
        assertThat(match("AaxBbCc", 3)).isEqualTo(new PairMatch(List.of(), List.of(2), 0));
        assertThat(match("AxyaBb", 2)).isEqualTo(new PairMatch(List.of(), List.of(1, 2), 0));
        assertThat(match("xAaBby", 2)).isEqualTo(new PairMatch(List.of(), List.of(0, 5), 0));
    }

    @Test
    void oneIsMissingAndAnotherTooMany() {
        PairMatch match = match("AaBCcDdxEe", 5);
        assertThat(match).isEqualTo(new PairMatch(List.of(new PairMatch.Alone(2, 1)), List.of(7), 0));
        assertThat(match.faults()).isEqualTo(2);
    }

    /** Nothing belongs together: then it is not said what is missing, as there are too many faults. */
    @Test
    void nothingIsAPair() {
        assertThat(match("ABCDEF", 3).faults()).isEqualTo(6);
    }
}
