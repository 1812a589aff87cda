package org.duskloom.engine.sound.music;

import java.util.List;
import java.util.Locale;

/**
 * F-measure of beats as mir_eval has it (C. Raffel et al., ISMIR 2014): beats before 5 s are left out of both lists,
 * then as many pairs as possible within 70 ms, one to one; F = 2 PR / (P + R).
 */
final class BeatScore {
    private static final double WINDOW = 0.07;
    private static final double SKIPPED = 5;

    private BeatScore() {}

    static double of(List<Double> found, List<Double> truth) {
        double[] a = found.stream()
                .mapToDouble(t -> t)
                .filter(t -> t >= SKIPPED)
                .sorted()
                .toArray();
        double[] b = truth.stream()
                .mapToDouble(t -> t)
                .filter(t -> t >= SKIPPED)
                .sorted()
                .toArray();
        int hits = 0;
        for (int i = 0, k = 0; i < a.length && k < b.length; ) {
            // On a line, pairing the earliest that can be paired is a maximum matching.
            if (Math.abs(a[i] - b[k]) <= WINDOW) {
                hits++;
                i++;
                k++;
            } else if (a[i] < b[k]) {
                i++;
            } else {
                k++;
            }
        }
        return hits == 0 ? 0 : 2.0 * hits / (a.length + b.length);
    }

    /** The F at the best of 1, 2 and 1/2 times the beats. */
    static String words(double f) {
        return String.format(Locale.ROOT, "%.3f", f);
    }
}
