package org.duskloom.engine.sound.music;

/**
 * A row of beats that was tried, and what speaks for it.
 *
 * @param periodSeconds the period that it was made for
 * @param frames where the beats lie, in frames of the onsets
 * @param repeats how well the song repeats after that period and its multiples, at best 1
 * @param all what the onsets of all bands say
 * @param low what the amplitudes of the low bands say
 * @param punch what the amplitudes of all bands say
 */
record BeatRow(double periodSeconds, double[] frames, double repeats, Fit all, Fit low, Fit punch) {
    /** Frames round a beat in which its onset may lie. */
    private static final int REACH = 3;

    private static final int STRETCH = 16;

    /**
     * How a curve lies under the beats.
     *
     * @param on its mean on the beats
     * @param between its mean half-way between them, over both
     * @param thirds its mean at a third and two thirds of the way, over both
     * @param alternation how much stronger every other beat is, over both
     */
    record Fit(double on, double between, double thirds, double alternation) {
        static Fit of(double[] curve, double[] frames) {
            double on = mean(curve, frames, 0);
            double between = mean(curve, frames, 0.5);
            double thirds = (mean(curve, frames, 1 / 3.0) + mean(curve, frames, 2 / 3.0)) / 2;
            return new Fit(on, ratio(between, on + between), ratio(thirds, on + thirds), unevenness(curve, frames));
        }
    }

    static BeatRow of(Onsets onsets, double repeats, double periodSeconds, double[] frames) {
        return new BeatRow(
                periodSeconds,
                frames,
                repeats,
                Fit.of(onsets.strength(), frames),
                Fit.of(onsets.low(), frames),
                Fit.of(onsets.punch(), frames));
    }

    /** The row half a step later. */
    double[] shifted() {
        double[] moved = new double[Math.max(0, frames.length - 1)];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = (frames[i] + frames[i + 1]) / 2;
        }
        return moved;
    }

    private static double ratio(double part, double whole) {
        return whole > 0 ? part / whole : 0;
    }

    /** Mean strength at a share of the way from each beat to the next. */
    private static double mean(double[] curve, double[] frames, double share) {
        double sum = 0;
        for (int i = 0; i + 1 < frames.length; i++) {
            sum += Windows.peak(curve, frames[i] + share * (frames[i + 1] - frames[i]), REACH);
        }
        return frames.length < 2 ? 0 : sum / (frames.length - 1);
    }

    /** In stretches of sixteen beats, since a row may change step in a pause. */
    private static double unevenness(double[] curve, double[] frames) {
        double difference = 0;
        double whole = 0;
        for (int from = 0; from + STRETCH <= frames.length; from += STRETCH) {
            double[] sums = new double[2];
            for (int i = 0; i < STRETCH; i++) {
                sums[i % 2] += Windows.peak(curve, frames[from + i], REACH);
            }
            difference += Math.abs(sums[0] - sums[1]);
            whole += sums[0] + sums[1];
        }
        return ratio(difference, whole);
    }
}
