package org.duskloom.engine.css;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The token grammar is that of W3C CSS Syntax Module Level 3, section "Tokenization". */
final class CssFunctionTest {
    @Test
    void splitsAtCommasAndThenAtWhiteSpace() throws TextFormatException {
        CssFunction function = CssFunction.parse(" Mix( 1 50%\t-2.5DEG , none / .5e1 ) ");

        assertThat(function.name()).isEqualTo("mix");
        assertThat(function.groups())
                .containsExactly(
                        List.of(
                                new CssValue(CssValue.Kind.NUMBER, 1, "", "1"),
                                new CssValue(CssValue.Kind.PERCENTAGE, 50, "", "50%"),
                                new CssValue(CssValue.Kind.DIMENSION, -2.5, "deg", "-2.5DEG")),
                        List.of(
                                new CssValue(CssValue.Kind.WORD, 0, "", "none"),
                                new CssValue(CssValue.Kind.SLASH, 0, "", "/"),
                                new CssValue(CssValue.Kind.NUMBER, 5, "", ".5e1")));
    }

    @ParameterizedTest
    @CsvSource({"12, 12", "+.5, 0.5", "-0.25, -0.25", "1e3, 1000", "1E-3, 0.001", "4.01, 4.01", "007, 7"})
    void readsNumbers(String text, double number) throws TextFormatException {
        assertThat(CssFunction.parse("f(" + text + ")").groups().get(0).get(0).number())
                .isEqualTo(number);
    }

    /** "1e" is not an exponent without digits, so the letter is a unit; "1em" likewise. */
    @Test
    void lettersAfterANumberAreItsUnit() throws TextFormatException {
        assertThat(CssFunction.parse("f(1em)").groups().get(0).get(0).unit()).isEqualTo("em");
        assertThat(CssFunction.parse("f(1e)").groups().get(0).get(0).unit()).isEqualTo("e");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "f(1.)",
                "f(.)",
                "f(+)",
                "f(1%%)",
                "f(#fff)",
                "f(g(1))",
                "f('a')",
                "f(1;2)",
                "f(1 2",
                "f 1 2)",
                "(1)",
                "1(2)",
                "f()",
                "f(1,)",
                "f(,1)",
                "f(1,,2)",
                "f( )",
                "f(\u00a01)",
                "f(٣)",
                "f(1e999)",
                "f(-1e999)",
                ""
            })
    void refusesWhatIsNotPlain(String text) {
        assertThatThrownBy(() -> CssFunction.parse(text)).isInstanceOf(TextFormatException.class);
    }

    @Test
    void namesThePieceThatCannotBeRead() {
        assertThatThrownBy(() -> CssFunction.parse("rgb(1 calc(2) 3)"))
                .hasMessage("cannot read \"calc(2) 3\" in \"rgb(1 calc(2) 3)\"");
        assertThatThrownBy(() -> CssFunction.parse("rgb(1,,3)")).hasMessage("a value is missing in \"rgb(1,,3)\"");
        assertThatThrownBy(() -> CssFunction.parse("f(1e999)"))
                .hasMessage("the number \"1e999\" in \"f(1e999)\" is too large");
    }

    @Test
    void comparesWordsInLettersOfAnySize() throws TextFormatException {
        CssValue word = CssFunction.parse("f(NONE)").groups().get(0).get(0);

        assertThat(word.isWord("none")).isTrue();
        assertThat(word.isWord("some")).isFalse();
        assertThat(word.quoted()).isEqualTo("\"NONE\"");
        assertThat(new CssValue(CssValue.Kind.NUMBER, 0, "", "none").isWord("none"))
                .isFalse();
    }

    /** The Kelvin sign and the dotted capital I have ASCII letters as their small letters in Unicode, not in CSS. */
    @Test
    void onlyAsciiLettersHaveSmallLetters() {
        assertThat(AsciiCase.lower("RED-Az[`{")).isEqualTo("red-az[`{");
        assertThat(AsciiCase.lower("\u212a\u0130\u00c4")).isEqualTo("\u212a\u0130\u00c4");
    }
}
