package org.duskloom.effects.assign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps by which many points are paired. */
class LargePairingTest {
    /** Splitting is what sorting does, seen from a distance; here by value and then by number. */
    @ParameterizedTest
    @CsvSource({"1,0", "1,1", "2,1", "9,4", "100,1", "100,99", "100,100", "1000,500"})
    void splitsAsSortingDoes(int count, int middle) {
        for (int differentValues : new int[] {1, 3, 1 << 20}) {
            double[] values = new SplittableRandom(count + middle)
                    .ints(count, 0, differentValues)
                    .asDoubleStream()
                    .toArray();
            int[] numbers = Clouds.shuffled(count, 7);
            Halving.split(numbers, 0, middle, count, values);
            Integer[] sorted = IntStream.range(0, count).boxed().toArray(Integer[]::new);
            Arrays.sort(sorted, (a, b) -> Double.compare(values[a], values[b]));

            assertThat(IntStream.of(numbers).limit(middle).boxed())
                    .containsExactlyInAnyOrder(Arrays.copyOf(sorted, middle));
            assertThat(IntStream.of(numbers).skip(middle).boxed())
                    .containsExactlyInAnyOrder(Arrays.copyOfRange(sorted, middle, count));
        }
    }

    @Test
    void leavesNumbersOutsideTheRangeAlone() {
        int[] numbers = {4, 3, 2, 1, 0};
        Halving.split(numbers, 1, 2, 4, new double[] {0, 1, 2, 3, 4});
        assertThat(numbers[0]).isEqualTo(4);
        assertThat(numbers[1]).isEqualTo(1);
        assertThat(numbers[4]).isZero();
    }

    /** Whatever the numbers, groups and rest can be used evenly: n from 1 to some 1500, m up to n. */
    @Test
    void pairsGroupsEvenlyWhateverTheNumbers() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 150; round++) {
            int many = 1 + random.nextInt(1 + 10 * round);
            int few = 1 + random.nextInt(many);
            int[] partners = GroupPairing.partners(Clouds.box(many, 1), Clouds.box(few, 2));
            int[] uses = new int[few];
            Arrays.stream(partners).forEach(partner -> uses[partner]++);

            assertThat(uses).hasSize(few);
            assertThat(Arrays.stream(uses).min().orElseThrow())
                    .as(many + " to " + few)
                    .isEqualTo(many / few);
            assertThat(Arrays.stream(uses).max().orElseThrow())
                    .as(many + " to " + few)
                    .isEqualTo((many + few - 1) / few);
        }
    }

    /**
     * Two heaps of 300 and 500 to two of 500 and 300 at the same places: only 200 go over, halving alone sends more.
     */
    @Test
    void sendsNoMoreThanMustGo() {
        Points from = heaps(300, 500);
        Points to = heaps(500, 300);
        int[] partners = PairingSweeps.shortened(from, to, GroupPairing.partners(from, to));

        assertThat(IntStream.range(0, 800).filter(i -> Math.abs(from.x()[i] - to.x()[partners[i]]) > 1))
                .hasSize(200);
    }

    private static Points heaps(int left, int right) {
        Points points = Clouds.box(left + right, left);
        for (int i = 0; i < left + right; i++) {
            points.x()[i] = points.x()[i] * 0.1 + (i < left ? 0 : 5);
            points.y()[i] = points.z()[i] * 0.1;
        }
        return points;
    }

    /** No sweep makes a pairing longer, not even the best one or one that is no good at all. */
    @Test
    void neverMakesAPairingLonger() {
        Points many = Clouds.disc(500, 1, 1);
        Points few = Clouds.disc(300, 0.7, 2);
        int[] best = ExactPairing.partners(many, few);
        int[] any = Arrays.stream(Clouds.shuffled(500, 3)).map(i -> i % 300).toArray();

        assertThat(total(many, few, PairingSweeps.shortened(many, few, best)))
                .isLessThanOrEqualTo(total(many, few, best));
        assertThat(total(many, few, PairingSweeps.shortened(many, few, any))).isLessThan(0.5 * total(many, few, any));
    }

    private static double total(Points many, Points few, int[] partners) {
        return new Pairs(IntStream.range(0, many.count()).toArray(), partners).totalSquaredDistance(many, few);
    }
}
