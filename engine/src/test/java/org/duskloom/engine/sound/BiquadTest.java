package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Filters against the Butterworth response: S. Butterworth, Experimental Wireless 7, 1930, from memory. */
class BiquadTest {
    private static double power(Biquad[] sections, double hz, double rateHz) {
        double gain = sections[0].gainAt(hz, rateHz) * sections[1].gainAt(hz, rateHz);
        return gain * gain;
    }

    /** Of fourth order 1 / (1 + w^8), where the bilinear transform has w = tan(pi f/fs) / tan(pi corner/fs). */
    @ParameterizedTest
    @CsvSource({"150, 8000", "150, 44100", "2000, 8000", "2000, 44100", "2000, 192000"})
    void fallsAsButterworthSaysAndBothHalvesAreTheWhole(double cornerHz, double rateHz) {
        Biquad[] low = Biquad.lowPass(cornerHz, rateHz);
        Biquad[] high = Biquad.highPass(cornerHz, rateHz);
        for (double hz = 20; hz < rateHz / 2; hz *= 1.3) {
            double w = Math.tan(Math.PI * hz / rateHz) / Math.tan(Math.PI * cornerHz / rateHz);
            double passed = 1 / (1 + Math.pow(w, 8));
            assertThat(power(low, hz, rateHz)).as("%s Hz", hz).isCloseTo(passed, within(1e-9));
            assertThat(power(high, hz, rateHz)).as("%s Hz", hz).isCloseTo(1 - passed, within(1e-9));
        }
    }

    /** By the difference equation, section after section, with everything that was kept. */
    private static double[] byTheEquation(Biquad section, double[] x) {
        double[] y = new double[x.length];
        for (int n = 0; n < x.length; n++) {
            y[n] = section.b0() * x[n];
            if (n > 0) {
                y[n] += section.b1() * x[n - 1] - section.a1() * y[n - 1];
            }
            if (n > 1) {
                y[n] += section.b2() * x[n - 2] - section.a2() * y[n - 2];
            }
        }
        return y;
    }

    /** In blocks of any size, in place or not, the same as the equation over the whole. */
    @ParameterizedTest
    @ValueSource(ints = {1, 7, 256, 1000})
    void runsTheEquationHoweverTheBlocksAreCut(int block) {
        Biquad[] sections = {KWeighting.at(48_000)[0], Biquad.highPass(300, 48_000)[1]};
        double[] samples = new Random(4).doubles(1000, -1, 1).toArray();
        double[] expected = byTheEquation(sections[1], byTheEquation(sections[0], samples));
        Biquad.Pair pair = new Biquad.Pair(sections);
        double[] filtered = new double[samples.length];
        for (int from = 0; from < samples.length; from += block) {
            double[] part = Arrays.copyOfRange(samples, from, Math.min(samples.length, from + block));
            pair.run(part, part, part.length);
            System.arraycopy(part, 0, filtered, from, part.length);
        }
        for (int i = 0; i < expected.length; i++) {
            assertThat(filtered[i]).as("sample %d", i).isCloseTo(expected[i], within(1e-12));
        }
    }

    /** After a sound has died away the filter is at rest: it never goes on with numbers too small to reckon fast. */
    @Test
    void comesToRestInSilence() {
        Biquad.Pair pair = new Biquad.Pair(Biquad.lowPass(150, 48_000));
        double[] block = new double[4800];
        block[0] = 1;
        for (int i = 0; i < 20; i++) {
            pair.run(block, block, block.length);
            Arrays.fill(block, i < 19 ? 0 : block[0]);
        }
        pair.run(new double[4800], block, block.length);
        assertThat(Arrays.stream(block).filter(sample -> sample != 0).count()).isZero();
    }
}
