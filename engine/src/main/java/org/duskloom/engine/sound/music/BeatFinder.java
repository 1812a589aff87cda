package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Tries the periods that a song may have, and the step and the half-step of each, and ranks the rows of beats. */
final class BeatFinder {
    private static final double STEP = 0.01;
    private static final int MOST_PEAKS = 4;

    /** A song that repeats after a period also does after these; which of them is the beat, the onsets say. */
    private static final double[] RELATIVES = {1, 2, 0.5, 1.5, 2 / 3.0, 3, 1 / 3.0};

    private static final double SAME = 0.04;

    private final Onsets onsets;
    private final Tempogram tempogram;
    private final Wishes wishes;

    BeatFinder(Onsets onsets, Tempogram tempogram, Wishes wishes) {
        this.onsets = onsets;
        this.tempogram = tempogram;
        this.wishes = wishes;
    }

    /**
     * A row with its score.
     *
     * @param row the beats
     * @param score by {@link RowScore}
     */
    record Ranked(BeatRow row, double score) {}

    /** All rows that were tried, the best first; none where there is too little to try. */
    List<Ranked> ranked() {
        List<Ranked> ranked = new ArrayList<>();
        List<Double> done = new ArrayList<>();
        double rate = onsets.framesPerSecond();
        double first = wishes.firstSeconds().isPresent() ? wishes.firstSeconds().getAsDouble() * rate : -1;
        double middle = onsets.count() / rate / 2;
        for (double period : candidates()) {
            TempoPath path = TempoPath.near(tempogram, period);
            double found = path.at(middle);
            if (isNew(found, done)) {
                done.add(found);
                double repeats = path.meanFit(tempogram);
                BeatRow row = BeatRow.of(onsets, repeats, found, BeatTracker.track(onsets, path, first));
                add(row, ranked);
                if (first < 0) {
                    add(BeatRow.of(onsets, repeats, found, row.shifted()), ranked);
                }
            }
        }
        ranked.sort(Comparator.comparingDouble(row -> -row.score));
        return ranked;
    }

    private static void add(BeatRow row, List<Ranked> ranked) {
        if (row.frames().length > 1) {
            ranked.add(new Ranked(row, RowScore.of(row)));
        }
    }

    private static boolean isNew(double period, List<Double> others) {
        return others.stream().noneMatch(other -> Math.abs(StrictMath.log(other / period)) < SAME);
    }

    /** Periods that are worth trying: the peaks of the whole song's tempogram, and their relatives. */
    private List<Double> candidates() {
        double shortest = 60 / wishes.fastestBpm();
        int count = (int) (StrictMath.log(wishes.fastestBpm() / wishes.slowestBpm()) / STEP) + 1;
        double[] periods = new double[count];
        double[] fits = new double[count];
        for (int i = 0; i < count; i++) {
            periods[i] = shortest * StrictMath.exp(i * STEP);
            fits[i] = tempogram.overall(periods[i]);
        }
        List<Double> found = new ArrayList<>();
        for (int peak : peaks(fits)) {
            for (double relative : RELATIVES) {
                double period = periods[peak] * relative;
                if (wishes.allow(period) && isNew(period, found)) {
                    found.add(period);
                }
            }
        }
        return found;
    }

    /** The highest places of a curve, the highest first; its highest end where it only rises or falls. */
    private static List<Integer> peaks(double[] fits) {
        List<Integer> tops = new ArrayList<>();
        int best = 0;
        for (int i = 0; i < fits.length; i++) {
            best = fits[i] > fits[best] ? i : best;
            if (i > 0 && i < fits.length - 1 && fits[i] > fits[i - 1] && fits[i] >= fits[i + 1]) {
                tops.add(i);
            }
        }
        if (!tops.contains(best)) {
            tops.add(best);
        }
        tops.sort(Comparator.comparingDouble(i -> -fits[i]));
        return tops.subList(0, Math.min(MOST_PEAKS, tops.size()));
    }
}
