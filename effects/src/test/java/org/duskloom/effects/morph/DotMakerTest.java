package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.PaletteTrack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DotMakerTest {
    private static final double[][] PLACES = Canvases.scattered(60);
    private static final Canvas CANVAS = Canvases.of(PLACES);
    private static final int[] ALL = IntStream.range(0, 60).toArray();

    private static DotMaker maker(String... colors) {
        PaletteTrack palette = PaletteTrack.constant(Look.evenly(ColorMix.LINEAR, colors));
        return new DotMaker(CANVAS, palette, palette);
    }

    /** How many dots stand at each of some pixels. */
    private static int[] used(Spots spots, int[] part, int count) {
        return Arrays.stream(part)
                .map(pixel -> (int) IntStream.range(0, count)
                        .filter(dot -> spots.x(dot) == PLACES[pixel][0] && spots.y(dot) == PLACES[pixel][1])
                        .count())
                .toArray();
    }

    /** As many dots as the larger part has pixels: each of these once, those of the smaller evenly. */
    @ParameterizedTest
    @CsvSource({"7, 7", "3, 20", "20, 3", "1, 59", "30, 30"})
    void useEveryPixelOfBothParts(int fromCount, int toCount) {
        int[] from = Arrays.copyOf(ALL, fromCount);
        int[] to = Arrays.copyOfRange(ALL, 60 - toCount, 60);
        Dots dots = maker("white").dots(ALL, from, to);
        int count = Math.max(fromCount, toCount);
        assertThat(dots.count()).isEqualTo(count);
        for (int used : used(dots.starts(), from, count)) {
            assertThat(used).isBetween(count / fromCount, (count + fromCount - 1) / fromCount);
        }
        for (int used : used(dots.ends(), to, count)) {
            assertThat(used).isBetween(count / toCount, (count + toCount - 1) / toCount);
        }
        assertThat(dots.grid().size()).isEqualTo(60);
    }

    /** One colour is one way for all; of two palettes every pair of places is another. */
    @Test
    void shareWaysOfTheSameColours() {
        int[] from = {0, 1, 2, 3, 4};
        int[] to = {10, 11, 12, 13, 14};
        DotMaker plain = maker("gold");
        assertThat(plain.dots(ALL, from, to).ways().numbers()).containsOnly(0);
        assertThat(plain.dots(ALL, to, from).ways().numbers()).containsOnly(0);
        assertThat(plain.ways().get().count()).isEqualTo(1);
        DotMaker rich = maker("red", "blue");
        assertThat(rich.dots(ALL, from, to).ways().numbers()).doesNotHaveDuplicates();
        assertThat(rich.ways().get().count()).isEqualTo(5);
    }

    /** A part's pixels are as far apart as the nearest that may be lit, of the part or not; alone, not at all. */
    @Test
    void takeTheSpacingOfAllThatMayBeLit() {
        Canvas row = Canvases.of(Canvases.row(5));
        PaletteTrack white = PaletteTrack.constant(Look.evenly(ColorMix.LINEAR, "white"));
        Dots along = new DotMaker(row, white, white).dots(new int[] {0, 1, 2, 4}, new int[] {0, 1}, new int[] {4});
        assertThat(along.startSpacing()).isEqualTo(0.5);
        assertThat(along.endSpacing()).isEqualTo(1);
        Dots alone = new DotMaker(row, white, white).dots(new int[] {3}, new int[] {3}, new int[] {3});
        assertThat(alone.startSpacing()).isEqualTo(alone.endSpacing()).isZero();
        assertThat(alone.meanLength()).isZero();
        assertThat(alone.greatestCoordinate()).isEqualTo(0.5);
    }

    /** From two pixels to one that is 3/2 and 1 away: 5/4 on the average; 1/2 and 1 apart, 3/4 half way. */
    @Test
    void knowHowFarTheyGoAndReach() {
        Canvas row = Canvases.of(Canvases.row(5));
        PaletteTrack white = PaletteTrack.constant(Look.evenly(ColorMix.LINEAR, "white"));
        Dots dots = new DotMaker(row, white, white).dots(new int[] {0, 1, 3}, new int[] {0, 1}, new int[] {3});
        assertThat(dots.meanLength()).isCloseTo(1.25, within(1e-12));
        assertThat(dots.startSpacing()).isEqualTo(0.5);
        assertThat(dots.endSpacing()).isEqualTo(1);
    }
}
