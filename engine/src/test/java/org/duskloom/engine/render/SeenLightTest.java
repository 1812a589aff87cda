package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;

/** A cue on 3,000 pixels for two seconds, and another over all but the first 1,000 of them for the second one. */
class SeenLightTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\n"
            + IntStream.range(0, 3000)
                    .mapToObj(i -> (i < 1000 ? "a," : "b,") + (i < 1000 ? i + 1 : i - 999) + "," + i + ",0\n")
                    .collect(Collectors.joining()));

    private static final Plan PLAN = TestShow.of(MAP, """
                    "layers": [
                      {"cues": [{"on": "*", "effect": "light", "for": "2s"}]},
                      {"cues": [{"at": "1s", "on": "b", "effect": "light", "for": "1s"}]}]
                    """).plan();

    private static final BitSet ALL = pixels(IntStream.range(0, 3000).toArray());

    /** A frame in which both are seen. */
    private static final long SECOND = PLAN.layers().get(1).cues().get(0).firstFrame() + 3;

    private static BitSet pixels(int... pixels) {
        BitSet set = new BitSet();
        Arrays.stream(pixels).forEach(set::set);
        return set;
    }

    private static long seen(SeenLight light, int layer, long frame) {
        return light.of(PLAN.layers().get(layer).cues().get(0), frame);
    }

    /** Where the other one covers it, without it nothing would change: two thirds of its light are not seen. */
    @Test
    void whatIsCoveredDoesNotCount() {
        SeenLight light = new SeenLight(PLAN, ALL);
        long whole = seen(light, 0, 3);
        assertThat(whole).isPositive();
        assertThat(3 * seen(light, 0, SECOND)).isEqualTo(whole);
        assertThat(seen(light, 1, SECOND)).isZero();
        assertThat(seen(light, 1, 3)).isZero();
        assertThat(seen(light, 0, 3)).isEqualTo(whole);
    }

    /** On the first 1,001 pixels all but one is the same in both seconds. */
    @Test
    void onlyPixelsThatAreLookedAtCount() {
        SeenLight light = new SeenLight(PLAN, pixels(IntStream.range(0, 1001).toArray()));
        long whole = seen(light, 0, 3);
        assertThat(whole).isEqualTo(3L * 1001 * 255);
        assertThat(1001 * seen(light, 0, SECOND)).isEqualTo(1000 * whole);
        assertThat(seen(new SeenLight(PLAN, pixels(1000, 2999)), 0, SECOND)).isZero();
    }

    /** A frame of a cue is about 9,000 pixels painted, so thousands of them are more than may be looked at. */
    @Test
    void looksNoLongerThanIsBearable() {
        SeenLight light = new SeenLight(PLAN, ALL);
        int looks = 0;
        while (looks < 5000 && seen(light, 0, 3) > 0) {
            looks++;
        }
        assertThat(looks).isBetween(100, 1000);
        assertThat(seen(light, 0, 3)).isNegative();
        assertThat(seen(light, 1, SECOND)).isZero();
        assertThat(seen(light, 0, 3)).isPositive();
    }
}
