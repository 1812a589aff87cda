package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

/** {@code --shard I/N}. */
class ShardNumberTest {
    /** Every frame once, in order, and no shard longer than another by more than a frame. */
    @ParameterizedTest
    @CsvSource({"1, 1", "80, 3", "3840, 7", "3840, 3840", "11, 4", "68719476736, 1000000"})
    void shardsAreAPartition(long frames, int count) {
        long next = 0;
        for (int i = 1; i <= count; i++) {
            FrameSpan span = new ShardNumber(i, count).frames(frames);
            assertThat(span.firstFrame()).isEqualTo(next);
            assertThat(span.count()).isBetween(frames / count, frames / count + 1);
            next = span.endFrameExclusive();
        }
        assertThat(next).isEqualTo(frames);
    }

    @Test
    void isReadAsWritten() {
        assertThat(new ShardNumber.Converter().convert("2/16")).isEqualTo(new ShardNumber(2, 16));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "1", "0/2", "3/2", "1/0", "-1/2", "1/2/3", "a/b", "1 / 2", "1/1000001", "99999999999/3"})
    void otherTextsAreRefused(String text) {
        assertThatThrownBy(() -> new ShardNumber.Converter().convert(text))
                .isInstanceOf(TypeConversionException.class)
                .hasMessageContaining("write I/N");
    }
}
