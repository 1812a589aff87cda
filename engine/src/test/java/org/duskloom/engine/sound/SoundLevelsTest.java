package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SoundLevelsTest {
    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    /** A Butterworth filter of fourth order passes what is two octaves inside, and takes 48 dB of what is outside. */
    @ParameterizedTest
    @CsvSource({"40, LOW", "550, MID", "7000, HIGH"})
    void findsATonesBand(double hz, SoundBand own) throws IOException {
        SoundLevels levels = measured(44_100, 1, 1, sine(hz, 0.5));
        double expected = 10 * Math.log10(0.125) - 0.691;
        for (SoundBand band : List.of(SoundBand.LOW, SoundBand.MID, SoundBand.HIGH)) {
            double level = levels.decibels(band, 50);
            if (band == own) {
                assertThat(level).isCloseTo(expected, within(0.3));
            } else {
                assertThat(level).isLessThan(expected - 40);
            }
        }
    }

    /** Where bands meet, each has half the power. */
    @ParameterizedTest
    @CsvSource({"150, LOW, MID", "2000, MID, HIGH"})
    void bandsMeetAtTheirCorners(double hz, SoundBand below, SoundBand above) throws IOException {
        SoundLevels levels = measured(48_000, 1, 1, sine(hz, 0.5));
        double half = 10 * Math.log10(0.125 / 2) - 0.691;
        assertThat(levels.decibels(below, 50)).isCloseTo(half, within(0.2));
        assertThat(levels.decibels(above, 50)).isCloseTo(half, within(0.2));
    }

    /** 1000 Hz by steps of 10 dB; a twentieth of the time is 1 s of 20. */
    @Test
    void mapsTheLoudestTwentiethToOneAndFortyDecibelsUnderItToZero() throws IOException {
        SoundLevels levels = measured(8_000, 1, 20, t -> {
            double decibels = t < 1.5 ? 0 : t < 5 ? -10 : t < 10 ? -20 : t < 15 ? -30 : -50;
            return Math.pow(10, decibels / 20) * Math.sin(2 * Math.PI * 1000 * t);
        });
        for (SoundBand band : List.of(SoundBand.ALL, SoundBand.MID)) {
            assertThat(levels.valueAt(band, 0.7)).isEqualTo(1);
            assertThat(levels.valueAt(band, 3)).isCloseTo(0.75, within(0.002));
            assertThat(levels.valueAt(band, 8)).isCloseTo(0.5, within(0.002));
            assertThat(levels.valueAt(band, 12)).isCloseTo(0.25, within(0.002));
            assertThat(levels.valueAt(band, 17)).isZero();
        }
    }

    /** Less than a twentieth at the top is more than 1 asks for, and stays 1. */
    @Test
    void aSingleHitDoesNotDimTheSong() throws IOException {
        SoundLevels levels = measured(8_000, 1, 20, t -> (t < 0.5 ? 1 : 0.1) * Math.sin(2 * Math.PI * 1000 * t));
        assertThat(levels.valueAt(SoundBand.ALL, 0.2)).isEqualTo(1);
        assertThat(levels.valueAt(SoundBand.ALL, 10)).isCloseTo(1, within(1e-3));
    }

    /** One stroke of a bell in a minute of silence is the loudest that there is. */
    @Test
    void silenceDoesNotCountForTheTwentieth() throws IOException {
        SoundLevels levels = measured(8_000, 1, 60, t -> t >= 30 && t < 30.3 ? Math.sin(2 * Math.PI * 1000 * t) : 0);
        assertThat(levels.valueAt(SoundBand.ALL, 30.15)).isCloseTo(1, within(1e-6));
        assertThat(levels.valueAt(SoundBand.ALL, 29)).isZero();
        assertThat(levels.valueAt(SoundBand.ALL, 31)).isZero();
    }

    @Test
    void silenceIsZeroThroughout() throws IOException {
        SoundLevels levels = measured(48_000, 2, 1, t -> 0);
        assertThat(levels.loudness()).isEmpty();
        for (SoundBand band : SoundBand.values()) {
            for (int i = 0; i < levels.count(); i++) {
                assertThat(levels.value(band, i)).isZero();
            }
        }
    }

    /** A step is the middle of what it measures: a sound from 0.5 s on is half there at 0.5 s. */
    @ParameterizedTest
    @ValueSource(ints = {8_000, 11_025, 44_100, 96_000})
    void aStepLiesInTheMiddleOfWhatItMeasures(int rate) throws IOException {
        SoundLevels levels = measured(rate, 1, 1, t -> t < 0.5 ? 0 : Math.sin(2 * Math.PI * 1000 * t));
        double whole = levels.decibels(SoundBand.ALL, 80);
        assertThat(levels.decibels(SoundBand.ALL, 50)).isCloseTo(whole - 3.0, within(0.2));
        assertThat(levels.decibels(SoundBand.ALL, 47)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(levels.decibels(SoundBand.ALL, 53)).isCloseTo(whole, within(0.2));
    }

    @Test
    void goesStraightFromStepToStep() throws IOException {
        SoundLevels levels = measured(8_000, 1, 2, t -> (1 + Math.sin(20 * t)) / 2 * Math.sin(3000 * t));
        double at = levels.value(SoundBand.ALL, 70);
        double next = levels.value(SoundBand.ALL, 71);
        assertThat(levels.valueAt(SoundBand.ALL, 0.70)).isCloseTo(at, within(1e-12));
        assertThat(levels.valueAt(SoundBand.ALL, 0.7025)).isCloseTo(0.75 * at + 0.25 * next, within(1e-12));
    }

    @Test
    void thereIsNothingBeforeAndAfterTheSong() throws IOException {
        SoundLevels levels = measured(8_000, 1, 0.5, sine(1000, 1));
        assertThat(levels.seconds()).isEqualTo(0.5);
        assertThat(levels.count()).isEqualTo(51);
        for (double t : new double[] {-1e9, -0.01, 0.52, 1e9, Double.MAX_VALUE}) {
            assertThat(levels.valueAt(SoundBand.ALL, t)).isZero();
        }
    }

    /** The power of the channels is summed: what is opposite in two does not vanish. */
    @Test
    void oppositeChannelsDoNotVanish() throws IOException {
        byte[] file = WavBytes.of(8_000, 2, 1, sine(1000, 0.5));
        byte[] opposite = file.clone();
        for (int i = 44; i < file.length; i += 4) {
            int value = -(short) (file[i] & 0xFF | file[i + 1] << 8);
            opposite[i] = (byte) value;
            opposite[i + 1] = (byte) (value >> 8);
        }
        assertThat(measured(opposite).decibels(SoundBand.MID, 50))
                .isCloseTo(measured(file).decibels(SoundBand.MID, 50), within(0.01));
    }

    /** Worst cases of hearing: one sample, everything clipped, a constant. */
    @Test
    void oddSoundsHaveLevelsToo() throws IOException {
        assertThat(measured(8_000, 1, 1 / 8000.0, t -> 0.5).count()).isEqualTo(1);
        assertThat(measured(44_100, 1, 1, t -> Math.signum(Math.sin(600 * t))).value(SoundBand.ALL, 50))
                .isGreaterThan(0.95);
        SoundLevels constant = measured(44_100, 1, 3, t -> 0.8);
        assertThat(constant.decibels(SoundBand.ALL, 250)).isLessThan(-100);
    }

    @Test
    void aSoundThatIsRefusedHasNone() throws IOException {
        Path file = Files.write(folder.resolve("song.mp3"), new byte[] {'I', 'D', '3'});
        assertThat(SoundLevels.read(file, "song.mp3", problems)).isEmpty();
        assertThat(problems.inFileOrder())
                .extracting(Problem::message)
                .containsExactly("is an MP3 file; WAV, AIFF and AU are read");
    }

    /** Fixed bits: any JDK, any machine. Whoever changes a filter on purpose changes them. */
    @Test
    void givesTheSameBitsEverywhere() throws IOException {
        SoundLevels levels = measured(44_100, 2, 3, t -> {
            // Only arithmetic that is exact everywhere.
            double phase = t * 220 - Math.floor(t * 220);
            return (phase < 0.5 ? phase : phase - 1) * (1 - (t - Math.floor(t)));
        });
        long bits = 17;
        for (SoundBand band : SoundBand.values()) {
            for (int i = 0; i < levels.count(); i++) {
                bits = 31 * bits + Double.doubleToLongBits(levels.value(band, i));
            }
        }
        assertThat(Long.toHexString(bits)).isEqualTo("9733d4db86f331a0");
        assertThat(Double.toHexString(levels.loudness().getAsDouble())).isEqualTo("-0x1.9d200b2f18447p3");
    }

    private SoundLevels measured(int rate, int channels, double seconds, DoubleUnaryOperator sample)
            throws IOException {
        return measured(WavBytes.of(rate, channels, seconds, sample));
    }

    private SoundLevels measured(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("song.wav"), bytes);
        return SoundLevels.read(file, "song.wav", problems).orElseThrow();
    }

    private static DoubleUnaryOperator sine(double hz, double factor) {
        return t -> factor * Math.sin(2 * Math.PI * hz * t);
    }
}
