package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LegWriterTest {
    private record Pair(int place, int dot) {}

    /** Few pixels and dots, many of them, and such as lie farther apart than half a word can say. */
    @ParameterizedTest
    @CsvSource({"0, 1, 1", "1, 1, 1", "512, 30, 20", "513, 65536, 65536", "3000, 100000, 10", "2000, 9, 2000000"})
    void writesDownEveryPair(int count, int places, int dots) {
        SplittableRandom random = new SplittableRandom(count);
        List<Pair> pairs = new ArrayList<>();
        LegWriter writer = new LegWriter(count);
        for (int i = 0; i < count; i++) {
            Pair pair = new Pair(random.nextInt(places), random.nextInt(dots));
            pairs.add(pair);
            writer.add(pair.place(), pair.dot());
        }
        Leg leg = writer.leg(2);
        assertThat(read(leg.words())).isEqualTo(pairs);
        assertThat(leg.covers(2)).isTrue();
    }

    private static List<Pair> read(int[] words) {
        List<Pair> pairs = new ArrayList<>();
        int next = 0;
        while (next < words.length) {
            int end = next + Leg.HEAD + words[next + 2];
            assertThat(words[next + 2]).isBetween(1, Found.BLOCK);
            for (int i = next + Leg.HEAD; i < end; i++) {
                pairs.add(
                        new Pair(words[next] + Found.placeAbove(words[i]), words[next + 1] + Found.dotAbove(words[i])));
            }
            next = end;
        }
        return pairs;
    }
}
