package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineBlocksTest {
    /** Segments of 1, 2, 4 and 8 ohms, blocks that begin with pixels 0 and 2; loads of 1, 10, 100, 1000, 10,000 A. */
    @Test
    void sumsAddedUpByHand() {
        LineBlocks blocks = new LineBlocks(new double[] {1, 2, 4, 8}, new int[] {2});
        assertThat(blocks.count()).isEqualTo(2);
        assertThat(blocks.take(new double[] {1, 10, 100, 1000, 10_000})).isEqualTo(11_111);
        assertThat(blocks.amps(0)).isEqualTo(11);
        assertThat(blocks.amps(1)).isEqualTo(11_100);
        assertThat(blocks.ampsBefore(1)).isEqualTo(11);
        assertThat(blocks.ampsBefore(2)).isEqualTo(11_111);
        assertThat(blocks.ohmsBefore(1)).isEqualTo(3);
        assertThat(blocks.ohmsBefore(2)).isEqualTo(15);
        assertThat(blocks.ohms(1)).isEqualTo(12);
        assertThat(blocks.ohmsWithin(3)).isEqualTo(4);
        assertThat(blocks.momentBefore(1)).as("1 * 1 + 2 * 11").isEqualTo(23);
        assertThat(blocks.momentBefore(2)).as("23 + 4 * 111 + 8 * 1111").isEqualTo(9355);
        assertThat(blocks.segmentOhms(4)).as("behind the last").isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 20, 21, 22, 42, 43, 500})
    void blocksAreNeverTooLongAndFollowEachOther(int pixels) {
        LineBlocks blocks = new LineBlocks(new double[pixels - 1], new int[0]);
        assertThat(blocks.pixelCount()).isEqualTo(pixels);
        assertThat(blocks.count()).isEqualTo((pixels + LineBlocks.MOST - 1) / LineBlocks.MOST);
        for (int block = 0; block < blocks.count(); block++) {
            assertThat(blocks.first(block)).isEqualTo(block * LineBlocks.MOST);
            assertThat(blocks.end(block)).isEqualTo(Math.min(pixels, (block + 1) * LineBlocks.MOST));
        }
        assertThat(blocks.first(blocks.count())).isEqualTo(pixels - 1);
    }

    @Test
    void feedsBeginBlocks() {
        LineBlocks blocks = new LineBlocks(new double[49], new int[] {0, 7, 7, 30, 49});
        assertThat(IntStream.range(0, blocks.count()).map(blocks::first)).containsExactly(0, 7, 28, 30, 49);
        assertThat(blocks.startingWith(30)).isEqualTo(3);
        assertThat(blocks.startingWith(31)).isNegative();
        assertThat(blocks.of(29)).isEqualTo(2);
        assertThat(blocks.of(30)).isEqualTo(3);
        assertThat(blocks.of(49)).isEqualTo(4);
    }

    /** Any line, any feeds: the same as sums from pixel to pixel along the whole of it. */
    @Test
    void agreesWithSumsAlongTheLine() {
        SplittableRandom random = new SplittableRandom(21);
        for (int round = 0; round < 200; round++) {
            int pixels = 1 + random.nextInt(120);
            double[] ohms = random.doubles(pixels - 1, 0, 0.1).toArray();
            double[] amps = random.doubles(pixels, 0, 0.06).toArray();
            int[] starts = random.ints(random.nextInt(6), 0, pixels).sorted().toArray();
            LineBlocks blocks = new LineBlocks(ohms, starts);
            double all = blocks.take(amps);
            for (int start : starts) {
                assertThat(blocks.first(blocks.startingWith(start))).isEqualTo(start);
            }
            double flowing = 0;
            double moment = 0;
            double way = 0;
            for (int pixel = 0; pixel < pixels; pixel++) {
                int block = blocks.of(pixel);
                assertThat(pixel).isBetween(blocks.first(block), blocks.end(block) - 1);
                assertThat(blocks.ohmsBefore(block) + blocks.ohmsWithin(pixel)).isCloseTo(way, within(1e-12));
                if (blocks.startingWith(pixel) >= 0) {
                    assertThat(blocks.ampsBefore(block)).isCloseTo(flowing, within(1e-12));
                    assertThat(blocks.momentBefore(block)).isCloseTo(moment, within(1e-12));
                }
                flowing += amps[pixel];
                moment += blocks.segmentOhms(pixel) * flowing;
                way += blocks.segmentOhms(pixel);
            }
            assertThat(all).isCloseTo(flowing, within(1e-12));
            assertThat(blocks.momentBefore(blocks.count())).isCloseTo(moment, within(1e-12));
        }
    }

    /** Numbers of the frame before leave no trace. */
    @Test
    void takesOneFrameAfterTheOther() {
        LineBlocks blocks = new LineBlocks(new double[] {1, 1}, new int[] {1});
        blocks.take(new double[] {5, 5, 5});
        assertThat(blocks.take(new double[3])).isZero();
        assertThat(blocks.momentBefore(2)).isZero();
        assertThat(blocks.drawn(1)).isZero();
    }
}
