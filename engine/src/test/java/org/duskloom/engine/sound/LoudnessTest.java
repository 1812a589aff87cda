package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoudnessTest {
    private static final double TOLERANCE_LU = 0.1;

    /**
     * EBU Tech 3341 (v4, 2023), minimum requirements test signals 1 to 5: a sine of 1 kHz in both channels, levels in
     * dBFS of the peak and their seconds. Tolerance 0.1 LU. ffmpeg's ebur128 agrees.
     */
    @ParameterizedTest
    @CsvSource({
        "-23 20, -23",
        "-33 20, -33",
        "-36 10 -23 60 -36 10, -23",
        "-72 10 -36 10 -23 60 -36 10 -72 10, -23",
        "-26 20 -20 20.1 -26 20, -23"
    })
    void measuresTheSignalsOfTheUnion(String levels, double lufs) {
        for (double rateHz : new double[] {48_000, 44_100, 8_000}) {
            assertThat(stereo(rateHz, levels)).isCloseTo(lufs, within(TOLERANCE_LU));
        }
    }

    /** BS.1770-4: 997 Hz at full scale in the left channel alone gives -3.01 LUFS. */
    @Test
    void measuresTheSineOfTheRecommendation() {
        double[] full = {1, 0};
        for (double rateHz : new double[] {8_000, 44_100, 48_000, 96_000}) {
            assertThat(tone(rateHz, 0, 997, full, 5).getAsDouble()).isCloseTo(-3.01, within(0.02));
        }
    }

    /** EBU Tech 3341 signal 6: surround; L and R -28, C -24, surrounds -30 dBFS give -23 LUFS. */
    @Test
    void weighsTheSurrounds() {
        double[] peaks = {-28, -28, -24, Double.NEGATIVE_INFINITY, -30, -30};
        double[] factors =
                Arrays.stream(peaks).map(peak -> Math.pow(10, peak / 20)).toArray();
        assertThat(tone(48_000, 0x3F, 1_000, factors, 20).getAsDouble()).isCloseTo(-23, within(TOLERANCE_LU));
        assertThat(tone(48_000, 0, 1_000, factors, 20).getAsDouble()).isCloseTo(-23, within(TOLERANCE_LU));
    }

    /** The channel for effects of low frequency counts for nothing (BS.1770-4, Annex 1). */
    @Test
    void leavesTheEffectsChannelOut() {
        assertThat(tone(48_000, 0x3F, 60, new double[] {0, 0, 0, 1, 0, 0}, 2)).isEmpty();
    }

    @Test
    void silenceAndTheShortestHaveNone() {
        assertThat(tone(48_000, 0, 1_000, new double[] {0}, 2)).isEmpty();
        assertThat(tone(48_000, 0, 1_000, new double[] {1}, 0.39)).isEmpty();
        assertThat(tone(48_000, 0, 1_000, new double[] {1}, 0.41)).isPresent();
        assertThat(Loudness.integrated(new double[0])).isEmpty();
    }

    /** The gates let through what is over them, not what is at them: a block of -70 LUFS exactly is silent. */
    @Test
    void whatIsAtAGateStaysOutside() {
        double atGate = 1e-8;
        double above = 1e-6;
        for (int i = 0; i < 200; i++) {
            double middle = (atGate + above) / 2;
            if (Loudness.lufs(middle) > Loudness.SILENCE_LUFS) {
                above = middle;
            } else {
                atGate = middle;
            }
        }
        double[] steps = new double[4];
        Arrays.fill(steps, atGate);
        assertThat(Loudness.integrated(steps)).isEmpty();
        Arrays.fill(steps, above);
        assertThat(Loudness.integrated(steps)).isPresent();
    }

    private static double stereo(double rateHz, String levels) {
        double[] numbers = Arrays.stream(levels.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        LevelMeter meter = new LevelMeter(format(rateHz, 2, 0));
        long at = 0;
        for (int i = 0; i < numbers.length; i += 2) {
            int count = (int) Math.round(numbers[i + 1] * rateHz);
            double[] samples = sine(rateHz, 1_000, Math.pow(10, numbers[i] / 20), at, count);
            meter.take(new double[][] {samples, samples}, count);
            at += count;
        }
        return meter.levels().loudness().getAsDouble();
    }

    private static OptionalDouble tone(double rateHz, int speakers, double hz, double[] factors, double seconds) {
        int count = (int) Math.round(seconds * rateHz);
        double[][] channels = new double[factors.length][];
        for (int i = 0; i < factors.length; i++) {
            channels[i] = sine(rateHz, hz, factors[i], 0, count);
        }
        LevelMeter meter = new LevelMeter(format(rateHz, factors.length, speakers));
        meter.take(channels, count);
        return meter.levels().loudness();
    }

    private static double[] sine(double rateHz, double hz, double factor, long from, int count) {
        double[] samples = new double[count];
        for (int i = 0; i < count; i++) {
            samples[i] = factor * Math.sin(2 * Math.PI * hz * (from + i) / rateHz);
        }
        return samples;
    }

    private static SoundFormat format(double rateHz, int channels, int speakers) {
        return new SoundFormat("WAV", channels, rateHz, "", speakers, OptionalLong.empty());
    }
}
