package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** W3C CSS Color Module Level 4. */
final class CssColorTest {
    @ParameterizedTest
    @CsvSource({
        // Web platform tests, css-color, color-computed-hex-color.
        "#369, '51,102,153', 1",
        "#FFCc99, '255,204,153', 1",
        "#ffff, '255,255,255', 1",
        // The module's "hex notation".
        "#0f08, '0,255,0', 0.53333333",
        "#00ff0080, '0,255,0', 0.50196078",
        "#ABCDEF, '171,205,239', 1",
        "#1b2a6b, '27,42,107', 1"
    })
    void readsHexDigits(String text, String codes, float alpha) throws TextFormatException {
        assertColor(text, codes, alpha);
    }

    @ParameterizedTest
    @CsvSource({
        "red, '255,0,0'",
        "RebeccaPurple, '102,51,153'",
        "LIGHTGOLDENRODYELLOW, '250,250,210'",
        "' tomato ', '255,99,71'",
        "grey, '128,128,128'"
    })
    void readsNames(String text, String codes) throws TextFormatException {
        assertColor(text, codes, 1);
    }

    @Test
    void transparentIsNothing() throws TextFormatException {
        assertThat(CssColor.parse("Transparent")).isEqualTo(LinearColor.TRANSPARENT);
    }

    /** The grammar of the module's "RGB functions"; 50 % is 127.5, which is a little more than code 127. */
    @ParameterizedTest
    @CsvSource({
        "'rgb(255, 158, 94)', '255,158,94', 1",
        "'rgb(255,158,94,0.5)', '255,158,94', 0.5",
        "'rgba(100%, 50%, 0%, 25%)', '255,128,0', 0.25",
        "'rgba(255 158 94)', '255,158,94', 1",
        "'rgb(255 158 94 / 50%)', '255,158,94', 0.5",
        "'RGB( 255  158\t94/.5 )', '255,158,94', 0.5",
        "'rgb(100% 158 94)', '255,158,94', 1",
        "'rgb(300 -20 1e3)', '255,0,255', 1",
        "'rgb(127.5 0.4 254.5)', '128,0,255', 1",
        "'rgb(none 128 none / none)', '0,128,0', 0",
        "'rgb(1 2 3 / 7)', '1,2,3', 1",
        "'rgb(1 2 3 / -7)', '1,2,3', 0"
    })
    void readsRgb(String text, String codes, float alpha) throws TextFormatException {
        assertColor(text, codes, alpha);
    }

    /** Web platform tests, css-color, color-computed-hsl; the last five rows are the module's grammar of angles. */
    @ParameterizedTest
    @CsvSource({
        "'hsl(120 30% 50%)', '89,166,89'",
        "'hsl(60 100% 37.5%)', '191,191,0'",
        "'hsl(780 100% 37.5%)', '191,191,0'",
        "'hsl(-300 100% 37.5%)', '191,191,0'",
        "'hsl(300 50% 50%)', '191,64,191'",
        "'hsl(0 12.5% 12.5%)', '36,28,28'",
        "'hsl(0 25% 62.5%)', '183,135,135'",
        "'hsl(0 0% 50%)', '128,128,128'",
        "'hsl(30 100% 100%)', '255,255,255'",
        "'hsla(120deg, 30%, 50%, 1)', '89,166,89'",
        "'hsl(0.333333333333turn 30 50)', '89,166,89'",
        "'hsl(133.333333333grad 30% 50% / 1)', '89,166,89'",
        "'hsl(2.0943951024rad 30% 50%)', '89,166,89'",
        "'hsl(none 0% 50%)', '128,128,128'"
    })
    void readsHsl(String text, String codes) throws TextFormatException {
        assertColor(text, codes, 1);
    }

    /** color.js tests of hwb, as shares: 0.6 0.2 0.2; 0.625 0.95 0.3; a third each; times 255. */
    @ParameterizedTest
    @CsvSource({
        "hwb(0 20% 40%), '153,51,51'",
        // 76.5: the float nearest to its light lies a little below.
        "hwb(90 30% 5%), '159,242,76'",
        "hwb(0 40% 80%), '85,85,85'",
        "hwb(0deg 20 40 / 100%), '153,51,51'"
    })
    void readsHwb(String text, String codes) throws TextFormatException {
        assertColor(text, codes, 1);
    }

    /** The colours of {@link OkLabTest}, whose numbers the color.js tests list too. */
    @ParameterizedTest
    @CsvSource({
        "oklab(0.627955364 0.224863068 0.125846277), '255,0,0'",
        "oklab(45.2013718% -0.032456975 -0.311528166), '0,0,255'",
        "oklab(0.792688436 14.15280025% 40.34613%), '255,165,0'",
        "oklch(0.866439618 0.29482722 142.49535), '0,255,0'",
        "oklch(0.440271796 0.160296 303.37299deg / 1), '102,51,153'",
        "oklch(44.0271796% 40.074% 303.37299), '102,51,153'",
        "oklch(1 0 none), '255,255,255'",
        "oklch(0.599870806 -0.2 10), '128,128,128'",
        "oklab(7 0 0), '255,255,255'",
        "oklab(-1 0 0), '0,0,0'"
    })
    void readsOklabAndOklch(String text, String codes) throws TextFormatException {
        assertColor(text, codes, 1);
    }

    /**
     * Nothing is rounded to codes before it is mixed: hsl(0 0% 50%) is the encoded value 0.5, of which IEC 61966-2-1
     * makes the linear light ((0.5 + 0.055) / 1.055)^2.4 = 0.2140411; code 128, to which it is rounded in the end, is
     * 0.2158605.
     */
    @ParameterizedTest
    @CsvSource({"hsl(0 0% 50%)", "rgb(50% 50% 50%)", "rgb(127.5 127.5 127.5)", "hwb(0 50% 50%)"})
    void keepsThePrecisionOfCodes(String text) throws TextFormatException {
        assertThat(CssColor.parse(text).red()).isCloseTo(0.2140411f, within(1e-7f));
    }

    /** oklab() is not rounded to codes: two lightnesses between two codes stay apart. */
    @Test
    void keepsThePrecisionOfOklab() throws TextFormatException {
        LinearColor a = CssColor.parse("oklab(0.5 0 0)");
        LinearColor b = CssColor.parse("oklab(0.5001 0 0)");

        assertThat(Codes.of(a)).isEqualTo(Codes.of(b)).isEqualTo("99,99,99");
        assertThat(b.red()).isGreaterThan(a.red());
        assertThat(a.red()).isEqualTo(0.125f, within(1e-6f));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tomatoe|is not a colour|did you mean \"tomato\"?",
                "Grene|is not a colour|did you mean \"green\"?",
                "transparant|is not a colour|did you mean \"transparent\"?",
                "currentColor|is not a colour|there is no current colour here",
                "1b2a6b|is not a colour|hex digits follow a #: \"#1b2a6b\"",
                "FFF|is not a colour|hex digits follow a #: \"#fff\"",
                "nightfall sky|is not a colour|write a CSS colour name, #rgb",
                "#12345|has 5 hex digits|write #rgb",
                "#|has 0 hex digits|write #rgb",
                "#ff|has 2 hex digits|write #rgb",
                "#1234567|has 7 hex digits|write #rgb",
                "#123456789|has 9 hex digits|write #rgb",
                "#ggg|something other than hex digits|0 to 9",
                "# fff|something other than hex digits|0 to 9",
                "lab(50 0 0)|is not a colour that can be used here|allowed: hsl, hsla, hwb",
                "hsb(50 0 0)|is not a colour that can be used here|did you mean \"hsl\"?",
                "rgb(1 2)|does not have 3 values|write it like rgb(",
                "rgb(1 2 3 4)|does not have 3 values|write it like rgb(",
                "rgb(1 2 3 /)|does not have 3 values|write it like rgb(",
                "rgb(1 / 2 3 4)|does not have 3 values|write it like rgb(",
                "rgb(/ / /)|does not have 3 values|write it like rgb(",
                "rgb(1, 2)|has 2 values instead of 3 or 4|write it like rgb(",
                "rgb(1, 2, 3, 4, 5)|has 5 values instead of 3 or 4|write it like rgb(",
                "rgb(1, 2, 3 / 4)|mixes commas with spaces or a slash|write it like rgb(",
                "rgb(1 2, 3)|has 2 values instead|write it like rgb(",
                "rgb(1, 2%, 3)|mixes numbers and percentages|write it like rgb(",
                "rgb(1, none, 3)|has the word \"none\"|write it like rgb(",
                "rgb(a b c)|has the word \"a\"|write it like rgb(",
                "rgb(1deg 2 3)|has the unit \"deg\"|write it like rgb(",
                "hsl(120, 30, 50)|needs percentages between its commas|write it like hsl(",
                "hsl(50% 30% 50%)|has a percentage for its hue|write it like hsl(",
                "hsl(120px 30% 50%)|has the unknown unit \"px\"|write it like hsl(",
                "hwb(90, 30%, 5%)|has commas, which this function does not take|write it like hwb(",
                "oklab(0.5, 0, 0)|has commas, which this function does not take|write it like oklab(",
                "oklch(0.5 0.1 40%)|has a percentage for its hue|write it like oklch(",
                "oklch(0.5 0.1 40 / 1deg)|has the unit \"deg\"|write it like oklch("
            })
    void refusalsTeach(String text, String message, String hint) {
        TextFormatException refusal = refusal(text);

        assertThat(refusal).hasMessageContaining("\"" + text + "\"").hasMessageContaining(message);
        assertThat(refusal.hint()).contains(hint);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "\u0000",
                "#\u0000\u0000\u0000",
                "#٣٣٣",
                "#ＦＦＦ",
                "blac\u212a",
                "whıte",
                "PİNK",
                "rgb",
                "rgb(",
                "rgb)",
                "rgb()",
                "rgb(1,2,3",
                "rgb 1,2,3)",
                "rgb(1,,3)",
                "rgb(1 2 3))",
                "rgb((1 2 3)",
                "rgb(calc(1) 2 3)",
                "rgb(var(--a) 2 3)",
                "rgb(NaN 0 0)",
                "rgb(1e999 0 0)",
                "rgb(1,2,3);",
                "red;",
                "red blue",
                "\"red\"",
                "url(x)",
                "hsl(1e999 0% 0%)",
                "constructor",
                "\ud83c\udf39",
                "\ud800"
            })
    void hostileTextsAreRefused(String text) {
        TextFormatException refusal = refusal(text);

        assertThat(refusal).isNotNull();
        assertThat(refusal.getMessage()).doesNotContain("\u0000").hasSizeLessThan(250);
    }

    @Test
    void endlessTextsAreRefusedAtOnce() {
        assertThat(refusal("#" + "f".repeat(1_000_000))).message().hasSizeLessThan(150);
        assertThat(refusal("red".repeat(1_000_000))).message().hasSizeLessThan(150);
        assertThat(refusal("rgb(" + "1 ".repeat(1_000_000) + ")")).hasMessageContaining("is too long");
        assertThat(refusal("rgb(" + "(".repeat(1900) + ")")).message().hasSizeLessThan(250);
    }

    @Test
    void largeNumbersAreClipped() throws TextFormatException {
        assertColor("rgb(1e300 -1e300 0)", "255,0,0", 1);
        assertThat(CssColor.parse("oklab(0.5 1e300 -1e300)")).isNotNull();
        assertThat(CssColor.parse("oklch(0.5 1e300 1e300)")).isNotNull();
        assertThat(CssColor.parse("hsl(1e300 100% 50%)")).isNotNull();
    }

    private static void assertColor(String text, String codes, float alpha) throws TextFormatException {
        LinearColor color = CssColor.parse(text);

        assertThat(Codes.of(color)).isEqualTo(codes);
        assertThat(color.alpha()).isEqualTo(alpha, within(1e-7f));
    }

    private static TextFormatException refusal(String text) {
        return catchThrowableOfType(TextFormatException.class, () -> CssColor.parse(text));
    }
}
