package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mean powers, against sums over the samples that lie in a step by their time. */
class PowerStepsTest {
    /** Sample i is at i / rate; step k goes from (k - shift) to (k + 1 - shift) parts of a second. */
    private static double[] bySampleTimes(double[] samples, double rateHz, int stepsPerSecond, double shift) {
        int steps = (int) Math.floor((samples.length - 1) / rateHz * stepsPerSecond + shift + 1e-12) + 1;
        double[] sums = new double[steps];
        int[] counts = new int[steps];
        for (int i = 0; i < samples.length; i++) {
            int step = (int) Math.floor(i * (double) stepsPerSecond / rateHz + shift + 1e-12);
            sums[step] += samples[i] * samples[i];
            counts[step]++;
        }
        for (int step = 0; step < steps; step++) {
            sums[step] /= counts[step];
        }
        return sums;
    }

    private static PowerSteps added(double[] samples, double rateHz, int stepsPerSecond, boolean centred, int block) {
        PowerSteps steps = new PowerSteps(rateHz, stepsPerSecond, centred);
        for (int from = 0; from < samples.length; from += block) {
            double[] part = Arrays.copyOfRange(samples, from, Math.min(samples.length, from + block));
            steps.add(part, from, part.length, 1);
        }
        return steps;
    }

    /** Rates that steps divide and rates that they do not; each sample counts in one step, however blocks are cut. */
    @ParameterizedTest
    @CsvSource({
        "8000, 50, true, 1",
        "8000, 10, false, 333",
        "11025, 50, true, 4096",
        "22050, 40, false, 7",
        "44100, 50, true, 512",
        "44100.5, 50, false, 441"
    })
    void everySampleIsInTheStepOfItsTime(double rateHz, int stepsPerSecond, boolean centred, int block) {
        double[] samples = new Random(block).doubles(20_011, -1, 1).toArray();
        PowerSteps steps = added(samples, rateHz, stepsPerSecond, centred, block);
        assertThat(steps.means(samples.length, false))
                .containsExactly(bySampleTimes(samples, rateHz, stepsPerSecond, centred ? 0.5 : 0), within(1e-9));
    }

    /** The last step counts only where it is whole; one sample less and it is not. */
    @ParameterizedTest
    @CsvSource({"799, 0", "800, 1", "801, 1", "1599, 1", "1600, 2"})
    void aStepThatIsNotWholeIsLeftOut(int samples, int whole) {
        assertThat(added(ofOnes(samples), 8000, 10, false, 100).means(samples, true))
                .isEqualTo(ofOnes(whole));
    }

    private static double[] ofOnes(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** A song of an hour has more steps than any array that was made for one of minutes; channels add up. */
    @Test
    void longSoundsAndSeveralChannels() {
        double[] second = new double[8000];
        Arrays.fill(second, 0.5);
        PowerSteps steps = new PowerSteps(8000, 50, false);
        for (int i = 0; i < 100; i++) {
            steps.add(second, 8000L * i, 8000, 1);
            steps.add(second, 8000L * i, 8000, 1.41);
        }
        assertThat(steps.means(800_000, true)).hasSize(5000).containsOnly(new double[] {0.25 * 2.41}, within(1e-12));
        assertThat(new PowerSteps(8000, 50, true).means(0, true)).isEmpty();
    }
}
