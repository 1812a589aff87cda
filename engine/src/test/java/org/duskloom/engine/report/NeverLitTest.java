package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.meter.light.PropUse;
import org.junit.jupiter.api.Test;

/** Which pixels stay dark, as a gardener counts them: from 1, and whole parts by their names. */
class NeverLitTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            daisy,1,0,0,eye
            daisy,2,1,0,petals/1
            daisy,3,2,0,petals/1
            daisy,4,3,0,petals/2
            daisy,5,4,0,petals/2
            fence,1,0,9,
            fence,2,1,9,
            fence,3,2,9,
            fence,4,3,9,
            pond,1,0,5,
            """);

    @Test
    void namesPartsAndRanges() {
        assertThat(told(new int[] {0, 1, 2, 4}, new int[] {0, 2, 3}, new int[0]))
                .containsExactly(
                        new NeverLit("daisy", 4, "part eye, part petals/1, 1 pixel (5)"),
                        new NeverLit("fence", 3, "3 pixels (1, 3-4)"));
    }

    @Test
    void namesAPropThatIsDarkAltogether() {
        assertThat(told(new int[0], new int[0], new int[] {0})).containsExactly(new NeverLit("pond", 1, "all of it"));
    }

    private static List<NeverLit> told(int[] daisy, int[] fence, int[] pond) {
        return NeverLit.of(MAP, List.of(use("daisy", 5, daisy), use("fence", 4, fence), use("pond", 1, pond)));
    }

    private static PropUse use(String prop, int pixels, int[] neverLit) {
        return new PropUse(prop, pixels, 0, 0.5, neverLit, new float[1]);
    }
}
