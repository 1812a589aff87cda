package org.duskloom.engine.sound;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/**
 * How much there is of a sound, and of its bands, on a grid of {@value #STEPS_PER_SECOND} steps a second. The level at
 * a step is that of the power in the 50 ms round it, weighted as a triangle. Its value is mapped to 0..1: a level that
 * a twentieth of the song reaches gives 1, {@value #RANGE_DB} dB under it and less give 0. Of the song only what is not
 * silent counts for the twentieth, and where nothing is, all values are 0. Immutable. The same sound gives the same
 * bits on every JDK.
 */
public final class SoundLevels {
    /** Steps a second. */
    public static final int STEPS_PER_SECOND = 100;

    /** From the value 0 to the value 1. */
    public static final int RANGE_DB = 40;

    private static final double LOUDEST_SHARE = 0.05;

    /** A block of samples: small enough for the nearest cache. */
    private static final int BLOCK_FRAMES = 4096;

    /** Weights of the steps before, at and after a step; a period of 40 Hz does not show in their mean. */
    private static final int[] TRIANGLE = {1, 2, 3, 2, 1};

    private static final int TRIANGLE_SUM = 9;

    private final double seconds;
    private final OptionalDouble loudness;
    private final float[][] decibels;
    private final double[] topDecibels;

    /** @param powers mean power of each step, for each band */
    SoundLevels(double seconds, OptionalDouble loudness, double[][] powers) {
        this.seconds = seconds;
        this.loudness = loudness;
        this.decibels = new float[powers.length][];
        this.topDecibels = new double[powers.length];
        for (int i = 0; i < powers.length; i++) {
            decibels[i] = smoothed(powers[i]);
            topDecibels[i] = top(decibels[i]);
        }
    }

    /**
     * Measures a whole file.
     *
     * @param shownName its name as the user would type it
     * @param problems where errors and warnings go
     * @return the levels; nothing if an error was added
     */
    public static Optional<SoundLevels> read(Path file, String shownName, Problems problems) {
        Optional<SoundStream> opened = SoundStream.open(file, shownName, problems);
        if (opened.isEmpty()) {
            return Optional.empty();
        }
        try (SoundStream sound = opened.get()) {
            LevelMeter meter = new LevelMeter(sound.format());
            double[][] block = new double[sound.format().channels()][BLOCK_FRAMES];
            for (int count = sound.read(block); count > 0; count = sound.read(block)) {
                meter.take(block, count);
            }
            return sound.failed() ? Optional.empty() : Optional.of(meter.levels());
        } catch (IOException e) {
            problems.error(Location.ofFile(shownName), "cannot be closed: " + e.getMessage());
            return Optional.empty();
        }
    }

    /** How long the sound is. */
    public double seconds() {
        return seconds;
    }

    /** Its integrated loudness by BS.1770, in LUFS; nothing for silence and for less than 400 ms. */
    public OptionalDouble loudness() {
        return loudness;
    }

    /** How many steps there are: step k is the instant k / {@value #STEPS_PER_SECOND} s. */
    public int count() {
        return decibels[0].length;
    }

    /** The level at a step in LUFS, which for a band are without the ear's weighting; minus infinity in silence. */
    public double decibels(SoundBand band, int step) {
        return decibels[band.ordinal()][step];
    }

    /** The mapped level at a step, 0 to 1; 0 before the first step and after the last. */
    public double value(SoundBand band, int step) {
        if (step < 0 || step >= count()) {
            return 0;
        }
        double under = topDecibels[band.ordinal()] - decibels[band.ordinal()][step];
        return Math.max(0, Math.min(1, 1 - under / RANGE_DB));
    }

    /** The mapped level at any time: on the straight line between those of the steps before and after. */
    public double valueAt(SoundBand band, double seconds) {
        double place = Math.max(-1, Math.min(count(), seconds * STEPS_PER_SECOND));
        int before = (int) Math.floor(place);
        double share = place - before;
        double start = value(band, before);
        return start + share * (value(band, before + 1) - start);
    }

    private static float[] smoothed(double[] powers) {
        float[] levels = new float[powers.length];
        for (int i = 0; i < levels.length; i++) {
            double sum = 0;
            for (int k = 0; k < TRIANGLE.length; k++) {
                int at = i + k - TRIANGLE.length / 2;
                sum += at < 0 || at >= powers.length ? 0 : powers[at] * TRIANGLE[k];
            }
            levels[i] = (float) Loudness.lufs(sum / TRIANGLE_SUM);
        }
        return levels;
    }

    /** The level that a twentieth of what is not silent reaches; infinity where all is silent. */
    private static double top(float[] levels) {
        float[] heard = new float[levels.length];
        int count = 0;
        for (float level : levels) {
            if (level > Loudness.SILENCE_LUFS) {
                heard[count++] = level;
            }
        }
        Arrays.sort(heard, 0, count);
        int louder = (int) Math.ceil(count * LOUDEST_SHARE);
        return count == 0 ? Double.POSITIVE_INFINITY : heard[count - louder];
    }
}
