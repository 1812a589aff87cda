package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;

class CueExtentTest {
    private static final int TILE = Patch.CAPACITY;

    /** One ends ten pixels behind the first tile, the next ten later, and the last with the third tile. */
    private static final int[] ENDS = {TILE + 10, TILE + 20, 3 * TILE};

    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\n"
            + IntStream.range(0, ENDS[2])
                    .mapToObj(i -> (i < ENDS[0]
                                    ? "a," + (i + 1)
                                    : i < ENDS[1] ? "b," + (i + 1 - ENDS[0]) : "c," + (i + 1 - ENDS[1]))
                            + "," + i + ",0\n")
                    .collect(Collectors.joining()));

    private static PlannedCue cue(String on) {
        Plan plan = TestShow.of(
                        MAP,
                        "\"layers\": [{\"cues\": [{\"on\": [" + on
                                + "], \"spread\": \"each\", \"effect\": \"light\"}]}]")
                .plan();
        return plan.layers().get(0).cues().get(0);
    }

    private static CueExtent extent(String on) {
        return CueExtent.of(cue(on), ENDS[2]);
    }

    @Test
    void goesFromTheFirstToTheLastPixelInEachTile() {
        CueExtent extent = extent("\"a\", \"b\"");
        assertThat(extent.tileCount()).isEqualTo(3);
        assertThat(extent.firstPixel(0)).isZero();
        assertThat(extent.endPixel(0)).isEqualTo(TILE);
        assertThat(extent.firstPixel(1)).isEqualTo(TILE);
        assertThat(extent.endPixel(1)).isEqualTo(TILE + 20);
        assertThat(extent.isIn(1)).isTrue();
        assertThat(extent.isIn(2)).isFalse();
        assertThat(extent.endPixel(2)).isLessThanOrEqualTo(extent.firstPixel(2));
    }

    @Test
    void meetsWhatLiesAboutItInTheSameTile() {
        assertThat(extent("\"b\"").meets(cue("\"a\"").canvas(0).runs())).isFalse();
        assertThat(extent("\"b\"").meets(cue("\"b\"").canvas(0).runs())).isTrue();
        assertThat(extent("\"b\"").meets(cue("\"c\"").canvas(0).runs())).isFalse();
        // It lies between the two, where nothing of them is: it is looked at all the same.
        assertThat(extent("\"a\", \"c\"").meets(cue("\"b\"").canvas(0).runs(), 1))
                .isTrue();
        assertThat(extent("\"a\", \"c\"").meets(cue("\"b\"").canvas(0).runs(), 0))
                .isFalse();
    }
}
