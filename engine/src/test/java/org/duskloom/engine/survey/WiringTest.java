package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The orders are written out by hand: at each pixel, the pixel that is described where it hangs. */
class WiringTest {
    private static String order(Wiring wiring, int pixels) {
        return String.join(
                " ",
                IntStream.range(0, pixels)
                        .mapToObj(pixel -> String.valueOf(wiring.describedPixel(pixel)))
                        .toList());
    }

    @Test
    void asDescribedIsEveryPixelItself() {
        assertThat(order(Wiring.AS_DESCRIBED, 4)).isEqualTo("0 1 2 3");
    }

    @ParameterizedTest
    @CsvSource({
        "FROM_OTHER_END,      0, 5, 4, true,  4 3 2 1 0",
        "OTHER_WAY,           0, 5, 0, true,  0 4 3 2 1",
        "OTHER_START,         0, 5, 2, false, 2 3 4 0 1",
        "OTHER_WAY_AND_START, 0, 5, 2, true,  2 1 0 4 3"
    })
    void runsRoundAllPixels(WiringKind kind, int first, int count, int start, boolean backwards, String order) {
        assertThat(order(new Wiring(kind, first, count, start, backwards), 5)).isEqualTo(order);
    }

    @ParameterizedTest
    @CsvSource({
        "STRETCH_OTHER_START, 2, 3, 1, false, 0 1 3 4 2 5 6",
        "STRETCH_OTHER_WAY,   2, 3, 0, true,  0 1 2 4 3 5 6",
        "STRETCH_OTHER_WAY,   2, 3, 2, true,  0 1 4 3 2 5 6",
        "STRETCH_OTHER_START, 4, 3, 2, false, 0 1 2 3 6 4 5"
    })
    void leavesPixelsOutsideOfAStretchAlone(
            WiringKind kind, int first, int count, int start, boolean backwards, String order) {
        assertThat(order(new Wiring(kind, first, count, start, backwards), 7)).isEqualTo(order);
    }

    /** However it is wired, at every place hangs one pixel. */
    @Test
    void isAPermutation() {
        for (int count = 1; count <= 6; count++) {
            for (int start = 0; start < count; start++) {
                for (boolean backwards : new boolean[] {false, true}) {
                    Wiring wiring = new Wiring(WiringKind.STRETCH_OTHER_START, 3, count, start, backwards);
                    assertThat(IntStream.range(0, 10)
                                    .map(wiring::describedPixel)
                                    .sorted())
                            .as("%s", wiring)
                            .containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8, 9);
                }
            }
        }
    }

    /** Who wires the wrong way round twice has it as described: orders that run backwards are their own inverse. */
    @Test
    void backwardsTwiceIsAsDescribed() {
        for (int start = 0; start < 6; start++) {
            Wiring wiring = new Wiring(WiringKind.OTHER_WAY_AND_START, 0, 6, start, true);
            for (int pixel = 0; pixel < 6; pixel++) {
                assertThat(wiring.describedPixel(wiring.describedPixel(pixel))).isEqualTo(pixel);
            }
        }
    }
}
