package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TablePlacesTest {
    private static final LinearColor RED_GLASS = new LinearColor(1, 0.5f, 0.25f, 0.5f);

    /**
     * A straight line over an interval h of x² is off by h²/4 in its middle: 1/(4n²) of n intervals, which is within
     * 5e-5 from n = 71 on, so with 128 of the powers of two. A straight line needs none; a jump never comes near.
     */
    @ParameterizedTest
    @CsvSource({"64, 16384, 128", "8, 16384, 128", "8, 32, 32", "128, 256, 128", "256, 512, 256"})
    void takesAsManyIntervalsAsItNeeds(int fewest, int most, int intervals) {
        assertThat(TablePlaces.intervals(x -> green(x * x), fewest, most)).isEqualTo(intervals);
        assertThat(TablePlaces.intervals(TablePlacesTest::green, fewest, most)).isEqualTo(fewest);
        assertThat(TablePlaces.intervals(x -> green(x < 0.3 ? 0 : 1), fewest, most))
                .isEqualTo(most);
    }

    /** Alpha 1/2: half of the light of each channel. */
    @Test
    void isPremultiplied() {
        assertThat(TablePlaces.table(x -> RED_GLASS, 1))
                .containsExactly(0.5f, 0.25f, 0.125f, 0.5f, 0.5f, 0.25f, 0.125f, 0.5f);
    }

    @Test
    void hasAnEntryAtEachEndOfAnInterval() {
        float[] table = TablePlaces.table(TablePlacesTest::green, 4);
        assertThat(table).hasSize(5 * TablePlaces.CHANNELS);
        for (int entry = 0; entry <= 4; entry++) {
            assertThat(table[entry * TablePlaces.CHANNELS + 1]).isEqualTo(entry / 4f);
        }
    }

    /**
     * Two tables that meet at 1/4: green 0, 1, 0 in the first, whose two intervals are 1/8 long; 1/2 to 0 in the
     * second; the place 1 has a table of its own, 1.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "0.0625, 0.5",
        "0.125, 1",
        "0.1875, 0.5",
        "0.24999999, 0",
        "0.25, 0.5",
        "0.625, 0.25",
        "0.99999994, 0",
        "1, 1"
    })
    void goesStraightBetweenEntries(float place, float green) {
        float[] tables = greens(0, 1, 0, 0.5f, 0, 1, 1);
        assertThat(looked(twoPieces(), tables, place)).isCloseTo(green, within(1e-6f));
    }

    /**
     * Three thousand hard edges, more than there are cells to find them by: a third into it each step shows its own
     * colour.
     */
    @Test
    void findsManyPieces() {
        int count = 3000;
        List<LinearColor> colors =
                IntStream.range(0, count).mapToObj(i -> green(i / 4096.0)).toList();
        Palette palette = Palette.evenly(colors, new PaletteStyle(ColorMix.LINEAR, true, false));
        Ramp ramp = new TableRamp(PalettePiece.of(palette));
        float[] places = new float[count];
        for (int i = 0; i < count; i++) {
            places[i] = (float) ((i + 1 / 3.0) / count);
        }
        float[] green = new float[count];
        ramp.fill(places, 0, count, new float[count], green, new float[count], new float[count]);
        for (int i = 0; i < count; i++) {
            assertThat(green[i]).isCloseTo(i / 4096f, within(1e-6f));
        }
    }

    @Test
    void isOpaqueOnlyIfAllStopsAre() {
        assertThat(TableRamp.isOpaque(Look.evenly(ColorMix.OKLCH, "red", "blue")))
                .isTrue();
        assertThat(TableRamp.isOpaque(Look.evenly(ColorMix.OKLCH, "red", "#0000fffe")))
                .isFalse();
    }

    private static List<PalettePiece> twoPieces() {
        Palette palette =
                Palette.of(List.of(new PaletteStop(0, green(0)), new PaletteStop(0.25, green(1))), PaletteStyle.SMOOTH);
        return PalettePiece.of(palette);
    }

    private static float looked(List<PalettePiece> pieces, float[] tables, float place) {
        int[] intervals = {2, 1, 1};
        float[] green = new float[1];
        new TablePlaces(pieces, intervals)
                .fill(tables, false, new float[] {place}, 0, 1, new float[1], green, new float[1], new float[1]);
        return green[0];
    }

    private static float[] greens(float... greens) {
        float[] table = new float[greens.length * TablePlaces.CHANNELS];
        for (int i = 0; i < greens.length; i++) {
            table[i * TablePlaces.CHANNELS + 1] = greens[i];
        }
        return table;
    }

    private static LinearColor green(double light) {
        return new LinearColor(0, (float) light, 0, 1);
    }
}
