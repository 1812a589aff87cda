package org.duskloom.engine.sound.music;

import java.util.Arrays;

/**
 * How strongly something begins, frame by frame: the rectified rise of the compressed power in mel bands, summed
 * (spectral flux, S. Dixon, DAFx-06, with the L1 norm). A rise is one over what the band and its neighbours had two
 * frames ago, so a voice that slides from band to band begins nothing.
 */
final class Onsets {
    /** Frames looked back for a rise: an attack takes longer than one. */
    private static final int LAG = 2;

    /** What is so far under the loudest of all bands is no sound: 60 dB. */
    private static final double FLOOR = 1e-6;

    private static final double LOW_BELOW_HZ = 200;
    private static final double HIGH_ABOVE_HZ = 2_000;
    private static final double LOUDEST_FROM = 0.95;
    private static final double SMOOTHING_SECONDS = 0.015;
    private static final double TREND_SECONDS = 0.6;
    private static final double DYNAMICS_SECONDS = 4;

    /** So much of the whole song's strength counts for that of its quiet places. */
    private static final double DYNAMICS_SHARE = 0.25;

    /** What is half as strong as the root mean square is an onset. */
    private static final double LEAST_ONSET = 0.5;

    private static final double BIN_SECONDS = 2;

    /** Few bands are low, and what begins there counts. */
    private static final double LOW_WEIGHT = 2;

    private final double framesPerSecond;
    private final double[] strength;
    private final double[] low;
    private final double[] punch;
    private final double[] mid;
    private final double[] high;
    private final double rise;
    private final double perSecond;

    private Onsets(
            double framesPerSecond,
            double rise,
            double[] strength,
            double[] low,
            double[] punch,
            double[] mid,
            double[] high) {
        this.mid = mid;
        this.high = high;
        this.rise = rise;
        this.framesPerSecond = framesPerSecond;
        this.strength = strength;
        this.low = low;
        this.punch = punch;
        this.perSecond = perSecond(strength, framesPerSecond);
    }

    static Onsets of(Spectra spectra) {
        int count = spectra.count();
        double[] all = new double[count];
        double[] low = new double[count];
        double[] punch = new double[count];
        double[] mid = new double[count];
        double[] high = new double[count];
        int belowHigh = bandsBelow(HIGH_ABOVE_HZ, spectra.bands());
        double[] floors = floors(spectra);
        int lowBands = bandsBelow(LOW_BELOW_HZ, spectra.bands());
        double[][] levels = new double[LAG + 1][MelBands.COUNT];
        double[][] amplitudes = new double[LAG + 1][MelBands.COUNT];
        for (int n = 0; n < count; n++) {
            double[] now = levels[n % (LAG + 1)];
            double[] before = levels[(n + 1) % (LAG + 1)];
            double[] loud = amplitudes[n % (LAG + 1)];
            double[] wasLoud = amplitudes[(n + 1) % (LAG + 1)];
            for (int b = 0; b < MelBands.COUNT; b++) {
                loud[b] = Math.sqrt(spectra.band(n, b));
                now[b] = StrictMath.log1p(spectra.band(n, b) / floors[b]);
            }
            if (n >= LAG) {
                all[n] = rise(before, now, lowBands);
                low[n] = flux(wasLoud, loud, lowBands);
                punch[n] = flux(wasLoud, loud, MelBands.COUNT);
                double below = flux(wasLoud, loud, belowHigh);
                mid[n] = below - low[n];
                high[n] = punch[n] - below;
            }
        }
        double rate = spectra.framesPerSecond();
        return new Onsets(
                rate,
                rise(all),
                shaped(all, rate),
                shaped(low, rate),
                shaped(punch, rate),
                shaped(mid, rate),
                shaped(high, rate));
    }

    /** What rises over what a band and its neighbours had. */
    private static double rise(double[] before, double[] now, int lowBands) {
        double sum = 0;
        for (int b = 0; b < MelBands.COUNT; b++) {
            double was = before[b];
            was = b > 0 ? Math.max(was, before[b - 1]) : was;
            was = b < MelBands.COUNT - 1 ? Math.max(was, before[b + 1]) : was;
            double rise = Math.max(0, now[b] - was);
            sum += b < lowBands ? LOW_WEIGHT * rise : rise;
        }
        return sum;
    }

    private static int bandsBelow(double hertz, MelBands bands) {
        int count = 0;
        while (count < MelBands.COUNT && bands.centreHz(count) < hertz) {
            count++;
        }
        return count;
    }

    /** The sum of what rises in the first bands: SF(n) = sum H(|X(n,k)| - |X(n-1,k)|), H(x) = (x + |x|) / 2. */
    static double flux(double[] before, double[] now, int bands) {
        double sum = 0;
        for (int b = 0; b < bands; b++) {
            sum += Math.max(0, now[b] - before[b]);
        }
        return sum;
    }

    /** What counts as little in each band: its median over the song. */
    private static double[] floors(Spectra spectra) {
        double[] floors = new double[MelBands.COUNT];
        float[] values = new float[spectra.count()];
        double loudest = 0;
        for (int b = 0; b < floors.length; b++) {
            for (int n = 0; n < values.length; n++) {
                values[n] = spectra.band(n, b);
            }
            Arrays.sort(values);
            floors[b] = values.length == 0 ? 0 : values[values.length / 2];
            loudest = values.length == 0 ? 0 : Math.max(loudest, values[values.length - 1]);
        }
        for (int b = 0; b < floors.length; b++) {
            floors[b] = Math.max(floors[b], Math.max(loudest * FLOOR, Float.MIN_NORMAL));
        }
        return floors;
    }

    /** Smoothed, without its trend, nowhere below 0, and of the same strength in loud and quiet places. */
    private static double[] shaped(double[] raw, double rate) {
        double[] smooth = Windows.gaussian(raw, SMOOTHING_SECONDS * rate);
        double[] trend = Windows.mean(smooth, (int) Math.round(TREND_SECONDS * rate));
        double[] squares = new double[raw.length];
        double sum = 0;
        for (int n = 0; n < raw.length; n++) {
            smooth[n] = Math.max(0, smooth[n] - trend[n]);
            squares[n] = smooth[n] * smooth[n];
            sum += squares[n];
        }
        double whole = raw.length == 0 ? 0 : DYNAMICS_SHARE * sum / raw.length;
        double[] local = Windows.mean(squares, (int) Math.round(DYNAMICS_SECONDS * rate));
        for (int n = 0; n < raw.length; n++) {
            double size = Math.sqrt((1 - DYNAMICS_SHARE) * local[n] + whole);
            smooth[n] = size > 0 ? smooth[n] / size : 0;
        }
        return smooth;
    }

    /** What a twentieth of the frames exceeds, in nepers of power summed over bands. */
    private static double rise(double[] all) {
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 0 : sorted[(int) (LOUDEST_FROM * (sorted.length - 1))];
    }

    private static double perSecond(double[] strength, double framesPerSecond) {
        int bin = (int) Math.round(BIN_SECONDS * framesPerSecond);
        int count = 0;
        int bins = 0;
        int last = -1;
        for (int n = 1; n + 1 < strength.length; n++) {
            if (strength[n] > LEAST_ONSET && strength[n] > strength[n - 1] && strength[n] >= strength[n + 1]) {
                count++;
                bins += n / bin > last ? 1 : 0;
                last = n / bin;
            }
        }
        return bins == 0 ? 0 : count / (bins * BIN_SECONDS);
    }

    /** How much rises at all: a tone that only goes on has next to nothing. */
    double rise() {
        return rise;
    }

    int count() {
        return strength.length;
    }

    double framesPerSecond() {
        return framesPerSecond;
    }

    /** Strength of all bands; its root mean square is about 1. */
    double[] strength() {
        return strength;
    }

    /** Strength of the low bands alone. */
    double[] low() {
        return low;
    }

    /** The rise of amplitudes in all bands. */
    double[] punch() {
        return punch;
    }

    /** The rise of amplitudes between the low bands and the high ones. */
    double[] mid() {
        return mid;
    }

    /** The rise of amplitudes in the high bands. */
    double[] high() {
        return high;
    }

    /** How many a second there are where something begins at all: leads and pauses do not count. */
    double perSecond() {
        return perSecond;
    }
}
