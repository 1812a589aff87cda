package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine.TypeConversionException;

class TypedNumberTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "7, 7", "-3, -3", "007, 7", "2147483647, 2147483647"})
    void readsWholeNumbers(String text, int value) {
        assertThat(TypedNumber.whole(text)).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "12.25, 12.25", "-0.5, -0.5", ".5, 0.5"})
    void readsDecimals(String text, double value) {
        assertThat(TypedNumber.decimal(text)).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x|'x' is not a whole number",
                "''|'' is not a whole number",
                "2.5|'2.5' is not a whole number",
                "+3|'+3' is not a whole number",
                "٣|'٣' is not a whole number",
                "2147483648|'2147483648' is too large"
            })
    void refusesOtherWholeNumbers(String text, String message) {
        assertThatThrownBy(() -> TypedNumber.whole(text))
                .isInstanceOf(TypeConversionException.class)
                .hasMessage(message);
    }

    /** Java would take some of them: NaN, 1d and 0x1p3 (java.lang.Double.valueOf). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "abc|'abc' is not a number, such as 0.5 or 20",
                "NaN|'NaN' is not a number, such as 0.5 or 20",
                "1d|'1d' is not a number, such as 0.5 or 20",
                "0x1p3|'0x1p3' is not a number, such as 0.5 or 20",
                "5.|'5.' is not a number, such as 0.5 or 20",
                "1,5|'1,5' is not a number; the decimal sign is a dot: 1.5"
            })
    void refusesOtherDecimals(String text, String message) {
        assertThatThrownBy(() -> TypedNumber.decimal(text))
                .isInstanceOf(TypeConversionException.class)
                .hasMessage(message);
    }
}
