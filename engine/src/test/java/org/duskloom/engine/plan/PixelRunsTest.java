package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PixelRunsTest {
    private static final int TILE = Patch.CAPACITY;

    @Test
    void cutsRunsAtGapsAndAtTiles() {
        int[] stagePixels = IntStream.concat(
                        IntStream.of(1, 2, 3, 7),
                        IntStream.concat(IntStream.range(TILE - 2, TILE + 3), IntStream.of(3 * TILE)))
                .toArray();
        PixelRuns runs = new PixelRuns(stagePixels, 3 * TILE + 1);
        assertThat(runs(runs, 0)).containsExactly("0@1+3", "3@7+1", "4@%d+2".formatted(TILE - 2));
        assertThat(runs(runs, 1)).containsExactly("6@0+3");
        assertThat(runs(runs, 2)).isEmpty();
        assertThat(runs(runs, 3)).containsExactly("9@0+1");
    }

    @Test
    void countsTiles() {
        assertThat(PixelRuns.tileCount(1)).isEqualTo(1);
        assertThat(PixelRuns.tileCount(TILE)).isEqualTo(1);
        assertThat(PixelRuns.tileCount(TILE + 1)).isEqualTo(2);
    }

    /** Whatever the pixels, the runs of all tiles together are the pixels again. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void coversEveryPixelOnce(long seed) {
        Random random = new Random(seed);
        int stage = 1 + random.nextInt(4 * TILE);
        double density = random.nextDouble();
        int[] stagePixels = IntStream.range(0, stage)
                .filter(pixel -> random.nextDouble() < density)
                .toArray();
        PixelRuns runs = new PixelRuns(stagePixels, stage);
        List<Integer> covered = new ArrayList<>();
        for (int tile = 0; tile < PixelRuns.tileCount(stage); tile++) {
            for (int run = runs.firstRun(tile); run < runs.endRun(tile); run++) {
                assertThat(runs.canvasPixel(run)).isEqualTo(covered.size());
                assertThat(runs.cell(run) + runs.length(run)).isLessThanOrEqualTo(TILE);
                for (int i = 0; i < runs.length(run); i++) {
                    covered.add(tile * TILE + runs.cell(run) + i);
                }
            }
        }
        assertThat(covered.stream().mapToInt(Integer::intValue).toArray()).isEqualTo(stagePixels);
    }

    /** Of all pixels of a stage those that the runs were made of; in the third tile there are none. */
    @Test
    void knowsWhichPixelsItHas() {
        int[] stagePixels = {0, 1, 5, TILE - 1, TILE, TILE + 7, 3 * TILE};
        int stage = 3 * TILE + 9;
        PixelRuns runs = new PixelRuns(stagePixels, stage);
        assertThat(IntStream.range(0, stage)
                        .filter(pixel -> runs.hasOneOf(set(pixel)))
                        .toArray())
                .isEqualTo(stagePixels);
        assertThat(runs.hasOneOf(set(3, TILE + 7))).isTrue();
        assertThat(runs.hasOneOf(set(2, 4, TILE + 1, stage))).isFalse();
        assertThat(runs.pixelCount()).isEqualTo(7);
        PixelRuns none = new PixelRuns(new int[0], stage);
        assertThat(none.hasOneOf(set(stagePixels))).isFalse();
        assertThat(none.pixelCount()).isZero();
    }

    private static BitSet set(int... pixels) {
        BitSet set = new BitSet();
        IntStream.of(pixels).forEach(set::set);
        return set;
    }

    private static List<String> runs(PixelRuns runs, int tile) {
        return IntStream.range(runs.firstRun(tile), runs.endRun(tile))
                .mapToObj(run -> runs.canvasPixel(run) + "@" + runs.cell(run) + "+" + runs.length(run))
                .toList();
    }
}
