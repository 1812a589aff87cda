package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class CubicChannelTest {
    /** A channel that reaches 0 or 1 is drawn 4e-6 beyond it. */
    private static final Offset<Float> BEYOND = within(5e-6f);

    private static final float[] WAYS = {0, 0.25f, 0.5f, 0.75f, 1};

    /** From 0 to 1 in a straight line: the ends are exact, what lies between is a little off. */
    @Test
    void isExactAtBothEnds() {
        float[] plane = drawn(new Cubic(0, 1, 0, 0));
        assertThat(plane).containsExactly(WAYS, BEYOND);
        assertThat(plane[0]).isZero();
        assertThat(plane[4]).isEqualTo(1);
    }

    /** And so it is downward: 1 - x. */
    @Test
    void isExactAtBothEndsDownward() {
        float[] plane = drawn(new Cubic(1, -1, 0, 0));
        assertThat(plane).containsExactly(new float[] {1, 0.75f, 0.5f, 0.25f, 0}, BEYOND);
        assertThat(plane[0]).isEqualTo(1);
        assertThat(plane[4]).isZero();
    }

    /** From white to black and back, wherever black is: what begins at 1 ends at 1, in spite of rounding. */
    @Test
    void comesBackToWhereItBegan() {
        for (int thousandths = 100; thousandths <= 900; thousandths++) {
            double width = thousandths / 1000.0;
            Cubic down = new Cubic(1, -1 / width, 0, 0);
            Cubic up = new Cubic(0, 1 / (1 - width), 0, 0);
            CubicChannel channel = new CubicChannel(List.of(down, up), new double[] {width, 1 - width});
            float[] plane = new float[1];
            channel.begin(0, new float[] {(float) width}, plane, 0, 1);
            channel.add(1, new float[] {1f - (float) width}, plane, 0, 1);
            channel.finish(plane, 0, 1);
            assertThat(plane[0]).as("black at %s", width).isEqualTo(1);
        }
    }

    /** 1/4 + x/2 touches neither end, so nothing is stretched: all values are exact in binary. */
    @Test
    void leavesWhatTouchesNoEndAsItIs() {
        assertThat(drawn(new Cubic(0.25, 0.5, 0, 0))).containsExactly(0.25f, 0.375f, 0.5f, 0.625f, 0.75f);
    }

    /** 1/2 + x leaves the range half-way; 3x² - 2x³ - 1/4, which starts level, is below 0 at first. */
    @Test
    void isCutWhereItLeavesTheRange() {
        assertThat(drawn(new Cubic(0.5, 1, 0, 0))).containsExactly(new float[] {0.5f, 0.75f, 1, 1, 1}, BEYOND);
        assertThat(drawn(new Cubic(-0.25, 0, 3, -2)))
                .containsExactly(new float[] {0, 0, 0.25f, 0.59375f, 0.75f}, BEYOND);
    }

    /** 4x - 4x² is 1 in the middle and 0 at both ends: the turning point counts, not the ends alone. */
    @Test
    void isExactWhereItTurns() {
        float[] plane = drawn(new Cubic(0, 4, -4, 0));
        assertThat(plane).containsExactly(new float[] {0, 0.75f, 1, 0.75f, 0}, BEYOND);
        assertThat(plane[2]).isEqualTo(1);
        assertThat(plane[4]).isZero();
    }

    @Test
    void staysWhereNothingMoves() {
        CubicChannel channel =
                new CubicChannel(List.of(new Cubic(0.3, 0, 0, 0), new Cubic(0.3, 0, 0, 0)), new double[] {0.5, 0.5});
        float[] plane = new float[5];
        channel.begin(0, WAYS, plane, 0, 5);
        channel.add(1, WAYS, plane, 0, 5);
        channel.addJump(1, WAYS, plane, 0, 5);
        channel.finish(plane, 0, 5);
        assertThat(plane).containsOnly(0.3f);
    }

    /** Up from 1/4 by x/2 over 1/2 to 1/2, then from 3/4 down by x/4: 1/4 into the second piece it is 11/16. */
    @Test
    void addsUpPiecesAndJumps() {
        CubicChannel channel = new CubicChannel(
                List.of(new Cubic(0.25, 0.5, 0, 0), new Cubic(0.75, -0.25, 0, 0)), new double[] {0.5, 0.5});
        float[] plane = new float[3];
        channel.begin(0, new float[] {0.25f, 0.5f, 0.5f}, plane, 0, 3);
        channel.add(1, new float[] {0, 0, 0.25f}, plane, 0, 3);
        channel.addJump(1, new float[] {0, 1, 1}, plane, 0, 3);
        channel.finish(plane, 0, 3);
        assertThat(plane).containsExactly(0.375f, 0.75f, 0.6875f);
    }

    @Test
    void drawsTheGivenCellsOnly() {
        CubicChannel channel = new CubicChannel(List.of(new Cubic(0, 2, 0, 0)), new double[] {1});
        float[] plane = {7, 7, 7, 7, 7};
        channel.begin(0, WAYS, plane, 1, 4);
        channel.finish(plane, 1, 4);
        assertThat(plane).containsExactly(new float[] {7, 0.5f, 1, 1, 7}, BEYOND);
    }

    private static float[] drawn(Cubic cubic) {
        CubicChannel channel = new CubicChannel(List.of(cubic), new double[] {1});
        float[] plane = new float[WAYS.length];
        channel.begin(0, WAYS, plane, 0, WAYS.length);
        channel.finish(plane, 0, WAYS.length);
        return plane;
    }

    /** In one loop as in several, to the bit: of one piece and of two, also where the channel is clipped or stays. */
    @Test
    void isFilledInOneLoopAsInSeveral() {
        Cubic[] rises = {new Cubic(0.1, 0.9, -0.7, 0.4), new Cubic(0, 2, 0, 0), new Cubic(0.3, 0, 0, 0)};
        Cubic[] falls = {new Cubic(0.425, -0.2, 0.3, -0.1), new Cubic(1, -2, 0, 0), new Cubic(0.3, 0, 0, 0)};
        for (int kind = 0; kind < rises.length; kind++) {
            CubicChannel channel = new CubicChannel(List.of(rises[kind], falls[kind]), new double[] {0.5, 0.5});
            float[] ways = new float[1000];
            float[] nextWays = new float[1000];
            for (int i = 0; i < 1000; i++) {
                ways[i] = Math.min(0.5f, i / 999f);
                nextWays[i] = Math.max(0f, i / 999f - 0.5f);
            }
            float[] one = new float[1000];
            channel.begin(0, ways, one, 0, 1000);
            channel.add(1, nextWays, one, 0, 1000);
            channel.finish(one, 0, 1000);
            channel.fill(0, ways, 1, nextWays, nextWays, 0, 1000);
            assertThat(nextWays).isEqualTo(one);

            channel.begin(0, ways, one, 0, 1000);
            channel.finish(one, 0, 1000);
            channel.fill(0, ways, nextWays, 0, 1000);
            assertThat(nextWays).isEqualTo(one);
        }
    }
}
