package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.BitSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pixels in words: numbered from 0 inside, from 1 for people. */
class PixelSetsTest {
    /** Pixel 0 is the eye, 1 and 2 are petal 1, 3 and 4 petal 2, 5 hangs on no part. */
    private static final Prop DAISY = Maps.map("""
            prop,pixel,x,y,part
            daisy,1,0,0,eye
            daisy,2,1,0,petals/1
            daisy,3,2,0,petals/1
            daisy,4,3,0,petals/2
            daisy,5,4,0,petals/2
            daisy,6,5,0,
            """).props().get(0);

    private static BitSet set(String pixels) {
        BitSet set = new BitSet();
        if (!pixels.isEmpty()) {
            Arrays.stream(pixels.split(" ")).mapToInt(Integer::parseInt).forEach(set::set);
        }
        return set;
    }

    @ParameterizedTest
    @CsvSource({
        "'', ''",
        "0, 1",
        "0 1, 1-2",
        "0 3 4, '1, 4-5'",
        "63 64 65, 64-66",
        "0 2 4, '1, 3, 5'",
        "0 2 4 6, '1, 3, 5, ...'",
        "0 2 4 5 6 7, '1, 3, 5-8'"
    })
    void rangesAreCountedFromOne(String pixels, String ranges) {
        assertThat(PixelSets.ranges(set(pixels), 3)).isEqualTo(ranges);
    }

    /**
     * The outermost part that is there as a whole stands for those in it; what is left are the pixels of no such part.
     */
    @ParameterizedTest
    @CsvSource({
        "0 1 2 3 4 5, 'eye, petals', 5",
        "1 2 3, petals/1, 3",
        "1 3, '', 1 3",
        "0 3 4, 'eye, petals/2', ''",
        "5, '', 5"
    })
    void partsStandForTheirPixels(String pixels, String parts, String left) {
        BitSet set = set(pixels);

        assertThat(String.join(", ", PixelSets.takeParts(DAISY, set))).isEqualTo(parts);
        assertThat(set).isEqualTo(set(left));
    }

    /** Parts may share pixels: both are dark as a whole, and a part without a pixel of its own left adds nothing. */
    @Test
    void partsThatShareAPixelAreBothTold() {
        Prop arch = Maps.map("""
                prop,pixel,x,y,part
                arch,1,0,0,left
                arch,2,1,0,left;right
                arch,3,2,0,right
                """).props().get(0);
        BitSet all = set("0 1 2");

        assertThat(PixelSets.takeParts(arch, all)).containsExactly("left", "right");
        assertThat(all.isEmpty()).isTrue();
    }
}
