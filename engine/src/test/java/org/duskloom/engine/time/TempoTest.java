package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class TempoTest {
    /**
     * A beat lasts 60 / beats per minute seconds; in Standard MIDI Files 1.0 (from memory) 6e7 / that in microseconds.
     */
    @ParameterizedTest
    @CsvSource({
        "120, 1, 2",
        "128, 15, 32",
        "140, 3, 7",
        "174, 10, 29",
        "127.5, 8, 17",
        "' 90 ', 2, 3",
        "1, 60, 1",
        "1000, 3, 50",
        "99.999999, 60000000, 99999999"
    })
    void beatIsExact(String beatsPerMinute, long numerator, long denominator) throws TextFormatException {
        assertThat(Tempo.parse(beatsPerMinute).beat()).isEqualTo(new ExactTime(numerator, denominator));
    }

    @ParameterizedTest
    @CsvSource({"120, 500000", "128, 468750"})
    void microsecondsOfABeat(String beatsPerMinute, long microseconds) throws TextFormatException {
        assertThat(Tempo.parse(beatsPerMinute).beat().times(1_000_000)).isEqualTo(ExactTime.ofSeconds(microseconds));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "0",
                "0.5",
                "-120",
                "+120",
                "1000.1",
                "1e2",
                "128bpm",
                "12,5",
                ".5",
                "5.",
                "NaN",
                "Infinity",
                "120.1234567",
                "99999999999",
                "١٢٠",
                "120\n120"
            })
    void refusesEverythingElse(String text) {
        assertThatThrownBy(() -> Tempo.parse(text))
                .isInstanceOf(TextFormatException.class)
                .hasMessageContaining("is not a tempo in beats per minute");
    }

    @Test
    void beatLastsSomeTime() {
        assertThatThrownBy(() -> new Tempo(ExactTime.ZERO)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Tempo(ExactTime.ofSeconds(-1))).isInstanceOf(IllegalArgumentException.class);
    }
}
