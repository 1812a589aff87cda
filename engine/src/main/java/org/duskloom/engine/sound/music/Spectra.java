package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.sound.SoundFormat;

/**
 * Spectra of a sound that passes by, a hundred a second: the power in mel bands and in the twelve classes of pitch. The
 * sound is thinned out to 11 to 22 kHz first. Channels are gathered in two signals, whose powers are summed, so that
 * what is opposite in a pair does not vanish.
 */
final class Spectra {
    /** Classes of pitch in an octave. */
    static final int PITCHES = 12;

    private static final int SIZE = 512;
    private static final double LEAST_RATE_HZ = 11_025;
    private static final int FRAMES_PER_SECOND = 100;
    private static final int FRAMES_PER_CHUNK = 1 << 12;
    private static final int VALUES = MelBands.COUNT + PITCHES;

    /** An hour of powers is kept as logarithms of 16 bits, in steps of a five-hundredth: an error of 0.004 dB. */
    private static final double STEPS_PER_NEPER = 500;

    /** What is as soft as this is nothing; from here the codes reach up to e to the 86. */
    private static final double SOFTEST_NEPERS = -45;

    private static final float[] POWERS = powers();

    private static final double LOWEST_PITCH_HZ = 180;
    private static final double HIGHEST_PITCH_HZ = 2_000;
    private static final double PITCH_A_HZ = 440;

    private final int thinning;
    private final double rateHz;
    private final int hop;
    private final MelBands bands;
    private final int[] pitchOfBin;
    private final Fourier fourier = new Fourier(SIZE);
    private final double[] power = new double[SIZE / 2 + 1];
    private final double[] inBands = new double[MelBands.COUNT];
    private final double[] inPitches = new double[PITCHES];
    private final List<short[]> chunks = new ArrayList<>();
    private final double[] left = new double[4 * SIZE];
    private final double[] right = new double[4 * SIZE];
    private int filled = SIZE / 2;
    private int gathered;
    private double gatheredLeft;
    private double gatheredRight;
    private int frames;

    Spectra(SoundFormat format) {
        this.thinning = Math.max(1, (int) (format.rateHz() / LEAST_RATE_HZ));
        this.rateHz = format.rateHz() / thinning;
        this.hop = (int) Math.round(rateHz / FRAMES_PER_SECOND);
        this.bands = new MelBands(SIZE, rateHz);
        this.pitchOfBin = pitches(rateHz);
    }

    private static float[] powers() {
        float[] powers = new float[1 << 16];
        for (int i = 1; i < powers.length; i++) {
            powers[i] = (float) StrictMath.exp(SOFTEST_NEPERS + i / STEPS_PER_NEPER);
        }
        return powers;
    }

    private static short code(double power) {
        double place = power > 0 ? (StrictMath.log(power) - SOFTEST_NEPERS) * STEPS_PER_NEPER : 0;
        return (short) (Math.max(0, Math.min(POWERS.length - 1, Math.rint(place))) + Short.MIN_VALUE);
    }

    private static int[] pitches(double rateHz) {
        int[] pitches = new int[SIZE / 2 + 1];
        for (int k = 0; k < pitches.length; k++) {
            double hz = k * rateHz / SIZE;
            boolean counts = hz >= LOWEST_PITCH_HZ && hz <= HIGHEST_PITCH_HZ;
            double steps = counts ? PITCHES * StrictMath.log(hz / PITCH_A_HZ) / StrictMath.log(2) : 0;
            pitches[k] = counts ? Math.floorMod((int) Math.round(steps), PITCHES) : -1;
        }
        return pitches;
    }

    /** Takes the next samples of each channel. */
    void take(double[][] channels, int count) {
        for (int i = 0; i < count; i++) {
            double l = 0;
            double r = 0;
            for (int k = 0; k < channels.length; k += 2) {
                l += channels[k][i];
                r += k + 1 < channels.length ? channels[k + 1][i] : 0;
            }
            gatheredLeft += l;
            gatheredRight += r;
            if (++gathered == thinning) {
                put(gatheredLeft / thinning, gatheredRight / thinning);
                gathered = 0;
                gatheredLeft = 0;
                gatheredRight = 0;
            }
        }
    }

    /** Ends the sound: the last spectrum has its middle near the last sample. */
    void finish() {
        for (int i = 0; i < SIZE / 2; i++) {
            put(0, 0);
        }
        drain();
    }

    /** How many there are. */
    int count() {
        return frames;
    }

    /** How many a second. */
    double framesPerSecond() {
        return rateHz / hop;
    }

    /** The bands that were measured. */
    MelBands bands() {
        return bands;
    }

    /** Power in a band. */
    float band(int frame, int band) {
        return POWERS[chunks.get(frame / FRAMES_PER_CHUNK)[frame % FRAMES_PER_CHUNK * VALUES + band] - Short.MIN_VALUE];
    }

    /** Power of a class of pitch, A first. */
    float pitch(int frame, int pitch) {
        return band(frame, MelBands.COUNT + pitch);
    }

    private void put(double l, double r) {
        left[filled] = l;
        right[filled] = r;
        if (++filled == left.length) {
            drain();
        }
    }

    private void drain() {
        int from = 0;
        for (; from + SIZE <= filled; from += hop) {
            frame(from);
        }
        System.arraycopy(left, from, left, 0, filled - from);
        System.arraycopy(right, from, right, 0, filled - from);
        filled -= from;
    }

    private void frame(int from) {
        fourier.power(left, right, from, power);
        bands.sum(power, inBands);
        for (int i = 0; i < PITCHES; i++) {
            inPitches[i] = 0;
        }
        for (int k = 0; k < power.length; k++) {
            if (pitchOfBin[k] >= 0) {
                inPitches[pitchOfBin[k]] += power[k];
            }
        }
        if (frames % FRAMES_PER_CHUNK == 0) {
            chunks.add(new short[FRAMES_PER_CHUNK * VALUES]);
        }
        short[] chunk = chunks.get(frames / FRAMES_PER_CHUNK);
        int at = frames % FRAMES_PER_CHUNK * VALUES;
        for (int i = 0; i < MelBands.COUNT; i++) {
            chunk[at + i] = code(inBands[i]);
        }
        for (int i = 0; i < PITCHES; i++) {
            chunk[at + MelBands.COUNT + i] = code(inPitches[i]);
        }
        frames++;
    }
}
