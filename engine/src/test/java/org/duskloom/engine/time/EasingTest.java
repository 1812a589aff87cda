package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class EasingTest {
    /** The control points that W3C CSS Easing Functions Level 1 gives to its words. */
    @ParameterizedTest
    @CsvSource({
        "ease, 'cubic-bezier(0.25, 0.1, 0.25, 1)'",
        "ease-in, 'cubic-bezier(0.42, 0, 1, 1)'",
        "ease-out, 'cubic-bezier(0, 0, 0.58, 1)'",
        "ease-in-out, 'cubic-bezier(.42, 0, .58, 1)'",
        "step-start, 'steps(1, start)'",
        "step-end, 'steps(1, end)'",
        "'steps(3)', 'steps(3, jump-end)'",
        "'steps(3, start)', 'steps(3, jump-start)'",
        "' EASE-In ', ease-in",
        "'CUBIC-BEZIER( .1 ,0.2,3e-1 , +0.4 )', 'cubic-bezier(0.1, 0.2, 0.3, 0.4)'"
    })
    void wordsAreShortForFunctions(String word, String function) throws TextFormatException {
        assertThat(Easing.parse(word)).isEqualTo(Easing.parse(function));
    }

    @Test
    void linearLeavesProgressAsItIs() throws TextFormatException {
        Easing linear = Easing.parse("linear");

        assertThat(linear.at(0.3)).isEqualTo(0.3);
        assertThat(linear.at(-1)).isZero();
        assertThat(linear.at(2)).isEqualTo(1);
        assertThat(linear.at(Double.NaN)).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ease-inn|is not an easing|did you mean \"ease-in\"?",
                "bounce|is not an easing|allowed: linear, ease, ease-in",
                "cubic-beziér(0,0,1,1)|is not a name with values|write name",
                "cubicbezier(0,0,1,1)|is not an easing|did you mean \"cubic-bezier()\"?",
                "step(3)|is not an easing|did you mean \"steps()\"?",
                "spring(1)|is not an easing|allowed:",
                "cubic-bezier(0, 0, 1)|has 3 values instead of 4|x1 and x2 from 0 to 1",
                "cubic-bezier(0, 0, 1, 1, 1)|has 5 values instead of 4|x1 and x2",
                "cubic-bezier(-0.1, 0, 1, 1)|has the value -0.1 out of its range|x1 and x2 from 0 to 1",
                "cubic-bezier(0, 0, 1.1, 1)|has the value 1.1 out of its range|x1 and x2",
                "cubic-bezier(0, 1e9, 1, 1)|has the value 1e9 out of its range|y1 and y2 from -1000",
                "cubic-bezier(0, 0, 50%, 1)|has \"50%\" where it cannot stand|x1 and x2",
                "cubic-bezier(0 0 1 1)|has 1 value instead of 4|x1 and x2",
                "cubic-bezier(0, a, 1, 1)|has \"a\" where it cannot stand|x1 and x2",
                "steps(0)|has the count 0|from 1 to 1000000",
                "steps(-3)|has the count -3|from 1",
                "steps(2.5)|has the count 2.5|whole number",
                "steps(1e9)|has the count 1e9|from 1 to 1000000",
                "steps(3, jump-strat)|has the unknown position \"jump-strat\"|did you mean \"jump-start\"?",
                "steps(3, 4)|has \"4\" where it cannot stand|write steps(4)",
                "steps(3, end, end)|has 3 values instead of 1 or 2|write steps(4)",
                "steps(1, jump-none)|never moves|needs 2 steps or more",
                "linear(1)|has a single stop|two stops or more",
                "linear(0, 50%)|has a stop that cannot be read|each a number",
                "linear(0, 0% 1 50%)|has a stop that cannot be read|at most two percentages",
                "linear(0, 1 1% 2% 3%)|has a stop that cannot be read|at most two percentages",
                "linear(0, 1 2)|has \"2\" where it cannot stand|each a number",
                "linear(0, 1px)|has \"1px\" where it cannot stand|each a number",
                "linear(0, 1e9)|which is beyond -1000 or 1000|write linear"
            })
    void refusalsTeach(String text, String message, String hint) {
        TextFormatException refusal = catchThrowableOfType(TextFormatException.class, () -> Easing.parse(text));

        assertThat(refusal).hasMessageContaining("\"" + text + "\"").hasMessageContaining(message);
        assertThat(refusal.hint()).contains(hint);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "(",
                ")",
                "()",
                "linear()",
                "linear(,)",
                "linear(0,,1)",
                "linear(0, 1",
                "linear 0, 1)",
                "steps(3))",
                "steps((3)",
                "steps(calc(3))",
                "cubic-bezier(NaN,0,1,1)",
                "cubic-bezier(1e400,0,1,1)",
                "steps(4)\u0000",
                "ease\u0131n",
                "linear(0 / 1, 1)",
                "steps(3, )",
                "ease,ease",
                "\ud800",
                "linear(0, 1)linear(0, 1)"
            })
    void hostileTextsAreRefused(String text) {
        TextFormatException refusal = catchThrowableOfType(TextFormatException.class, () -> Easing.parse(text));

        assertThat(refusal).isNotNull();
        assertThat(refusal.getMessage()).doesNotContain("\u0000").hasSizeLessThan(250);
    }

    @Test
    void endlessTextsAreRefused() {
        String text = "linear(0" + ", 1".repeat(1_000_000) + ")";

        assertThat(catchThrowableOfType(TextFormatException.class, () -> Easing.parse(text)))
                .hasMessageContaining("is too long");
    }
}
