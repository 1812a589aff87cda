package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures in files: to a millionth, without an exponent, and never a zero that is below zero. */
class ReportNumbersTest {
    @ParameterizedTest
    @CsvSource({
        "0.3333333333, 0.333333",
        "0.6666666666, 0.666667",
        "2, 2",
        "-0.0000004, 0",
        "-0.25, -0.25",
        "0.0000012, 0.000001",
        "12345678.5, 12345678.5"
    })
    void areToAMillionth(double value, String text) {
        assertThat(ReportNumbers.text(value)).isEqualTo(text);
        assertThat(ReportNumbers.json(value).toString()).contains(text);
    }
}
