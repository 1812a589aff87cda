package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers in attributes: the grammar of W3C SVG 1.1 (Second Edition), sections 8.3.9 and 9.7.1. */
class SvgScanTest {
    private static List<Double> rest(String text) throws TextFormatException {
        return new SvgScan(text).rest();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "7; [7.0]",
                "'  7  '; [7.0]",
                "-.5; [-0.5]",
                "+.5; [0.5]",
                "5.; [5.0]",
                "1 2; [1.0, 2.0]",
                "1,2; [1.0, 2.0]",
                "1 , 2; [1.0, 2.0]",
                "1-2+3; [1.0, -2.0, 3.0]",
                "0.6.5; [0.6, 0.5]",
                "1e2e-1; ",
                "1e2-1e-1; [100.0, -0.1]",
                "1E+2; [100.0]",
                "007; [7.0]"
            })
    void readsTheLongestNumberAtATime(String text, String expected) throws TextFormatException {
        if (expected == null) {
            assertThatThrownBy(() -> rest(text)).isInstanceOf(TextFormatException.class);
        } else {
            assertThat(rest(text)).hasToString(expected);
        }
    }

    /** The four blanks of the grammar, and the form feed that SVG 2 added; no other sign of Unicode is one. */
    @Test
    void onlyPlainBlanksPartNumbers() throws TextFormatException {
        assertThat(rest("\t1\r\n2\f3 4")).containsExactly(1.0, 2.0, 3.0, 4.0);
        for (String other : List.of("\u00a0", "\u2003", "\u000b", "\u3000", "\ufeff")) {
            assertThatThrownBy(() -> rest("1" + other + "2")).isInstanceOf(TextFormatException.class);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ",1",
                "1,",
                "1 , ",
                "1,2,L",
                "1,,2",
                "1 , , 2",
                ".",
                "-",
                "+-1",
                "--1",
                "e5",
                "1e",
                "1 x",
                "0x10",
                "NaN",
                "Infinity",
                "1d"
            })
    void whatIsNoNumberIsRefused(String text) {
        assertThatThrownBy(() -> rest(text)).isInstanceOf(TextFormatException.class);
    }

    /** A comma stands between two numbers (9.7.1 and 8.3.9, from memory), so a list that ends in one lacks a number. */
    @Test
    void aCommaAtTheEndIsToldOf() {
        for (String end : List.of(",", " , ")) {
            assertThatThrownBy(() -> rest("1,2 3,4" + end))
                    .isInstanceOfSatisfying(
                            TextFormatException.class,
                            fault -> assertThat(fault.hint())
                                    .isEqualTo("a number is needed after the comma at its end"));
        }
        assertThatThrownBy(() -> new SvgScan("1,L2").number())
                .isInstanceOfSatisfying(
                        TextFormatException.class,
                        fault -> assertThat(fault.hint()).isEqualTo("a number is needed after the comma at \"L2\""));
    }

    /** Digits of other scripts are digits to Java, not to the grammar. */
    @ParameterizedTest
    @ValueSource(strings = {"\u0663", "\uff11", "1\u0661"})
    void digitsOfOtherScriptsAreRefused(String text) {
        assertThatThrownBy(() -> rest(text)).isInstanceOf(TextFormatException.class);
    }

    /** IEEE 754 binary64 ends below 1.8e308; what is too small to hold is zero, which is near enough. */
    @Test
    void numbersThatNoDoubleHolds() throws TextFormatException {
        assertThat(rest("1.7e308 1e-999")).containsExactly(1.7e308, 0.0);
        for (String text : List.of("1e309", "-1e309", "1e99999999999", "9".repeat(400))) {
            assertThatThrownBy(() -> rest(text))
                    .isInstanceOfSatisfying(
                            TextFormatException.class,
                            fault -> assertThat(fault.hint()).startsWith("a number is too large"));
        }
    }

    /** What Java writes of a double is a number of the grammar, however closely it stands to the next. */
    @ParameterizedTest
    @ValueSource(strings = {" ", ",", "\n", " , ", ""})
    void writtenNumbersComeBack(String between) throws TextFormatException {
        Random random = new Random(11);
        List<Double> numbers = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 500; i++) {
            double number = random.nextGaussian() * StrictMath.pow(10, random.nextInt(40) - 20);
            numbers.add(number);
            String sign = between.isEmpty() && number >= 0 ? "+" : "";
            text.append(i == 0 ? "" : between).append(sign).append(number);
        }
        assertThat(rest(text.toString())).isEqualTo(numbers);
    }

    /** A flag is one digit (8.3.9), so that 01 are two of them, and 016 two flags and a six. */
    @Test
    void flagsAreSingleDigits() throws TextFormatException {
        SvgScan scan = new SvgScan("016");
        assertThat(scan.flag()).isFalse();
        assertThat(scan.flag()).isTrue();
        assertThat(scan.number()).isEqualTo(6);
        assertThat(scan.isAtEnd()).isTrue();
        assertThatThrownBy(scan::flag).isInstanceOf(TextFormatException.class);
        assertThatThrownBy(() -> new SvgScan("2").flag()).isInstanceOf(TextFormatException.class);
        assertThatThrownBy(() -> new SvgScan("-1").flag()).isInstanceOf(TextFormatException.class);
    }

    @Test
    void lettersAreTakenOneByOne() throws TextFormatException {
        SvgScan scan = new SvgScan(" M z\n5 ");
        assertThat(scan.isAtNumber()).isFalse();
        assertThat(scan.next()).isEqualTo('M');
        assertThat(scan.take()).isEqualTo('M');
        assertThat(scan.take()).isEqualTo('z');
        assertThat(scan.isAtNumber()).isTrue();
        assertThat(scan.number()).isEqualTo(5);
        assertThat(scan.isAtEnd()).isTrue();
    }

    /** A fault shows the beginning of a long text, and where in it the reading ended. */
    @Test
    void faultsShowWhereReadingEnded() {
        assertThatThrownBy(() -> rest("1 2 x3"))
                .hasMessageContaining("\"1 2 x3\"")
                .isInstanceOfSatisfying(
                        TextFormatException.class,
                        fault -> assertThat(fault.hint()).isEqualTo("a number is needed at \"x3\""));
        assertThatThrownBy(() -> rest("1 ".repeat(5000) + "?"))
                .isInstanceOfSatisfying(TextFormatException.class, fault -> {
                    assertThat(fault.getMessage()).hasSizeLessThan(80).contains("...");
                    assertThat(fault.hint()).endsWith("at \"?\"");
                });
    }
}
