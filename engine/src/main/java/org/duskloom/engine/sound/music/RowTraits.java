package org.duskloom.engine.sound.music;

import java.util.Arrays;

/**
 * What is heard on the beats of a row and between them. In each of five curves (all bands by their logarithms; low,
 * middle and high bands and all of them by their amplitudes) how strong onsets are on the beats, and what share of that
 * lies half-way between them, at the first third, where even swing has nothing, and at the quarters.
 */
final class RowTraits {
    /** Frames round a beat in which its onset may lie. */
    private static final int REACH = 3;

    /** Beats are compared in stretches, since a row may change step in a pause. */
    private static final int STRETCH = 16;

    /** Two onsets a beat are usual. */
    private static final double USUAL_OCTAVES = 1;

    private static final double LEAST_PER_SECOND = 0.1;
    private static final double MIDDLE_PERIOD_SECONDS = 0.5;

    private final Onsets onsets;
    private final double[] frames;

    RowTraits(Onsets onsets, double[] frames) {
        this.onsets = onsets;
        this.frames = frames;
    }

    /** In the order of {@link RowScore#TRAITS}. */
    double[] of(double periodSeconds, double repeats) {
        double octaves = log2(periodSeconds / MIDDLE_PERIOD_SECONDS);
        double fill = log2(Math.max(LEAST_PER_SECOND, onsets.perSecond()) * periodSeconds);
        double[] traits = new double[RowScore.TRAITS.size()];
        double[] punch = on(onsets.punch(), 0);
        double[] low = on(onsets.low(), 0);
        double[] high = on(onsets.high(), 0);
        int at = 0;
        for (double trait : new double[] {
            octaves,
            octaves * octaves,
            fill,
            (fill - USUAL_OCTAVES) * (fill - USUAL_OCTAVES),
            repeats,
            backbeat(low, high),
            accent(punch, 3),
            accent(punch, 4),
            accent(punch, 8),
            accent(high, 2),
            accent(high, 8)
        }) {
            traits[at++] = trait;
        }
        for (double[] curve :
                new double[][] {onsets.strength(), onsets.low(), onsets.mid(), onsets.high(), onsets.punch()}) {
            double on = mean(on(curve, 0));
            traits[at++] = on;
            traits[at++] = share(mean(on(curve, 1 / 2.0)), on);
            traits[at++] = share(mean(on(curve, 1 / 3.0)), on);
            traits[at++] = share((mean(on(curve, 1 / 4.0)) + mean(on(curve, 3 / 4.0))) / 2, on);
        }
        return traits;
    }

    private static double log2(double value) {
        return StrictMath.log(value) / StrictMath.log(2);
    }

    /** The strength at a share of the way from each beat to the next. */
    private double[] on(double[] curve, double share) {
        double[] strengths = new double[Math.max(0, frames.length - 1)];
        for (int i = 0; i < strengths.length; i++) {
            strengths[i] = Windows.peak(curve, frames[i] + share * (frames[i + 1] - frames[i]), REACH);
        }
        return strengths;
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(0);
    }

    private static double share(double part, double rest) {
        return part > 0 ? part / (part + rest) : 0;
    }

    /** Whether low and high onsets take turns, as kick and snare do: 1 if they do, -1 if they go together. */
    private static double backbeat(double[] low, double[] high) {
        double sum = 0;
        int stretches = 0;
        for (int from = 0; from + STRETCH <= low.length; from += STRETCH) {
            sum -= unevenness(low, from) * unevenness(high, from);
            stretches++;
        }
        return stretches == 0 ? 0 : sum / stretches;
    }

    private static double unevenness(double[] values, int from) {
        double[] sums = new double[2];
        for (int i = from; i < from + STRETCH; i++) {
            sums[i % 2] += values[i];
        }
        return sums[0] + sums[1] > 0 ? (sums[0] - sums[1]) / (sums[0] + sums[1]) : 0;
    }

    /** How much stronger every so-manyth beat is, from whichever first one, as the share that it explains: 0 to 1. */
    private static double accent(double[] values, int length) {
        double best = 0;
        for (int first = 0; first < length && values.length > length; first++) {
            best = Math.max(best, Accents.of(values, length, first) / Math.sqrt(values.length));
        }
        return best;
    }
}
