package org.duskloom.engine.sound.music;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MelBandsTest {
    /** 2595 log10(1 + f / 700), as the speech toolkits of O'Shaughnessy's scale have it. */
    @ParameterizedTest
    @CsvSource({
        "60, 92.681858",
        "110, 164.48921",
        "220, 307.999998",
        "440, 549.638675",
        "700, 781.172839",
        "1000, 999.985537",
        "4000, 2146.064528",
        "11025, 3176.318436"
    })
    void measuresPitchInMel(double hertz, double mel) {
        assertThat(MelBands.mel(hertz)).isCloseTo(mel, within(1e-6));
        assertThat(MelBands.hertz(mel)).isCloseTo(hertz, within(1e-3));
    }

    @Test
    void bandsLieInOrderAndEquallyFarInMel() {
        MelBands bands = new MelBands(512, 12_000);
        double step = MelBands.mel(bands.centreHz(1)) - MelBands.mel(bands.centreHz(0));
        for (int b = 1; b < MelBands.COUNT; b++) {
            assertThat(MelBands.mel(bands.centreHz(b)) - MelBands.mel(bands.centreHz(b - 1)))
                    .isCloseTo(step, within(1e-9));
        }
        assertThat(bands.centreHz(0)).isGreaterThan(27.5);
        assertThat(bands.centreHz(MelBands.COUNT - 1)).isLessThan(5_500);
    }

    /** Triangles that overlap by half: between the middles of the first and the last band every bin counts once. */
    @Test
    void everyBinCountsOnce() {
        MelBands bands = new MelBands(512, 11_025);
        for (int k = 0; k <= 256; k++) {
            double hz = k * 11_025.0 / 512;
            double[] power = new double[257];
            power[k] = 1;
            double[] sums = new double[MelBands.COUNT];
            bands.sum(power, sums);
            if (hz >= bands.centreHz(0) && hz <= bands.centreHz(MelBands.COUNT - 1)) {
                assertThat(Arrays.stream(sums).sum()).isCloseTo(1, within(1e-9));
            }
            assertThat(Arrays.stream(sums).min().getAsDouble()).isNotNegative();
        }
    }

    /** S. Dixon, DAFx-06: rectified, summed. */
    @ParameterizedTest
    @CsvSource({"0 0 0, 1 2 .5, 3.5", "1 2 .5, 1 1 3, 2.5", "1 1 3, 0 4 3, 3"})
    void fluxIsWhatRises(String before, String now, double flux) {
        assertThat(Onsets.flux(numbers(before), numbers(now), 3)).isCloseTo(flux, within(1e-12));
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
