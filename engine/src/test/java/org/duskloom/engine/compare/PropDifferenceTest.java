package org.duskloom.engine.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Random;
import org.duskloom.engine.compare.PropDifference.Largest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two pixels of the first rendering at bytes 3 to 8, of the second at 10 to 15. */
class PropDifferenceTest {
    private static final int FIRST = 3;
    private static final int SECOND = 10;

    private final PropDifference fence = new PropDifference("fence");

    /** @param differing by how much each of the six colours of the second is brighter than 100 */
    private void add(long frame, int... differing) {
        byte[] rgb = new byte[20];
        for (int i = 0; i < 6; i++) {
            rgb[FIRST + i] = 100;
            rgb[SECOND + i] = (byte) (100 + differing[i]);
        }
        fence.add(frame, rgb, FIRST, SECOND, 2);
    }

    @Test
    void nothingDiffersAtFirst() {
        assertThat(fence.name()).isEqualTo("fence");
        assertThat(fence.frames()).isZero();
        assertThat(fence.pixels()).isZero();
        assertThat(fence.largest().codes()).isZero();
    }

    /** The largest of its three colours is how much a pixel differs; darker counts as brighter does. */
    @Test
    void theLargestOfAllColoursIsKept() {
        add(7, 3, -9, 4, 0, 0, 0);
        assertThat(fence.largest()).isEqualTo(new Largest(9, 7, 1, 0x646464, 0x675B68));
        add(9, 0, 0, 0, 155, -100, 1);
        assertThat(fence.largest()).isEqualTo(new Largest(155, 9, 2, 0x646464, 0xFF0065));
        add(12, 155, 0, 0, 0, 0, 0);
        assertThat(fence.largest().frame()).as("the first of equals").isEqualTo(9);
        assertThat(fence.firstFrame()).isEqualTo(7);
        assertThat(fence.lastFrame()).isEqualTo(12);
        assertThat(fence.frames()).isEqualTo(3);
        assertThat(fence.pixels()).isEqualTo(2);
    }

    /** Numbers of frames may be larger than an int: a show has no last hour. */
    @Test
    void framesMayBeLate() {
        add(5_000_000_000L, 1, 0, 0, 0, 0, 0);
        assertThat(fence.firstFrame()).isEqualTo(5_000_000_000L);
        assertThat(fence.largest().frame()).isEqualTo(5_000_000_000L);
        assertThat(fence.pixels()).isEqualTo(1);
    }

    /** Against looking at every colour by itself. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void isWhatLookingAtEachColourSays(long seed) {
        Random random = new Random(seed);
        PropDifference pond = new PropDifference("pond");
        BitSet differing = new BitSet();
        int most = 0;
        for (int frame = 0; frame < 50; frame++) {
            byte[] rgb = new byte[90];
            random.nextBytes(rgb);
            for (int i = 0; i < 45; i++) {
                rgb[45 + i] = random.nextInt(30) > 0 ? rgb[i] : rgb[45 + i];
                int codes = Math.abs(Byte.toUnsignedInt(rgb[i]) - Byte.toUnsignedInt(rgb[45 + i]));
                differing.set(i / 3, differing.get(i / 3) || codes > 0);
                most = Math.max(most, codes);
            }
            pond.add(frame, rgb, 0, 45, 15);
        }
        assertThat(pond.pixels()).isEqualTo(differing.cardinality());
        assertThat(pond.largest().codes()).isEqualTo(most);
    }
}
