package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A poor hash would make the search for props in the same space slow, and share slots that are far apart. */
class CellHashTest {
    private static final int SLOTS = 1 << 16;

    /**
     * Balls thrown into bins at random: n of them fill m·(1 - e^(-n/m)) of m bins (common handbook result; W. Feller,
     * An Introduction to Probability Theory, volume 1, on occupancy, from memory). Cells as displays have them: a flat
     * sheet, a row, a block, and each of them wide apart.
     */
    @ParameterizedTest
    @CsvSource({
        "256, 256, 1, 1",
        "65536, 1, 1, 1",
        "1, 65536, 1, 1",
        "1, 1, 65536, 1",
        "1, 256, 256, 1",
        "32, 32, 32, 1",
        "32, 32, 32, 8",
        "256, 256, 1, 1024",
        "256, 1, 256, 65536"
    })
    void spreadsCellsNoWorseThanBallsThrownAtRandom(int width, int height, int depth, long apart) {
        BitSet slots = new BitSet(SLOTS);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                for (int z = 0; z < depth; z++) {
                    long fromX = x - width / 2;
                    slots.set(CellHash.of(fromX * apart, (y - height / 2) * apart, z * apart) & SLOTS - 1);
                }
            }
        }
        double share = (double) width * height * depth / SLOTS;
        double expected = SLOTS * (1 - StrictMath.exp(-share));
        assertThat(slots.cardinality()).isGreaterThan((int) (expected * 0.98));
    }

    /** One bit of a coordinate turned turns half of the bits that come out, whichever it is; common practice. */
    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 123_456_789, -987_654_321_000L})
    void everyBitOfACoordinateCounts(long from) {
        int turned = 0;
        for (int bit = 0; bit < 40; bit++) {
            long other = from ^ 1L << bit;
            int same = CellHash.of(from, from, from);
            int x = Integer.bitCount(same ^ CellHash.of(other, from, from));
            int y = Integer.bitCount(same ^ CellHash.of(from, other, from));
            int z = Integer.bitCount(same ^ CellHash.of(from, from, other));
            assertThat(Math.min(x, Math.min(y, z))).isPositive();
            turned += x + y + z;
        }
        assertThat(turned / 120.0).isCloseTo(16, within(2.0));
    }

    /** The three coordinates are told apart: no cell is mistaken for the one with two of them exchanged. */
    @Test
    void theOrderOfCoordinatesCounts() {
        for (long i = 1; i < 200; i++) {
            int cell = CellHash.of(i, -i, 2 * i);
            assertThat(cell).isNotEqualTo(CellHash.of(-i, i, 2 * i));
            assertThat(cell).isNotEqualTo(CellHash.of(2 * i, -i, i));
            assertThat(cell).isNotEqualTo(CellHash.of(i, 2 * i, -i));
            assertThat(cell).isEqualTo(CellHash.of(i, -i, 2 * i));
        }
    }

    /** Cells so far apart that only the upper bits of a coordinate tell them from each other: balls thrown, again. */
    @ParameterizedTest
    @CsvSource({"0, 40", "1, 40", "2, 40", "0, 48", "1, 48", "2, 48", "2, 50"})
    void theUpperBitsOfACoordinateReachTheLowerBitsOfASlot(int axis, int shift) {
        int cells = 1 << 12;
        BitSet slots = new BitSet(SLOTS);
        for (long i = 0; i < cells; i++) {
            long far = i << shift;
            slots.set(CellHash.of(axis == 0 ? far : 0, axis == 1 ? far : 0, axis == 2 ? far : 0) & SLOTS - 1);
        }
        double expected = SLOTS * (1 - StrictMath.exp(-(double) cells / SLOTS));
        assertThat(slots.cardinality()).isGreaterThan((int) (expected * 0.95));
    }
}
