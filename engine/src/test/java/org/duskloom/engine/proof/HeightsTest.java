package org.duskloom.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;

/** A bar that goes up as seen from the front: y is up, whatever the wiring. */
class HeightsTest {
    private static final int DIM_AMBER = 0x3F2800;
    private static final int DIM_BLUE = 0x040830;

    private static int[] painted(Heights heights, int pixels, double share) {
        byte[] rgb = new byte[3 * pixels];
        heights.paint(share, new ProofLight(rgb, 0, rgb.length));
        int[] colors = new int[pixels];
        for (int i = 0; i < pixels; i++) {
            colors[i] = (rgb[3 * i] & 0xFF) << 16 | (rgb[3 * i + 1] & 0xFF) << 8 | rgb[3 * i + 2] & 0xFF;
        }
        return colors;
    }

    /** Of 200 in height the bar takes 6 in a hundred, 12, to both sides: at the middle 88 to 112. */
    @Test
    void theBarHasAHeight() {
        PixelMap map = Maps.map("prop,pixel,x,y\npole,1,0,200\npole,2,0,113\npole,3,0,111\npole,4,0,89\npole,5,0,87\n"
                + "pole,6,0,0\n");

        assertThat(painted(Heights.ofStage(map), 6, 0.5))
                .containsExactly(DIM_AMBER, DIM_AMBER, ProofLight.WHITE, ProofLight.WHITE, DIM_BLUE, DIM_BLUE);
    }

    /** A level row has no height: it is met when the bar is half way, not never and not always. */
    @Test
    void whatHasNoHeightIsInTheMiddle() {
        PixelMap map = Maps.map("prop,pixel,x,y\nrow,1,0,7\nrow,2,5,7\n");
        Heights heights = Heights.ofStage(map);

        assertThat(painted(heights, 2, 0)).containsOnly(DIM_AMBER);
        assertThat(painted(heights, 2, 0.5)).containsOnly(ProofLight.WHITE);
        assertThat(painted(heights, 2, 1)).containsOnly(DIM_BLUE);
    }

    /** On the stage the low prop is all below the high one; by itself each goes from its own lowest pixel up. */
    @Test
    void eachPropHasItsOwnLowestAndHighest() {
        PixelMap map = Maps.map("prop,pixel,x,y\nlow,1,0,0\nlow,2,0,10\nhigh,1,0,90\nhigh,2,0,100\n");

        assertThat(painted(Heights.ofStage(map), 4, 0))
                .containsExactly(ProofLight.WHITE, DIM_AMBER, DIM_AMBER, DIM_AMBER);
        assertThat(painted(Heights.ofEachPropItself(map), 4, 0))
                .containsExactly(ProofLight.WHITE, DIM_AMBER, ProofLight.WHITE, DIM_AMBER);
    }
}
