package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

class FrameRangeTest {
    @ParameterizedTest
    @CsvSource({"0..1, 0, 1", "960..1920, 960, 1920", "007..8, 7, 8", "0..9223372036854775807, 0, 9223372036854775807"})
    void isHalfOpen(String text, long first, long end) {
        assertThat(new FrameRange().convert(text)).isEqualTo(new FrameSpan(first, end));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "..",
                "5",
                "5-9",
                "5..",
                "..9",
                "-1..4",
                "1..2..3",
                "1.5..2",
                "a..b",
                "+1..2",
                "1 ..2",
                "٣..٤",
                "0..9223372036854775808"
            })
    void refusesAnythingElse(String text) {
        assertThatThrownBy(() -> new FrameRange().convert(text))
                .isInstanceOf(TypeConversionException.class)
                .hasMessage("'" + text + "' is not a range of frames; write A..B for the frames from A up to but not"
                        + " including B, such as 0..480");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5..5", "6..5", "0..0"})
    void refusesRangesWithoutFrames(String text) {
        assertThatThrownBy(() -> new FrameRange().convert(text))
                .isInstanceOf(TypeConversionException.class)
                .hasMessageStartingWith("'" + text + "' holds no frame; write A..B");
    }
}
