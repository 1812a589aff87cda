package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A figure and its unit are kept on one line by a space that does not break (SI Brochure 9, 5.4.3, has a space
 * there).
 */
class FiguresTest {
    @Test
    void haveTheirUnit() {
        assertThat(Figures.amps(0.126)).isEqualTo("0.13\u00a0A");
        assertThat(Figures.volts(11.995)).isEqualTo("12.00\u00a0V");
        assertThat(Figures.wattHours(3)).isEqualTo("3.00\u00a0Wh");
        assertThat(Figures.time(12.5)).isEqualTo("12.5\u00a0s");
    }

    /** A line that cannot carry its pixels has voltages below 0 in the model, which no pixel has. */
    @Test
    void voltsBelowNothingAreNone() {
        assertThat(Figures.volts(-0.01)).isEqualTo("none");
        assertThat(Figures.volts(0)).isEqualTo("0.00\u00a0V");
    }

    /** Small shares are told more closely, so that little does not read as nothing. */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "1e-9, under 0.1",
        "0.00049, under 0.1",
        "0.0005, 0.1",
        "0.004, 0.4",
        "0.0999, 10.0",
        "0.1, 10",
        "0.335, 34",
        "1, 100"
    })
    void shares(double share, String percent) {
        assertThat(Figures.percent(share)).isEqualTo(percent + "\u00a0%");
    }

    /** 44.0995 frames a second are not 44.1. */
    @ParameterizedTest
    @CsvSource({"44.0995, 44.0", "39.99, 39.9", "40, 40.0"})
    void ratesAreRoundedDown(double rate, String told) {
        assertThat(Figures.rate(rate)).isEqualTo(told);
    }
}
