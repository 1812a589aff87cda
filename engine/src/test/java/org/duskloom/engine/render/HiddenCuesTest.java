package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;

class HiddenCuesTest {
    /** Two bows of 3,000 pixels: the second begins in one tile and ends in another. */
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\n"
            + IntStream.range(0, 6000)
                    .mapToObj(i -> (i < 3000 ? "a," : "b,") + (i % 3000 + 1) + "," + i + ",0\n")
                    .collect(Collectors.joining()));

    private static final long ENOUGH = Long.MAX_VALUE / 4;

    private static Plan plan(String... on) {
        return TestShow.of(
                        MAP,
                        List.of(on).stream()
                                .map(name -> "{\"on\": \"" + name + "\", \"effect\": \"light\", \"for\": \"1s\"}")
                                .collect(Collectors.joining(", ", "\"layers\": [{\"cues\": [", "]}]")))
                .plan();
    }

    private static boolean isSeen(HiddenCues hidden, Plan plan, int number) {
        return hidden.isSeen(plan.layers().get(0).cues().get(number), 3);
    }

    /** In turns, as the codes of one must not serve another. */
    @Test
    void looksWhereTheCueIsAndNowhereElse() {
        Plan plan = plan("b", "a", "b");
        HiddenCues hidden = new HiddenCues(plan, ENOUGH);
        for (int round = 0; round < 2; round++) {
            assertThat(isSeen(hidden, plan, 0)).isFalse();
            assertThat(isSeen(hidden, plan, 1)).isTrue();
            // The first one is of the same colour: without the last all looks as it did.
            assertThat(isSeen(hidden, plan, 2)).isFalse();
        }
        assertThat(hidden.coveredBy(new LayeredCue(plan, 0, cue(plan, 0)), 3)).contains(cue(plan, 2));
    }

    @Test
    void takesForSeenWhatItMayNotLookAt() {
        Plan plan = plan("b", "b");
        HiddenCues hidden = new HiddenCues(plan, 0);
        assertThat(isSeen(hidden, plan, 0)).isTrue();
        assertThat(hidden.coveredBy(new LayeredCue(plan, 0, cue(plan, 0)), 3)).isEmpty();
    }

    /** The first of ten cues has half of all and a tenth of the other half, and all ten have all of it. */
    @Test
    void keepsWorkForLaterCues() {
        Plan plan = plan("b", "b");
        long all = 10_000_000;
        HiddenCues hidden = new HiddenCues(plan, all);
        hidden.turnTo(0, 10);
        int first = looksUntilExhausted(hidden, plan);
        hidden.turnTo(1, 10);
        int second = looksUntilExhausted(hidden, plan);
        hidden.turnTo(9, 10);
        int others = looksUntilExhausted(hidden, plan);
        assertThat(second).isPositive();
        assertThat((double) first / second).isBetween(9.0, 13.0);
        assertThat((double) others / second).isBetween(7.0, 9.0);
    }

    private static int looksUntilExhausted(HiddenCues hidden, Plan plan) {
        int looks = 0;
        while (!isSeen(hidden, plan, 0)) {
            looks++;
        }
        return looks;
    }

    /** A frame with and without a cue that lies on a tile and a half costs these pixels, and no others. */
    @Test
    void countsWhatIsPainted() {
        Plan plan = plan("a", "b");
        FramePainter painter = new FramePainter(plan);
        byte[] rgb = new byte[3 * 6000];
        painter.render(3, rgb, 0);
        long whole = painter.work();
        assertThat(whole).isBetween(12_000L, 12_600L);
        painter.askFor(CueExtent.of(cue(plan, 0), 6000));
        painter.render(3, rgb, 0);
        assertThat(painter.work() - whole).isBetween(3000L + 3000, 3000L + 3400);
    }

    private static PlannedCue cue(Plan plan, int number) {
        return plan.layers().get(0).cues().get(number);
    }
}
