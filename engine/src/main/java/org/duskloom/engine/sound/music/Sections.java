package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts a song into sections at the peaks of its novelty, at bars where there are some, and names those alike. */
final class Sections {
    /** The board looks so many bars to each side. */
    private static final int REACH_BARS = 4;

    /** A section is at least so many bars long. */
    private static final int SHORTEST_BARS = 4;

    /** A peak counts from this share of the highest, and over this at all. */
    private static final double PEAK_SHARE = 0.3;

    private static final double LEAST_PEAK = 0.06;

    private static final double ALIKE = 0.75;
    private static final int LETTERS = 26;

    private Sections() {}

    /**
     * Finds them.
     *
     * @param starts seconds of the beats
     * @param endSeconds of the song
     */
    static List<Section> of(BeatFeatures features, double[] starts, Bars bars, double endSeconds) {
        double[][] rows = features.rows();
        int reach = Math.max(1, Math.min(REACH_BARS * bars.beats(), rows.length / 4));
        double[] novelty = Novelty.of(rows, reach);
        List<Integer> cuts = cuts(novelty, bars, rows.length);
        List<Section> sections = new ArrayList<>();
        List<double[]> known = new ArrayList<>();
        double highest = Arrays.stream(novelty).max().orElse(0);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            int from = cuts.get(i);
            int to = cuts.get(i + 1);
            double end = to < starts.length ? starts[to] : endSeconds;
            double sure = i == 0 || highest <= 0 ? 1 : Math.min(1, peakNear(novelty, from, bars.beats()) / highest);
            sections.add(new Section(name(mean(rows, from, to), known), starts[from], end, sure));
        }
        return sections;
    }

    private static List<Integer> cuts(double[] novelty, Bars bars, int count) {
        double threshold =
                Math.max(LEAST_PEAK, PEAK_SHARE * Arrays.stream(novelty).max().orElse(0));
        int apart = SHORTEST_BARS * bars.beats();
        List<Integer> cuts = new ArrayList<>(List.of(0));
        for (int n = apart; n < count - apart; n++) {
            int last = cuts.get(cuts.size() - 1);
            boolean peak = novelty[n] >= threshold && peakNear(novelty, n, apart / 2) == novelty[n];
            int cut = onBar(n, bars, count);
            if (peak && cut - last >= apart) {
                cuts.add(cut);
            }
        }
        cuts.add(count);
        return cuts;
    }

    /** The nearest beat that starts a bar. */
    private static int onBar(int beat, Bars bars, int count) {
        for (int k = 0; k < bars.beats(); k++) {
            if (bars.startsAt(beat - k)) {
                return beat - k;
            }
            if (beat + k < count && bars.startsAt(beat + k)) {
                return beat + k;
            }
        }
        return beat;
    }

    private static double peakNear(double[] novelty, int at, int reach) {
        double most = 0;
        for (int n = Math.max(0, at - reach); n <= Math.min(novelty.length - 1, at + reach); n++) {
            most = Math.max(most, novelty[n]);
        }
        return most;
    }

    private static double[] mean(double[][] rows, int from, int to) {
        double[] mean = new double[rows[0].length];
        for (int n = from; n < to; n++) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += rows[n][i] / (to - from);
            }
        }
        return mean;
    }

    /** The letter of the section before that is most alike, or the next one. */
    private static String name(double[] mean, List<double[]> known) {
        int nearest = -1;
        double most = ALIKE;
        for (int i = 0; i < known.size(); i++) {
            double alike = BeatFeatures.cosine(mean, known.get(i));
            if (alike > most) {
                most = alike;
                nearest = i;
            }
        }
        if (nearest < 0) {
            nearest = known.size();
            known.add(mean);
        }
        String letter = Character.toString('A' + nearest % LETTERS);
        return nearest < LETTERS ? letter : letter + (nearest / LETTERS + 1);
    }
}
