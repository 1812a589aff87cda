package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberNodeTest {
    private final Problems problems = new Problems();

    private static NumberNode number(String written) {
        return (NumberNode) ((ObjectNode) Inputs.json("{\"a\": " + written + "}"))
                .fields()
                .get(0)
                .value();
    }

    /** Frames are computed from what doubles make of it (IEEE 754), and a person reads the sum on paper. */
    @ParameterizedTest
    @CsvSource({"-0.14, 0.98, 7, 0", "0.1, 0.1, 2, 0.3", "0.07, 0.09, 13, 1", "2, 1, 3, 7", "1e22, 1, 1, 1E+22"})
    void isAddedInDoublesAndWrittenAsOnPaper(String step, double start, int times, String paper) {
        NumberNode sum = number(step).added(start, times);
        assertThat(sum.value()).isEqualTo(start + times * Double.parseDouble(step));
        assertThat(sum.written()).isEqualTo(paper);
        assertThat(sum.location()).hasToString("in.json:1:7");
    }

    /** A sum of a sum: 7 times -0.14 is -0.98 on paper, and on top of 0.98 nothing. */
    @Test
    void goesOnFromThePaper() {
        NumberNode sum = number("-0.14").added(0, 7);
        assertThat(sum.written()).isEqualTo("-0.98");
        assertThat(sum.added(0.98, 1).written()).isEqualTo("0");
        assertThat(Expected.number(sum.added(0.98, 1), "\"a\"", 0, 1, problems)).hasValue(0);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** Ten times 0.09 and 0.1 are 1; doubles make 0.9999999999999999 of it, and whole it is. */
    @Test
    void isWholeWhereItIsWholeOnPaper() {
        NumberNode sum = number("0.09").added(0.1, 10);
        assertThat(sum.value()).isLessThan(1);
        assertThat(Expected.whole(sum, "\"a\"", 0, 3, problems)).hasValue(1);
        assertThat(Expected.whole(number("0.09").added(0.1, 9), "\"a\"", 0, 3, problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("\"a\" is 0.91; allowed: a whole number");
    }

    /** A number that the reader refused has been told, and what is added to it is refused without a word. */
    @Test
    void refusedNumbersStayRefused() {
        NumberNode refused = new NumberNode(number("1").location(), Double.NaN, "1e999");
        assertThat(refused.added(1, 2).value()).isNaN();
        assertThat(number("1").added(Double.NaN, 2).value()).isNaN();
        assertThat(Expected.number(refused.added(1, 2), "\"a\"", 0, 1, problems))
                .isEmpty();
        assertThat(Inputs.shown(problems)).isEmpty();
    }
}
