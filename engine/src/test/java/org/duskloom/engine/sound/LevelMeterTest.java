package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of any measured sound, whatever is in it: ITU-R BS.1770-4 sums powers, and gates relative to them. */
class LevelMeterTest {
    private static final int RATE = 11_025;
    private static final double[] NOISE =
            new Random(3).doubles(3 * RATE, -0.3, 0.3).toArray();

    private static SoundLevels measured(int block, double[]... channels) {
        SoundFormat format = new SoundFormat("WAV", channels.length, RATE, "16-bit integers", 0, OptionalLong.empty());
        LevelMeter meter = new LevelMeter(format);
        for (int from = 0; from < channels[0].length; from += block) {
            int to = Math.min(channels[0].length, from + block);
            double[][] part = new double[channels.length][];
            for (int i = 0; i < part.length; i++) {
                part[i] = Arrays.copyOfRange(channels[i], from, to);
            }
            meter.take(part, to - from);
        }
        return meter.levels();
    }

    private static double[] times(double factor, double[] samples) {
        return Arrays.stream(samples).map(sample -> factor * sample).toArray();
    }

    private static double loudness(double[]... channels) {
        return measured(1000, channels).loudness().orElseThrow();
    }

    /** Twice the amplitude is 20 log10(2) = 6.0206 dB more, in the loudness and in each band at each step. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.25, 2, -1})
    void aFactorIsSoManyDecibels(double factor) {
        double decibels = 20 * Math.log10(Math.abs(factor));
        SoundLevels plain = measured(1000, NOISE);
        SoundLevels other = measured(1000, times(factor, NOISE));
        assertThat(other.loudness().orElseThrow()).isCloseTo(plain.loudness().orElseThrow() + decibels, within(1e-9));
        for (SoundBand band : SoundBand.values()) {
            for (int step = 1; step < plain.count(); step += 13) {
                assertThat(other.decibels(band, step)).isCloseTo(plain.decibels(band, step) + decibels, within(1e-5));
            }
        }
    }

    /** The same in both channels is twice the power, 3.0103 dB more; a silent second one adds nothing. */
    @Test
    void channelsAddTheirPowers() {
        double[] silence = new double[NOISE.length];
        assertThat(loudness(NOISE, NOISE)).isCloseTo(loudness(NOISE) + 10 * Math.log10(2), within(1e-9));
        assertThat(loudness(NOISE, silence)).isCloseTo(loudness(NOISE), within(1e-9));
        double[] other = new Random(5).doubles(NOISE.length, -0.1, 0.1).toArray();
        assertThat(loudness(NOISE, other)).isCloseTo(loudness(other, NOISE), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1", "37", "11025", "100000"})
    void blocksLeaveNoTraceThatCouldBeHeard(int block) {
        SoundLevels expected = measured(4096, NOISE);
        SoundLevels levels = measured(block, NOISE);
        assertThat(levels.seconds()).isEqualTo(3);
        assertThat(levels.count()).isEqualTo(expected.count());
        for (SoundBand band : SoundBand.values()) {
            for (int step = 0; step < levels.count(); step++) {
                assertThat(levels.decibels(band, step)).isCloseTo(expected.decibels(band, step), within(1e-5));
            }
        }
    }

    /** Silence before a song and after it does not make the song less loud: that is what the gates are for. */
    @Test
    void silenceRoundASongIsLeftOut() {
        double[] framed = new double[NOISE.length + 4 * RATE];
        System.arraycopy(NOISE, 0, framed, 2 * RATE, NOISE.length);
        assertThat(loudness(framed)).isCloseTo(loudness(NOISE), within(0.7));
        assertThat(measured(500, new double[RATE]).loudness()).isEmpty();
    }
}
