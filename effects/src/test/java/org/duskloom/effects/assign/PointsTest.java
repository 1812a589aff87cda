package org.duskloom.effects.assign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places, the frame in which two sets of them are paired, and groups of near ones. */
class PointsTest {
    private static final Points BOX =
            new Points(new double[] {0, 4, 1}, new double[] {0, 1, 6}, new double[] {0, -2, 0});

    @Test
    void measuresAsPythagorasDoes() {
        Points origin = new Points(new double[] {0}, new double[] {0}, new double[] {0});
        assertThat(BOX.squaredDistance(1, origin, 0)).isEqualTo(16 + 1 + 4);
        assertThat(BOX.squaredDistance(2, BOX, 2)).isZero();
        assertThat(BOX.squaredDistance(1, BOX, 2))
                .isEqualTo(BOX.squaredDistance(2, BOX, 1))
                .isEqualTo(9 + 25 + 4);
    }

    @Test
    void knowsHowFarTheyReach() {
        int[] all = {0, 1, 2};
        assertThat(BOX.extent(0, all, 0, 3)).isEqualTo(4);
        assertThat(BOX.extent(1, all, 0, 3)).isEqualTo(6);
        assertThat(BOX.extent(2, all, 0, 3)).isEqualTo(2);
        assertThat(BOX.longestAxis(all, 0, 3)).isEqualTo(1);
        assertThat(BOX.longestAxis(all, 0, 2)).isZero();
        assertThat(BOX.longestAxis(all, 1, 2)).as("one point reaches nowhere").isZero();
        assertThat(BOX.extent(1, new int[] {9, 2, 0, 9}, 1, 3)).isEqualTo(6);
    }

    @Test
    void picksInAnyOrder() {
        Points picked = BOX.picked(new int[] {2, 0, 2});
        assertThat(picked.count()).isEqualTo(3);
        assertThat(picked.along(0)).containsExactly(1, 0, 1);
        assertThat(picked.along(1)).containsExactly(6, 0, 6);
        assertThat(picked.along(2)).containsExactly(0, 0, 0);
    }

    @Test
    void refusesCoordinatesThatDoNotGoTogether() {
        assertThatThrownBy(() -> new Points(new double[2], new double[2], new double[3]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("2, 2 and 3 coordinates");
    }

    /** The box round both sets is -2 to 6 by 0 to 2: its middle (2, 1), its longest half side 4. */
    @Test
    void theFrameLiesRoundBothSets() {
        Points from = new Points(new double[] {-2, 0}, new double[] {0, 2}, new double[2]);
        Points to = new Points(new double[] {6}, new double[] {1}, new double[1]);
        CommonFrame frame = CommonFrame.of(from, to);
        assertThat(frame).isEqualTo(new CommonFrame(2, 1, 0, 4));
        assertThat(frame.placed(from).x()).containsExactly(-1, -0.5);
        assertThat(frame.placed(from).y()).containsExactly(-0.25, 0.25);
        assertThat(frame.placed(to).x()).containsExactly(1);
    }

    @Test
    void aSinglePlaceHasAFrameToo() {
        Points one = new Points(new double[] {7}, new double[] {8}, new double[] {9});
        assertThat(CommonFrame.of(one, one)).isEqualTo(new CommonFrame(7, 8, 9, 1));
        assertThat(CommonFrame.of(one, one).placed(one).x()).containsExactly(0);
    }

    /** Copies of a shape lie at the same places of the frame, wherever they stand and however large they are. */
    @ParameterizedTest
    @CsvSource({"0, 1", "1000, 1", "-3.7, 0.01", "123.456, 25.4"})
    void copiesOfAShapeLieAlike(double shift, double scale) {
        Points cloud = Clouds.box(40, 5);
        double[][] moved = new double[3][];
        for (int axis = 0; axis < 3; axis++) {
            moved[axis] = Arrays.stream(cloud.along(axis))
                    .map(at -> at * scale + shift)
                    .toArray();
        }
        Points copy = new Points(moved[0], moved[1], moved[2]);
        assertThat(CommonFrame.of(copy, copy).placed(copy).x())
                .containsExactly(CommonFrame.of(cloud, cloud).placed(cloud).x(), within(0x1p-23));
    }

    /** Each point is in one group or in the rest; groups have one size, and lie nearer together than all do. */
    @ParameterizedTest
    @CsvSource({"100, 10, 10", "103, 10, 9", "64, 1, 64", "50, 7, 4", "9, 3, 0"})
    void groupsHaveOneSize(int count, int size, int groups) {
        Points cloud = Clouds.box(count, 11);
        Groups gathered = new Groups(cloud, size, groups);
        int[] numbers = new int[count];
        gathered.copyRest(numbers);
        for (int group = 0; group < groups; group++) {
            gathered.copy(group, numbers, group * size);
        }
        assertThat(IntStream.of(numbers).sorted().toArray())
                .containsExactly(IntStream.range(0, count).toArray());
        Points middles = gathered.middles();
        assertThat(middles.count()).isEqualTo(groups);
        for (int group = 0; group < groups; group++) {
            double mean = 0;
            for (int i = 0; i < size; i++) {
                mean += cloud.y()[numbers[group * size + i]] / size;
            }
            assertThat(middles.y()[group]).isCloseTo(mean, within(1e-12));
        }
    }

    /** Two heaps far from each other never share a group. */
    @Test
    void groupsAreOfNearPoints() {
        Points cloud = Clouds.box(200, 12);
        for (int i = 0; i < 200; i++) {
            cloud.x()[i] = cloud.x()[i] * 0.1 + (i % 2 == 0 ? 0 : 50);
        }
        Groups gathered = new Groups(cloud, 10, 20);
        int[] group = new int[10];
        for (int i = 0; i < 20; i++) {
            gathered.copy(i, group, 0);
            assertThat(cloud.extent(0, group, 0, 10)).isLessThan(1);
        }
    }

    /** In the order of ranks, each with its partner. */
    @Test
    void pairsMayBePutInOrder() {
        Pairs pairs = new Pairs(new int[] {0, 1, 2}, new int[] {5, 6, 7}).inOrder(new int[] {9, 1, 4});
        assertThat(pairs.from()).containsExactly(1, 2, 0);
        assertThat(pairs.to()).containsExactly(6, 7, 5);
        assertThat(pairs.count()).isEqualTo(3);
        assertThat(new Pairs(new int[] {1, 2}, new int[] {0, 0}).totalSquaredDistance(BOX, BOX))
                .isEqualTo(16 + 1 + 4 + 1 + 36);
    }
}
