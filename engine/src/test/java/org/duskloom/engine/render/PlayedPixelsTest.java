package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;

class PlayedPixelsTest {
    /** Two bows of 3,000 pixels: the second begins in one tile and ends in another. */
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\n"
            + IntStream.range(0, 6000)
                    .mapToObj(i -> (i < 3000 ? "a," : "b,") + (i % 3000 + 1) + "," + i + ",0\n")
                    .collect(Collectors.joining()));

    private final PlayedPixels pixels = new PlayedPixels();

    private static List<LayeredCue> plays(String on, String... more) {
        Plan plan = TestShow.of(
                        MAP,
                        "\"layers\": [{\"cues\": [" + cue(on)
                                + List.of(more).stream()
                                        .map(each -> ", " + cue(each))
                                        .collect(Collectors.joining())
                                + "]}]")
                .plan();
        return plan.layers().get(0).cues().stream()
                .map(cue -> new LayeredCue(plan, 0, cue))
                .toList();
    }

    private static String cue(String on) {
        return "{\"on\": \"" + on + "\", \"effect\": \"light\", \"for\": \"1s\"}";
    }

    private static BitSet range(int from, int to) {
        BitSet range = new BitSet();
        range.set(from, to);
        return range;
    }

    @Test
    void areThoseOfTheCue() {
        assertThat(pixels.of(plays("b"))).isEqualTo(range(3000, 6000));
        assertThat(pixels.of(plays("a"))).isEqualTo(range(0, 3000));
    }

    @Test
    void areThoseOfAllItsPlays() {
        assertThat(pixels.of(plays("b", "a"))).isEqualTo(range(0, 6000));
    }

    @Test
    void areSharedByCuesOnTheSame() {
        List<LayeredCue> plays = plays("b", "b", "a");
        BitSet first = pixels.of(plays.subList(0, 1));

        assertThat(pixels.of(plays.subList(1, 2))).isSameAs(first);
        assertThat(pixels.of(plays.subList(2, 3))).isNotSameAs(first);
    }
}
