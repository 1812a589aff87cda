package org.duskloom.engine.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SplitMix64Test {
    /**
     * Computed from G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014; seeds 0 and 1234567 are also in published vectors
     * of S. Vigna's reference splitmix64.
     */
    @ParameterizedTest
    @CsvSource({
        "0, e220a8397b1dcdaf 6e789e6aa1b965f4 06c45d188009454f f88bb8a8724c81ec",
        "1, 910a2dec89025cc1 beeb8da1658eec67 f893a2eefb32555e 71c18690ee42c90b",
        "42, bdd732262feb6e95 28efe333b266f103 47526757130f9f52 581ce1ff0e4ae394",
        "1234567, 599ed017fb08fc85 2c73f08458540fa5 883ebce5a3f27c77 3fbef740e9177b3f e3b8346708cb5ecd",
        "-1, e4d971771b652c20 e99ff867dbf682c9 382ff84cb27281e9 6d1db36ccba982d2"
    })
    void givesThePublishedSequence(long seed, String outputs) {
        SplitMix64 sequence = new SplitMix64(seed);
        for (String output : outputs.split(" ")) {
            assertThat(sequence.nextLong()).isEqualTo(Long.parseUnsignedLong(output, 16));
        }
    }

    /** The decimal form of the published vector of seed 1234567. */
    @Test
    void givesThePublishedDecimals() {
        SplitMix64 sequence = new SplitMix64(1234567);
        for (String output : new String[] {
            "6457827717110365317",
            "3203168211198807973",
            "9817491932198370423",
            "4593380528125082431",
            "16408922859458223821"
        }) {
            assertThat(Long.toUnsignedString(sequence.nextLong())).isEqualTo(output);
        }
    }

    /** The JDK's SplittableRandom is the same sequence, by the authors of the paper. */
    @ParameterizedTest
    @ValueSource(longs = {0, 1, 7, 42, -1, Long.MIN_VALUE, Long.MAX_VALUE, 0x9E3779B97F4A7C15L})
    void agreesWithTheJdk(long seed) {
        SplittableRandom reference = new SplittableRandom(seed);
        SplitMix64 sequence = new SplitMix64(seed);
        for (int i = 0; i < 10_000; i++) {
            assertThat(sequence.nextLong()).isEqualTo(reference.nextLong());
        }
    }

    /** (x >>> 11) * 2^-53 of the published outputs of seed 0. */
    @Test
    void givesDoublesBelowOne() {
        SplitMix64 sequence = new SplitMix64(0);

        assertThat(sequence.nextDouble()).isEqualTo(0.8833108082136426);
        assertThat(sequence.nextDouble()).isEqualTo(0.43152799704850997);
        assertThat(sequence.nextDouble()).isEqualTo(0.026433771592597743);
    }

    @Test
    void mixingKeepsNumbersApart() {
        Set<Long> mixed = new HashSet<>();
        for (long i = -5000; i < 5000; i++) {
            mixed.add(SplitMix64.mix(i));
        }

        assertThat(mixed).hasSize(10_000);
        assertThat(SplitMix64.mix(0)).isZero();
    }
}
