package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgLengthTest {
    /** CSS Values and Units Level 3, section 5.2: 1in = 2.54cm = 96px = 72pt = 6pc, 1Q = 1/40 cm. */
    @ParameterizedTest
    @CsvSource({
        "1in, 25.4",
        "2.54cm, 25.4",
        "25.4mm, 25.4",
        "96px, 25.4",
        "96, 25.4",
        "72pt, 25.4",
        "6pc, 25.4",
        "40q, 10",
        "40Q, 10",
        "1IN, 25.4",
        "1e1mm, 10",
        "-.5mm, -0.5",
        "+3.mm, 3",
        "' 12mm ', 12"
    })
    void knowsTheUnitsOfPaper(String text, double millimetres) throws TextFormatException {
        assertThat(SvgLength.millimetres(text)).isCloseTo(millimetres, within(1e-9));
        assertThat(SvgLength.userUnits(text)).isCloseTo(millimetres / 25.4 * 96, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mm",
                "12 mm",
                "12em",
                "50%",
                "1,5mm",
                "1e999",
                "--1",
                "0x10",
                "NaN",
                "Infinity",
                "1e",
                "..5",
                "12mmm"
            })
    void refusesOthers(String text) {
        assertThatThrownBy(() -> SvgLength.millimetres(text))
                .isInstanceOf(TextFormatException.class)
                .hasMessageContaining("is no length");
    }

    /** A number of a hundred thousand digits is read or refused at once, and not tried in every way. */
    @Test
    void standsLongNumbers() {
        String digits = "1".repeat(100_000);
        assertThatThrownBy(() -> SvgLength.millimetres(digits + "!")).isInstanceOf(TextFormatException.class);
        assertThatThrownBy(() -> SvgLength.millimetres(digits)).isInstanceOf(TextFormatException.class);
    }

    /** SVG 1.1, section 8.3.9: the blanks between numbers may be left out where the next can only begin a new one. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 2 3        | [1.0, 2.0, 3.0]
            1,2, 3       | [1.0, 2.0, 3.0]
            1-2-3        | [1.0, -2.0, -3.0]
            .5.5.5       | [0.5, 0.5, 0.5]
            1.5.5        | [1.5, 0.5]
            1e2-3e-1     | [100.0, -0.3]
            ' \t 7 '     | [7.0]
            ''           | []
            """)
    void scansNumbers(String text, String numbers) throws TextFormatException {
        assertThat(new SvgScan(text).rest()).hasToString(numbers);
    }

    @ParameterizedTest
    @CsvSource({
        "'1,,2', a number is needed after the comma at \",2\"",
        "'1 x', a number is needed at \"x\"",
        "',1', a number is needed",
        "'1e999', a number is too large"
    })
    void saysWhereANumberIsNeeded(String text, String hint) {
        assertThatThrownBy(() -> new SvgScan(text).rest())
                .isInstanceOfSatisfying(
                        TextFormatException.class,
                        fault -> assertThat(fault.hint()).startsWith(hint));
    }

    /** The flags of an arc need nothing behind them: 11 are two of them. */
    @Test
    void scansFlags() throws TextFormatException {
        SvgScan scan = new SvgScan("10 1,5");
        assertThat(scan.flag()).isTrue();
        assertThat(scan.flag()).isFalse();
        assertThat(scan.flag()).isTrue();
        assertThatThrownBy(scan::flag).isInstanceOf(TextFormatException.class);
        assertThat(scan.number()).isEqualTo(5);
        assertThat(scan.isAtEnd()).isTrue();
        assertThatThrownBy(scan::flag).isInstanceOf(TextFormatException.class);
    }

    /** What is quoted of an attribute without end is its beginning. */
    @Test
    void quotesALittleOfALongText() {
        assertThatThrownBy(() -> new SvgScan("1 ".repeat(5000) + "x").rest())
                .isInstanceOfSatisfying(TextFormatException.class, fault -> {
                    assertThat(fault.getMessage()).hasSizeLessThan(80).contains("...");
                    assertThat(fault.hint()).isEqualTo("a number is needed at \"x\"");
                });
    }
}
