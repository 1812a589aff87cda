package org.duskloom.engine.css;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How functions are written, and what is said of texts that are none: W3C CSS Syntax Module Level 3. */
class CssTextTest {
    private static String refusal(String text) {
        TextFormatException refused = catchThrowableOfType(TextFormatException.class, () -> CssFunction.parse(text));
        assertThat(refused).as(text).isNotNull();
        return refused.getMessage() + (refused.hint().isEmpty() ? "" : "; " + refused.hint());
    }

    private static String written(CssFunction function) {
        return function.groups().stream()
                .map(group -> group.stream().map(CssValue::text).collect(Collectors.joining(" ")))
                .collect(Collectors.joining(",", function.name() + "(", ")"));
    }

    /** Section 4.2: white space is a line feed, a tab or a space; a carriage return and a form feed become feeds. */
    @ParameterizedTest
    @ValueSource(strings = {" ", "\t", "\n", "\r", "\f", "\r\n\t  "})
    void whiteSpacePartsValues(String space) throws TextFormatException {
        CssFunction function =
                CssFunction.parse("f(" + space + "1" + space + "2%" + space + "," + space + "x" + space + ")");
        assertThat(written(function)).isEqualTo("f(1 2%,x)");
    }

    /** The spaces of Unicode are none of CSS, whether they stand before a value or behind it. */
    @ParameterizedTest
    @ValueSource(strings = {"\u2003", "\u000b", "\u00a0", "\u3000"})
    void otherSpacesAreNoWhiteSpace(String space) {
        String seen = String.format("\\u%04x", (int) space.charAt(0));
        assertThat(refusal("f(1" + space + ")"))
                .isEqualTo("cannot read \"" + seen + "\" in \"f(1" + seen
                        + ")\"; write plain numbers such as 0.5, 50% or 90deg");
        assertThat(refusal("f(" + space + "1)")).startsWith("cannot read \"" + seen + "1\" in ");
    }

    /** What was read and is written again says the same. */
    @ParameterizedTest
    @ValueSource(strings = {"ROTATE(-.5TURN)", "steps(4,jump-end)", "lch(29% 39 none / 50%)", "f(+1e-3X,a-b-1 0/0)"})
    void isTheSameWhenWrittenAndReadAgain(String text) throws TextFormatException {
        CssFunction once = CssFunction.parse(text);
        CssFunction twice = CssFunction.parse(written(once));
        assertThat(twice).isEqualTo(once);
    }

    /** Section 4.3.3: a number with a percent sign is a percentage, with letters a dimension; a sign belongs to it. */
    @ParameterizedTest
    @CsvSource({
        "f(7), NUMBER, 7, ''",
        "f(-7%), PERCENTAGE, -7, ''",
        "f(7DEG), DIMENSION, 7, deg",
        "f(7e2s), DIMENSION, 700, s",
        "f(deg), WORD, 0, ''",
        "f(/), SLASH, 0, ''"
    })
    void everyValueHasAKind(String text, CssValue.Kind kind, double number, String unit) throws TextFormatException {
        CssValue value = CssFunction.parse(text).groups().get(0).get(0);
        for (CssValue.Kind other : CssValue.Kind.values()) {
            assertThat(value.is(other)).isEqualTo(other == kind);
        }
        assertThat(value.number()).isEqualTo(number);
        assertThat(value.unit()).isEqualTo(unit);
        assertThat(text).contains(value.text());
    }

    /** A bracket makes a function of it, so that what is said of a word with a bracket is said of a function. */
    @ParameterizedTest
    @CsvSource({"red, false", "'', false", "red(, true", "rgb(1), true", "rgb 1), false"})
    void aBracketMeansAFunction(String text, boolean isFunction) {
        assertThat(CssFunction.isMeantBy(text)).isEqualTo(isFunction);
    }

    @Test
    void saysHowAFunctionIsWritten() {
        assertThat(refusal("rgb(1 2 3"))
                .isEqualTo("\"rgb(1 2 3\" is not a name with values in brackets; write name(value, value)");
        assertThat(refusal("rgb(1, calc(2))"))
                .isEqualTo(
                        "cannot read \"calc(2)\" in \"rgb(1, calc(2))\"; write plain numbers such as 0.5, 50% or 90deg");
        assertThat(refusal("rgb(1, )")).isEqualTo("a value is missing in \"rgb(1, )\"");
        assertThat(refusal("f(2 9e999%)")).isEqualTo("the number \"9e999%\" in \"f(2 9e999%)\" is too large");
    }

    /** 2,000 characters are read, whatever is in them; one more is refused before it is looked at. */
    @Test
    void readsNoEndlessTexts() throws TextFormatException {
        String longest = "f(" + "1 ".repeat(998) + "x)";
        assertThat(longest).hasSize(2000);
        assertThat(CssFunction.parse(longest).groups().get(0)).hasSize(999);
        assertThat(refusal(longest + " "))
                .isEqualTo("\"" + longest.substring(0, 60) + "…\" is too long; at most 2000 characters");
        assertThat(refusal("f(" + "-".repeat(1997) + ")")).startsWith("cannot read ");
        assertThat(refusal("a-".repeat(1000)))
                .endsWith(" is not a name with values in brackets; write name(value, value)");
    }

    /** Whoever has a function cannot change what it says. */
    @Test
    void keepsItsValues() throws TextFormatException {
        List<List<CssValue>> groups = CssFunction.parse("f(1, 2)").groups();
        assertThatThrownBy(() -> groups.get(0).clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(groups::clear).isInstanceOf(UnsupportedOperationException.class);
    }
}
