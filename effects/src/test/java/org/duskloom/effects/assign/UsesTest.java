package org.duskloom.effects.assign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who uses whom, where each of the few is used evenly. */
class UsesTest {
    /** Any pairing in which each of the few is used evenly. */
    private static int[] even(int many, int few, SplittableRandom random) {
        int[] partner = new int[many];
        int[] order = Clouds.shuffled(many, random.nextLong());
        for (int i = 0; i < many; i++) {
            partner[order[i]] = i % few;
        }
        return partner;
    }

    /**
     * Seven to three: each is used twice, and one of them three times. So there are nine uses, six of which must be,
     * and nobody has two of the others.
     */
    @Test
    void holdsTheUsesThatMustBeAndOneMoreOfEach() {
        Uses uses = new Uses(new int[] {0, 1, 2, 0, 1, 2, 1}, 3);
        assertThat(uses.itemCount()).isEqualTo(9);
        assertThat(uses.partners(7)).containsExactly(0, 1, 2, 0, 1, 2, 1);
        assertThat(IntStream.range(0, 9).filter(uses::isOneOfMany).count()).isEqualTo(7);
        assertThat(IntStream.of(7, 8).map(uses::partner)).as("nobody").containsExactlyInAnyOrder(0, 2);
        int[] all = uses.ofItems(IntStream.range(0, 9).toArray(), 0, 9);
        assertThat(uses.mustBe(all)).isEqualTo(6);
        assertThat(all).doesNotHaveDuplicates();
        assertThat(uses.used(all)).containsOnly(0, 1, 2);
    }

    /** Where the numbers go up there is nobody: every use must be. */
    @ParameterizedTest
    @CsvSource({"6, 3", "4, 4", "5, 1"})
    void needsNobodyWhereNumbersGoUp(int many, int few) {
        Uses uses = new Uses(even(many, few, new SplittableRandom(1)), few);
        assertThat(uses.itemCount()).isEqualTo(many);
        assertThat(uses.mustBe(uses.ofItems(IntStream.range(0, many).toArray(), 0, many)))
                .isEqualTo(many);
    }

    /** However some uses are dealt out anew among those who had them, each of the few is used as evenly as before. */
    @Test
    void dealingKeepsThemEven() {
        SplittableRandom random = new SplittableRandom(8);
        for (int run = 0; run < 300; run++) {
            int few = 1 + random.nextInt(9);
            int many = few + random.nextInt(40);
            Uses uses = new Uses(even(many, few, random), few);
            int[] items = Clouds.shuffled(uses.itemCount(), run);
            int to = Math.min(items.length, 2 + random.nextInt(10));
            int[] some = uses.ofItems(items, 0, to);
            int[] numbers = IntStream.range(0, to)
                    .map(i -> items[i])
                    .filter(uses::isOneOfMany)
                    .toArray();
            int[] places = placesThatMustBeFirst(numbers.length, some.length, uses.mustBe(some), random);
            int[] before = uses.partners(many);
            uses.deal(items, 0, to, numbers, some, places);
            int[] used = new int[few];
            for (int partner : uses.partners(many)) {
                used[partner]++;
            }
            assertThat(Arrays.stream(used).min().orElseThrow()).isEqualTo(many / few);
            assertThat(Arrays.stream(used).max().orElseThrow()).isEqualTo((many + few - 1) / few);
            for (int i = 0; i < numbers.length; i++) {
                assertThat(uses.partner(numbers[i])).isEqualTo(some[places[i]] % few);
            }
            for (int number = 0; number < many; number++) {
                int one = number;
                if (IntStream.of(numbers).noneMatch(changed -> changed == one)) {
                    assertThat(uses.partner(number)).as("not among them").isEqualTo(before[number]);
                }
            }
        }
    }

    /** Places of uses for the many: all that must be, and any of the others. */
    private static int[] placesThatMustBeFirst(int many, int uses, int mustBe, SplittableRandom random) {
        int[] others = Clouds.shuffled(uses - mustBe, random.nextLong());
        int[] places = new int[many];
        int[] order = Clouds.shuffled(many, random.nextLong());
        for (int i = 0; i < many; i++) {
            places[order[i]] = i < mustBe ? i : mustBe + others[i - mustBe];
        }
        return places;
    }
}
