package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameListTest {
    @Test
    void listsASpan() {
        FrameList list = FrameList.of(new FrameSpan(5_000_000_000L, 5_000_000_003L));
        assertThat(list.count()).isEqualTo(3);
        assertThat(list.frame(0)).isEqualTo(5_000_000_000L);
        assertThat(list.frame(2)).isEqualTo(5_000_000_002L);
        assertThat(FrameList.of(new FrameSpan(7, 7)).count()).isZero();
    }

    @Test
    void listsSingleFramesAndKeepsThem() {
        long[] frames = {3, 8, 9};
        FrameList list = FrameList.of(frames);
        frames[1] = 99;
        assertThat(list.count()).isEqualTo(3);
        assertThat(list.frame(1)).isEqualTo(8);
        assertThat(FrameList.of().count()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"3, 3", "3, 2"})
    void refusesFramesThatDoNotRise(long first, long second) {
        assertThatThrownBy(() -> FrameList.of(first, second)).isInstanceOf(IllegalArgumentException.class);
    }
}
