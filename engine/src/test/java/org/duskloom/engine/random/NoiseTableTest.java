package org.duskloom.engine.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What K. Perlin, "Improving Noise", SIGGRAPH 2002, says of the tables of his noise. */
final class NoiseTableTest {
    /** "A pseudorandom permutation" of the numbers from 0 to 255: each of them comes once. */
    @Test
    void isAPermutation() {
        assertThat(IntStream.range(0, 256).map(NoiseTable::permuted))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 256).boxed().toList());
    }

    @Test
    void repeats() {
        for (int index = 0; index < 256; index++) {
            assertThat(NoiseTable.permuted(index + 256)).isEqualTo(NoiseTable.permuted(index));
            assertThat(NoiseTable.permuted(index - 256)).isEqualTo(NoiseTable.permuted(index));
        }
    }

    /**
     * The directions from the middle of a cube to its twelve edges. To make sixteen of them, four stand twice, which
     * "form a regular tetrahedron": no two of them point away from each other, and all four together cancel out.
     */
    @Test
    void gradientsAreTheEdgesOfACube() {
        Map<List<Integer>, Long> counts = IntStream.range(0, 16)
                .mapToObj(NoiseTableTest::gradient)
                .collect(Collectors.groupingBy(edge -> edge, Collectors.counting()));
        assertThat(counts).hasSize(12);
        assertThat(counts.keySet()).allSatisfy(edge -> {
            assertThat(edge.stream().filter(part -> part == 0)).hasSize(1);
            assertThat(edge).allMatch(part -> Math.abs(part) <= 1);
        });
        List<List<Integer>> twice = counts.entrySet().stream()
                .filter(entry -> entry.getValue() == 2)
                .map(Map.Entry::getKey)
                .toList();
        assertThat(twice)
                .hasSize(4)
                .allSatisfy(edge -> assertThat(twice)
                        .doesNotContain(edge.stream().map(part -> -part).toList()));
        for (int axis = 0; axis < 3; axis++) {
            int along = axis;
            assertThat(twice.stream().mapToInt(edge -> edge.get(along)).sum()).isZero();
        }
    }

    /** The product of a point with a gradient is what its parts along the three axes add up to. */
    @Test
    void partsAddUp() {
        Map<Integer, Double> products = new TreeMap<>();
        for (int hash = 0; hash < 32; hash++) {
            List<Integer> edge = gradient(hash & 15);
            assertThat(NoiseTable.gradient(hash, 0.25, -3, 7.5))
                    .isEqualTo(edge.get(0) * 0.25 + edge.get(1) * -3 + edge.get(2) * 7.5);
            products.put(hash & 15, NoiseTable.gradient(hash, 1, 2, 4));
        }
        assertThat(products.values()).contains(3.0, -3.0, 5.0, -5.0, 6.0, -6.0);
    }

    private static List<Integer> gradient(int hash) {
        return List.of((int) NoiseTable.GRADIENT_X[hash], (int) NoiseTable.GRADIENT_Y[hash], (int)
                NoiseTable.GRADIENT_Z[hash]);
    }
}
