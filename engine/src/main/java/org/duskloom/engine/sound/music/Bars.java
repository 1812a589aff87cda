package org.duskloom.engine.sound.music;

import java.util.List;

/**
 * Where bars start, from accents: what begins low or loud, and where the harmony changes. For each length and each
 * first beat, how much stronger the accents are on the bars' first beats than on the others, in standard errors.
 *
 * @param beats how many beats a bar has
 * @param first which beat is the first to start a bar
 * @param confidence 0 to 1: how far the best is from the next
 */
record Bars(int beats, int first, double confidence) {
    private static final List<Integer> USUAL = List.of(4, 3);
    private static final double HARMONY_WEIGHT = 1.2;
    private static final double LOW_WEIGHT = 1;
    private static final double PUNCH_WEIGHT = 0.6;

    /** Of two lengths that say the same, the more usual one. */
    private static final double FOUR_BONUS = 1;

    private static final int REACH = 3;

    /** @param wishes may say the length, and that the first beat starts a bar */
    static Bars of(double[] frames, Onsets onsets, BeatFeatures features, Wishes wishes) {
        double[] harmony = features.harmonicChange();
        double[] low = onBeats(onsets.low(), frames);
        double[] punch = onBeats(onsets.punch(), frames);
        List<Integer> lengths =
                wishes.barBeats().isPresent() ? List.of(wishes.barBeats().getAsInt()) : USUAL;
        double best = Double.NEGATIVE_INFINITY;
        double second = Double.NEGATIVE_INFINITY;
        Bars bars = new Bars(lengths.get(0), 0, 0);
        for (int length : lengths) {
            int phases = wishes.firstSeconds().isPresent() ? 1 : length;
            for (int first = 0; first < phases; first++) {
                double score = HARMONY_WEIGHT * Accents.of(harmony, length, first)
                        + LOW_WEIGHT * Accents.of(low, length, first)
                        + PUNCH_WEIGHT * Accents.of(punch, length, first)
                        + (length == USUAL.get(0) ? FOUR_BONUS : 0);
                if (score > best) {
                    second = best;
                    best = score;
                    bars = new Bars(length, first, 0);
                } else {
                    second = Math.max(second, score);
                }
            }
        }
        double lead = second == Double.NEGATIVE_INFINITY ? best : best - second;
        return new Bars(bars.beats, bars.first, Math.max(0, 1 - StrictMath.exp(-lead / 3)));
    }

    /** Whether a beat starts a bar. */
    boolean startsAt(int beat) {
        return beat >= first && (beat - first) % beats == 0;
    }

    private static double[] onBeats(double[] curve, double[] frames) {
        double[] values = new double[frames.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = Windows.peak(curve, frames[i], REACH);
        }
        return values;
    }
}
