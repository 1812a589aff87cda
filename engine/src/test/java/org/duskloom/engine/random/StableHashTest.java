package org.duskloom.engine.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class StableHashTest {
    /** Fowler, Noll, Vo; IETF draft-eastlake-fnv, test vectors of FNV-1a 64. */
    @ParameterizedTest
    @CsvSource({"'', cbf29ce484222325", "a, af63dc4c8601ec8c", "foobar, 85944171f73967e8"})
    void hashesNamesAsPublished(String name, String hash) {
        assertThat(StableHash.ofName(name)).isEqualTo(Long.parseUnsignedLong(hash, 16));
    }

    /** The definition of FNV-1a, with the basis and prime of the draft, over bytes above 127. */
    @Test
    void hashesNamesAsUtf8() {
        long hash = 0xcbf29ce484222325L;
        for (byte unit : "Gänseblümchen".getBytes(StandardCharsets.UTF_8)) {
            hash ^= Byte.toUnsignedLong(unit);
            hash *= 1099511628211L;
        }

        assertThat(StableHash.ofName("Gänseblümchen")).isEqualTo(hash);
    }

    /** MurmurHash3 (A. Appleby, public domain), fmix32, computed from its definition. */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 514e28b7", "2, 30f4c306", "ffffffff, 81f16f39"})
    void finishesAsMurmurHash3(String value, String result) {
        assertThat(StableHash.finish(Integer.parseUnsignedInt(value, 16)))
                .isEqualTo(Integer.parseUnsignedInt(result, 16));
    }

    @Test
    void unitsAreBelowOne() {
        assertThat(StableHash.unitFloat(-1)).isEqualTo(Math.nextDown(1f));
        assertThat(StableHash.unitFloat(0)).isZero();
        assertThat(StableHash.unitFloat(Integer.MIN_VALUE)).isEqualTo(0.5f);
        assertThat(StableHash.unitDouble(-1)).isEqualTo(Math.nextDown(1.0));
        assertThat(StableHash.unitDouble(0)).isZero();
        assertThat(StableHash.unitDouble(Long.MIN_VALUE)).isEqualTo(0.5);
    }

    /** Also where the names run together, as "glow" and "daisy" do with "glowd" and "aisy". */
    @Test
    void everyPartOfTheKeyCounts() {
        long key = StableHash.propKey(7, "glow", "daisy-1");

        assertThat(key)
                .isEqualTo(StableHash.propKey(7, "glow", "daisy-1"))
                .isNotEqualTo(StableHash.propKey(8, "glow", "daisy-1"))
                .isNotEqualTo(StableHash.propKey(7, "glow", "daisy-2"))
                .isNotEqualTo(StableHash.propKey(7, "glow2", "daisy-1"))
                .isNotEqualTo(StableHash.propKey(7, "daisy-1", "glow"))
                .isNotEqualTo(StableHash.propKey(7, "glowd", "aisy-1"));
        assertThat(StableHash.combine(1, 2)).isNotEqualTo(StableHash.combine(2, 1));
        assertThat(StableHash.combine(0, 0)).isNotZero();
    }

    @Test
    void pixelsAndCountersHaveKeysOfTheirOwn() {
        long prop = StableHash.propKey(0, "", "");
        Set<Integer> keys = new HashSet<>();
        Set<Integer> draws = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            keys.add(StableHash.pixelKey(prop, i));
            draws.add(StableHash.draw(0, i));
        }

        assertThat(keys).hasSize(1000);
        assertThat(draws).hasSize(1000).doesNotContain(0);
    }

    /**
     * The mean of n even draws has the standard deviation 1/sqrt(12 n), here 0.00091; and the product of two
     * independent ones has the mean 1/4. Six deviations are allowed.
     */
    @Test
    void drawsAreEvenAndNeighboursIndependent() {
        long prop = StableHash.propKey(7, "glow", "daisy-1");
        int count = 100_000;
        double sum = 0;
        double withNextPixel = 0;
        double withNextWindow = 0;
        for (int i = 0; i < count; i++) {
            int pixel = i % 1000;
            int window = i / 1000;
            double unit = unit(prop, pixel, window);
            sum += unit;
            withNextPixel += unit * unit(prop, pixel + 1, window);
            withNextWindow += unit * unit(prop, pixel, window + 1);
        }

        assertThat(sum / count).isCloseTo(0.5, within(0.0055));
        assertThat(withNextPixel / count).isCloseTo(0.25, within(0.0055));
        assertThat(withNextWindow / count).isCloseTo(0.25, within(0.0055));
    }

    /** A fair coin: half of the 32 bits change when one bit of a key changes (the "avalanche" of a good finaliser). */
    @Test
    void oneBitOfTheKeyChangesHalfOfTheDraw() {
        long changed = 0;
        for (int key = 0; key < 1000; key++) {
            for (int bit = 0; bit < 32; bit++) {
                changed += Integer.bitCount(StableHash.draw(key, 5) ^ StableHash.draw(key ^ 1 << bit, 5));
            }
        }

        assertThat(changed / 32_000.0).isCloseTo(16, within(0.2));
    }

    private static double unit(long prop, int pixel, int window) {
        return StableHash.unitFloat(StableHash.draw(StableHash.pixelKey(prop, pixel), window));
    }
}
