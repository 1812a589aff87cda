package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.effects.assign.Points;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;

class LegStepsTest {
    private static final int LAST = LegSteps.COUNT - 1;

    /** A pair that comes within reach stands in the list of the first step in which it is; asked from there on. */
    @Test
    void askWhatComesWithinReachFromThenOn() {
        Dots dots = row(20, 0, 1, 9);
        LegSteps steps = steps(dots);
        int before = 0;
        for (int pixel = 0; pixel < 9; pixel++) {
            int list = steps.listOf(0, dots.grid().spots(), pixel);
            assertThat(list).isGreaterThanOrEqualTo(before);
            assertThat(steps.reach(list)).isGreaterThanOrEqualTo(pixel);
            assertThat(list == 0 || steps.reach(list - 1) < pixel).isTrue();
            before = list;
        }
        assertThat(before).isEqualTo(LAST);
        assertThat(steps.listOf(0, dots.grid().spots(), 10)).isEqualTo(-1);
        assertThat(steps.firstList(1)).isZero();
        assertThat(steps.endList(1)).isEqualTo(2);
    }

    /** A pair that leaves stands in the list of the last step in which it is within reach, and is asked up to it. */
    @Test
    void askWhatLeavesUpToThen() {
        Dots dots = row(20, 0, 9, 1);
        LegSteps steps = steps(dots);
        assertThat(steps.listOf(0, dots.grid().spots(), 1)).isEqualTo(LAST);
        assertThat(steps.listOf(0, dots.grid().spots(), 9)).isZero();
        for (int pixel = 2; pixel < 9; pixel++) {
            int list = steps.listOf(0, dots.grid().spots(), pixel);
            assertThat(steps.reach(list)).isGreaterThanOrEqualTo(pixel);
            assertThat(list == LAST || steps.reach(list + 1) < pixel).isTrue();
        }
        assertThat(steps.firstList(1)).isEqualTo(1);
        assertThat(steps.endList(1)).isEqualTo(LegSteps.COUNT);
    }

    /** Dots that go 12 pixels far meet those half way in the middle, however far the nearest end of the way is. */
    @Test
    void meetOnTheWayBetweenTheirEnds() {
        Dots dots = row(20, 12, 1, 1);
        LegSteps steps = steps(dots);
        assertThat(steps.listOf(0, dots.grid().spots(), 0)).isZero();
        assertThat(steps.listOf(0, dots.grid().spots(), 8)).isEqualTo((8 - 1) * LegSteps.COUNT / 12);
        assertThat(steps.listOf(0, dots.grid().spots(), 13)).isEqualTo(LAST);
        assertThat(steps.listOf(0, dots.grid().spots(), 14)).isEqualTo(-1);
    }

    /** The steps of a way that is one leg, of dots of size 1 that do not bulge. */
    static LegSteps steps(Dots dots) {
        DotSize size = DotSize.of(
                Settings.of(Map.of(DotSize.SIZE, NumberTrack.constant(1), DotSize.BULGE, NumberTrack.constant(1))));
        return new LegSteps(dots, size, 0, LegSteps.COUNT, 0, 1e-9);
    }

    /** Pixels in a row, one apart, and a dot at each that goes so far and comes to reach as far as the spacings. */
    static Dots row(int count, double way, double startSpacing, double endSpacing) {
        double[] x = IntStream.range(0, count).mapToDouble(i -> i).toArray();
        double[] to = IntStream.range(0, count).mapToDouble(i -> i + way).toArray();
        int[] all = IntStream.range(0, count).toArray();
        Points starts = new Points(x, new double[count], new double[count]);
        Points ends = new Points(to, new double[count], new double[count]);
        return new Dots(
                new PixelGrid(starts, all, 1, true),
                Spots.of(starts, all, true),
                Spots.of(ends, all, true),
                DotWays.of(all),
                startSpacing,
                endSpacing);
    }
}
