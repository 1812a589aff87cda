package org.duskloom.effects.shower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;

class LanesTest {
    private static Lanes lanes(Canvas canvas, double count, double width, double soft) {
        Map<Setting<?>, Object> given = Map.of(
                Shower.LANES, NumberTrack.constant(count),
                Shower.WIDTH, NumberTrack.constant(width),
                Shower.SOFT, NumberTrack.constant(soft));
        return Lanes.of(canvas, Settings.of(given));
    }

    /**
     * Nine pixels in a row, three lanes with their middles at the shares 0, 1/2 and 1: share · 2 + 1/2 = 0.5, 0.75, 1,
     * ... 2.5, so the pixels lie in the lanes 0 0 1 1 1 1 2 2 2.
     */
    @Test
    void hasTheOutermostMiddlesOnTheOutermostPixels() {
        Lanes lanes = lanes(Canvases.of(Canvases.row(9)), 3, 1, 0);
        int[] laneOf = new int[9];
        for (int i = 0; i < 9; i++) {
            laneOf[i] = lanes.numberOf(lanes.sectionOf()[i] / Lanes.SECTIONS);
        }
        assertThat(lanes.count()).isEqualTo(3);
        assertThat(laneOf).containsExactly(0, 0, 1, 1, 1, 1, 2, 2, 2);
        assertThat(lanes.sides()).containsOnly(1);
    }

    /**
     * The same pixels lie 0, 1/4, 1/2, 1/4, 0, 1/4, 1/2, 1/4, 0 lanes from their middles: half the lane reaches to 1/4.
     */
    @Test
    void lightsTheMiddleOfALane() {
        assertThat(lanes(Canvases.of(Canvases.row(9)), 3, 0.5, 0).sides()).containsExactly(1, 1, 0, 1, 1, 1, 0, 1, 1);
        assertThat(lanes(Canvases.of(Canvases.row(9)), 3, 0, 0).sides()).containsOnly(0);
    }

    /** Width 1, edges of half of it: at a distance of 1/4, half way to the edge, smoothstep(1/2) = 1/2. */
    @Test
    void softensTheSides() {
        float[] sides = lanes(Canvases.of(Canvases.row(9)), 3, 1, 0.5).sides();
        assertThat(sides[0]).isEqualTo(1);
        assertThat(sides[1]).isCloseTo(0.5f, within(1e-5f));
        assertThat(sides[2]).isCloseTo(0, within(1e-5f));
    }

    /** Pixels one above the other lie in the middle of one lane. */
    @Test
    void hasOneLaneWhereThereIsNoWidth() {
        Lanes lanes = lanes(Canvases.of(Canvases.moved(Canvases.row(9), 0, 0, 1, 0)), 5, 0.1, 0);
        assertThat(lanes.count()).isEqualTo(1);
        assertThat(lanes.sides()).containsOnly(1);
        assertThat(lanes.along())
                .containsExactly(new float[] {1, 0.875f, 0.75f, 0.625f, 0.5f, 0.375f, 0.25f, 0.125f, 0}, within(1e-6f));
    }

    /** Each member has lanes of its own over its own width, and only those with pixels count: 3 and 2 of 3. */
    @Test
    void cutsEachMemberByItself() {
        Canvas two = new Canvases()
                .member("wide", Canvases.row(9))
                .member("pair", new double[] {5, 0}, new double[] {5.1, 0})
                .build();
        Lanes lanes = lanes(two, 3, 1, 0);
        assertThat(lanes.count()).isEqualTo(5);
        assertThat(lanes.memberOf(3)).isEqualTo(1);
        assertThat(lanes.memberOf(4)).isEqualTo(1);
        assertThat(lanes.numberOf(3)).isZero();
        assertThat(lanes.numberOf(4)).isEqualTo(2);
        assertThat(lanes.mostLanes()).isGreaterThanOrEqualTo(5);
    }

    /** Down a column of 33, sixteen sections: pixel i lies 1 - i/32 along, so in section 15 - i/2, the last in 15. */
    @Test
    void cutsALaneIntoSections() {
        Lanes lanes = lanes(Canvases.of(Canvases.moved(Canvases.row(33), 0, 0, 1, 0)), 1, 1, 0);
        assertThat(lanes.sectionOf()[0]).isEqualTo(15);
        for (int i = 1; i < 33; i++) {
            assertThat(lanes.sectionOf()[i]).as("pixel %s", i).isEqualTo(16 - (i + 1) / 2);
        }
    }
}
