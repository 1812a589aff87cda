package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
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

    /** As a user reads it: the number behind the dots is left out, and lists with holes say how many they have. */
    @Test
    void saysWhichFramesTheyAre() {
        assertThat(FrameList.of(new FrameSpan(0, 60))).hasToString("frames 0..60");
        assertThat(FrameList.of(4, 5, 6)).hasToString("frames 4..7");
        assertThat(FrameList.of(4, 6)).hasToString("2 of the frames 4..7");
        assertThat(FrameList.of(9)).hasToString("frames 9..10");
        assertThat(FrameList.of()).hasToString("no frames");
        assertThat(FrameList.of(new FrameSpan(7, 7))).hasToString("no frames");
    }

    /** A list is a span exactly if every number from its first to its last is in it. */
    @Test
    void isASpanWhereNothingIsLeftOut() {
        Random random = new Random(47);
        for (int round = 0; round < 500; round++) {
            long[] frames = random.longs(1 + random.nextInt(5), 3, 11)
                    .sorted()
                    .distinct()
                    .toArray();
            FrameList list = FrameList.of(frames);
            boolean whole = LongStream.rangeClosed(frames[0], frames[frames.length - 1])
                    .allMatch(frame -> Arrays.binarySearch(frames, frame) >= 0);
            assertThat(list.isSpan()).as(list.toString()).isEqualTo(whole);
            assertThat(list.first()).isEqualTo(frames[0]);
            assertThat(list.last()).isEqualTo(frames[frames.length - 1]);
        }
        assertThat(FrameList.of().isSpan()).isTrue();
        assertThat(FrameList.of(new FrameSpan(7, 7)).isSpan()).isTrue();
        assertThat(FrameList.of(new FrameSpan(7, 7)).first()).isEqualTo(7);
    }
}
