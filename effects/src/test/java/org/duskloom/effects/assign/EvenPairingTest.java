package org.duskloom.effects.assign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EvenPairingTest {
    private static final double[] SAME = {1, 0, 0, 1};

    /**
     * (0, 0) and (1, 0) to (1, 1) and (0, 1): straight up costs 1 + 1, crossing over 2 + 2. To (0, 1) and (3, 0): 1 +
     * 4, or 9 + 2.
     */
    @Test
    void doesNotCross() {
        Points from = Clouds.of(new double[] {0, 0}, new double[] {1, 0});
        Points above = Clouds.of(new double[] {1, 1}, new double[] {0, 1});
        Points aside = Clouds.of(new double[] {0, 1}, new double[] {3, 0});

        Pairs up = pairs(from, above);
        assertThat(up.from()).containsExactly(0, 1);
        assertThat(up.to()).containsExactly(1, 0);
        assertThat(up.totalSquaredDistance(from, above)).isEqualTo(2);
        assertThat(pairs(from, aside).to()).containsExactly(0, 1);
        assertThat(pairs(from, aside).totalSquaredDistance(from, aside)).isEqualTo(5);
    }

    /** Depth counts: (0, 0, 0) and (0, 0, 1) to (1, 0, 1) and (1, 0, 0). */
    @Test
    void measuresInSpace() {
        Points from = Clouds.of(new double[] {0, 0, 0}, new double[] {0, 0, 1});
        assertThat(pairs(from, Clouds.of(new double[] {1, 0, 1}, new double[] {1, 0, 0}))
                        .to())
                .containsExactly(1, 0);
    }

    /**
     * On a line the least total keeps the order (rearrangement inequality; Hardy, Littlewood, Pólya, "Inequalities",
     * 10.2).
     */
    @ParameterizedTest
    @ValueSource(ints = {7, 400, 401, 1500})
    void keepsTheOrderOnALine(int count) {
        double[] x = new SplittableRandom(5).doubles(2L * count).toArray();
        Points from = new Points(Arrays.copyOf(x, count), new double[count], new double[count]);
        Points to = new Points(Arrays.copyOfRange(x, count, 2 * count), new double[count], new double[count]);
        double[] fromSorted = from.x().clone();
        double[] toSorted = to.x().clone();
        Arrays.sort(fromSorted);
        Arrays.sort(toSorted);
        double least = IntStream.range(0, count)
                .mapToDouble(i -> (fromSorted[i] - toSorted[i]) * (fromSorted[i] - toSorted[i]))
                .sum();

        assertThat(pairs(from, to).totalSquaredDistance(from, to)).isBetween(least * (1 - 1e-9), least * 1.001);
    }

    /** Each point of the smaller set goes with ⌊n/m⌋ or ⌈n/m⌉ of the larger, each of the larger with one. */
    @ParameterizedTest
    @CsvSource({
        "12,24",
        "24,12",
        "5,12",
        "12,5",
        "1,7",
        "7,1",
        "1,1",
        "400,399",
        "401,400",
        "401,399",
        "1000,701",
        "701,1000",
        "1000,3",
        "1000,47",
        "5000,1600",
        "900,450",
        "450,900",
        "513,512",
        "2000,999"
    })
    void usesTheSmallerSetEvenly(int from, int to) {
        Pairs pairs = pairs(Clouds.disc(from, 1, 1), Clouds.disc(to, 0.5, 2));
        int many = Math.max(from, to);
        int few = Math.min(from, to);

        assertThat(pairs.count()).isEqualTo(many);
        assertThat(uses(from >= to ? pairs.from() : pairs.to(), many)).containsOnly(1);
        assertThat(uses(from >= to ? pairs.to() : pairs.from(), few))
                .allMatch(uses -> uses == many / few || uses == (many + few - 1) / few);
    }

    /** Against every way there is to use the smaller set evenly. */
    @ParameterizedTest
    @CsvSource({"2,2", "3,2", "5,2", "4,3", "5,3", "7,3", "6,4", "7,4", "7,5", "7,7"})
    void agreesWithExhaustiveSearch(int many, int few) {
        for (int seed = 0; seed < 20; seed++) {
            Points from = Clouds.box(many, 2 * seed);
            Points to = Clouds.box(few, 2 * seed + 1);
            double least = search(from, to, 0, new int[few]);

            assertThat(pairs(from, to).totalSquaredDistance(from, to)).isCloseTo(least, within(1e-5 * least));
            assertThat(pairs(to, from).totalSquaredDistance(to, from)).isCloseTo(least, within(1e-5 * least));
        }
    }

    private static double search(Points many, Points few, int number, int[] uses) {
        int least = many.count() / few.count();
        if (number == many.count()) {
            return Arrays.stream(uses).allMatch(use -> use >= least) ? 0 : Double.POSITIVE_INFINITY;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int partner = 0; partner < uses.length; partner++) {
            if (uses[partner] * uses.length < many.count()) {
                uses[partner]++;
                double rest = search(many, few, number + 1, uses);
                best = Math.min(best, rest + many.squaredDistance(number, few, partner));
                uses[partner]--;
            }
        }
        return best;
    }

    static Stream<Arguments> shapes() {
        return Stream.of(
                Arguments.of(
                        "disc to smaller disc",
                        600,
                        600,
                        shape(n -> Clouds.disc(n, 1, 1)),
                        shape(n -> Clouds.disc(n, 0.5, 2))),
                Arguments.of(
                        "disc to few in a disc",
                        600,
                        350,
                        shape(n -> Clouds.disc(n, 1, 1)),
                        shape(n -> Clouds.disc(n, 0.5, 2))),
                Arguments.of(
                        "line to disc", 600, 599, shape(n -> Clouds.line(n, -1)), shape(n -> Clouds.disc(n, 1, 3))),
                Arguments.of(
                        "ring to grid", 600, 600, shape(n -> Clouds.ring(n, 1)), shape(n -> Clouds.grid(n, -0.6, 1.3))),
                Arguments.of(
                        "ring to few in a grid",
                        600,
                        90,
                        shape(n -> Clouds.ring(n, 1)),
                        shape(n -> Clouds.grid(n, -0.6, 1.3))),
                Arguments.of(
                        "heaps to heaps", 500, 500, shape(n -> Clouds.heaps(n, 1)), shape(n -> Clouds.heaps(n, 2))),
                Arguments.of(
                        "heaps to fewer heaps",
                        600,
                        350,
                        shape(n -> Clouds.heaps(n, 1)),
                        shape(n -> Clouds.heaps(n, 2))),
                Arguments.of("in space", 500, 499, shape(n -> Clouds.box(n, 1)), shape(n -> Clouds.box(n, 2))));
    }

    private static Function<Integer, Points> shape(Function<Integer, Points> shape) {
        return shape;
    }

    /**
     * The way of large parts against the optimum, at a size where both can be had; 1.03 is what the measurements
     * promise.
     */
    @ParameterizedTest(name = "{0}, {1} to {2}")
    @MethodSource("shapes")
    void comesNearTheOptimumWhereManyPair(
            String name, int many, int few, Function<Integer, Points> first, Function<Integer, Points> second) {
        Points from = first.apply(many);
        Points to = second.apply(few);
        int[] numbers = IntStream.range(0, many).toArray();
        double least = new Pairs(numbers, ExactPairing.partners(from, to)).totalSquaredDistance(from, to);

        assertThat(pairs(from, to).totalSquaredDistance(from, to)).isBetween(least * (1 - 1e-9), least * 1.03);
    }

    /** The same places go together, in whatever order the points come. */
    @ParameterizedTest
    @CsvSource({"40,40", "60,24", "24,60", "700,700", "900,500", "500,900"})
    void doesNotDependOnTheOrderOfPoints(int fromCount, int toCount) {
        Points from = Clouds.disc(fromCount, 1, 4);
        Points to = Clouds.box(toCount, 3);
        int[] fromOrder = Clouds.shuffled(fromCount, 1);
        int[] toOrder = Clouds.shuffled(toCount, 2);

        Pairs shuffled = pairs(from.picked(fromOrder), to.picked(toOrder));
        Pairs before = pairs(from, to);

        assertThat(IntStream.range(0, shuffled.count())
                        .mapToObj(i -> fromOrder[shuffled.from()[i]] + " to " + toOrder[shuffled.to()[i]]))
                .containsExactlyInAnyOrder(IntStream.range(0, before.count())
                        .mapToObj(i -> before.from()[i] + " to " + before.to()[i])
                        .toArray(String[]::new));
    }

    /** Moved, made larger, or turned by a quarter, everything pairs as before. */
    @ParameterizedTest
    @CsvSource({"40,40", "60,24", "24,60"})
    void doesNotDependOnTheFrameOfReference(int fromCount, int toCount) {
        Points from = Clouds.disc(fromCount, 1, 6);
        Points to = Clouds.moved(Clouds.disc(toCount, 0.6, 5), SAME, 0.9, -0.2);
        int[] partners = pairs(from, to).to();
        for (double[] matrix : new double[][] {SAME, {0, -1, 1, 0}, {-1, 0, 0, -1}, {300, 0, 0, 300}}) {
            assertThat(pairs(Clouds.moved(from, matrix, 77, -3), Clouds.moved(to, matrix, 77, -3))
                            .to())
                    .containsExactly(partners);
        }
    }

    /**
     * From 12 on a ring to 24 on one round it: those at the same angle pair, and each of the others lies half way
     * between two. Both neighbours are as near, and the ways of all must turn alike, however the places are rounded:
     * counter-clockwise.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-13, -3e-13, 800})
    void turnsCounterClockwiseWhereWaysTie(double shift) {
        Points inner = Clouds.moved(Clouds.ring(12, 0.5), SAME, shift, 0.1);
        Points outer = Clouds.moved(Clouds.ring(24, 1), SAME, shift, 0.1);

        Pairs out = pairs(inner, outer);
        assertThat(out.to()).containsExactly(IntStream.range(0, 24).toArray());
        assertThat(out.from())
                .containsExactly(IntStream.range(0, 24).map(i -> i / 2).toArray());

        Pairs in = pairs(outer, inner);
        assertThat(in.to())
                .containsExactly(
                        IntStream.range(0, 24).map(i -> (i + 1) / 2 % 12).toArray());
    }

    /** Of two that are as near to a third in the middle, it goes to the right. */
    @Test
    void goesToTheRightWhereNothingElseDecides() {
        Points middle = Clouds.of(new double[] {-1, 0}, new double[] {0, 0}, new double[] {1, 0});
        Points ends = Clouds.of(new double[] {-1, 0}, new double[] {1, 0});
        assertThat(pairs(middle, ends).to()).containsExactly(0, 1, 1);
    }

    /** Copies of a shape elsewhere, with other rounding, are known already. */
    @Test
    void knowsCopiesOfAShape() {
        EvenPairing pairing = new EvenPairing();
        Points from = Clouds.disc(30, 1, 8);
        Points to = Clouds.disc(50, 0.4, 9);
        Pairs first = pairing.pairs(from, to);

        assertThat(pairing.pairs(from, to)).isSameAs(first);
        assertThat(pairing.pairs(Clouds.moved(from, SAME, 64, -32), Clouds.moved(to, SAME, 64, -32)))
                .isSameAs(first);
        assertThat(pairing.pairs(to, from)).isNotSameAs(first);
    }

    @Test
    void pairsPointsAtOnePlace() {
        Points here = Clouds.of(new double[] {3, 4}, new double[] {3, 4}, new double[] {3, 4});
        assertThat(uses(pairs(here, here).to(), 3)).containsOnly(1);

        int count = 1000;
        Points heap = new Points(new double[count], new double[count], new double[count]);
        Pairs pairs = pairs(heap, heap);
        assertThat(uses(pairs.from(), count)).containsOnly(1);
        assertThat(uses(pairs.to(), count)).containsOnly(1);
    }

    /** Every point stays where it is: total 0. */
    @ParameterizedTest
    @ValueSource(ints = {1, 50, 1000})
    void leavesASetThatGoesToItselfWhereItIs(int count) {
        Points same = Clouds.disc(count, 1, 12);
        assertThat(pairs(same, same).totalSquaredDistance(same, same)).isZero();
    }

    @Test
    void refusesEmptySets() {
        Points none = Clouds.of();
        Points one = Clouds.of(new double[] {0, 0});
        assertThatThrownBy(() -> pairs(none, one)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> pairs(one, none)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Pairs pairs(Points from, Points to) {
        return new EvenPairing().pairs(from, to);
    }

    private static Integer[] uses(int[] numbers, int count) {
        Integer[] uses = new Integer[count];
        Arrays.fill(uses, 0);
        Arrays.stream(numbers).forEach(number -> uses[number]++);
        return uses;
    }
}
