package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Tries the periods that a song may have, and of each the row that dynamic programming finds and those a half and a
 * third of a step beside it, for off-beats are often stronger than beats; and ranks the rows.
 */
final class BeatFinder {
    private static final double STEP = 0.01;
    private static final int MOST_PEAKS = 4;

    /** A song that repeats after a period also does after these; which of them is the beat, the onsets say. */
    private static final double[] RELATIVES = {1, 2, 0.5, 1.5, 2 / 3.0, 3, 1 / 3.0};

    private static final double[] SHIFTS = {0, 1 / 2.0, 1 / 3.0, 2 / 3.0};
    private static final double SAME = 0.04;

    /** A told first beat is one of a row's if it lies so near to it, in periods. */
    private static final double NEAR_PERIODS = 0.12;

    /** And if the steps after it are so near to the period, their mean over so many: a row may slide at its start. */
    private static final double NEAR_STEPS = 0.03;

    private static final int STEPS = 8;

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
        double middle = onsets.count() / onsets.framesPerSecond() / 2;
        for (double period : candidates()) {
            TempoPath path = TempoPath.near(tempogram, period, wishes);
            double found = path.at(middle);
            if (isNew(found, done)) {
                done.add(found);
                double repeats = path.meanFit(tempogram);
                for (double[] frames : rows(path)) {
                    if (frames.length > 1) {
                        BeatRow row = BeatRow.of(onsets, repeats, found, frames);
                        ranked.add(new Ranked(row, RowScore.of(row)));
                    }
                }
            }
        }
        ranked.sort(Comparator.comparingDouble(row -> -row.score));
        return ranked;
    }

    /** Rows of one tempo; where the first beat is told, those that have a beat there, else the one that is made so. */
    private List<double[]> rows(TempoPath path) {
        EvenBeats even = new EvenBeats(onsets, path);
        double[] found = BeatTracker.track(onsets, path);
        List<double[]> rows = new ArrayList<>();
        if (wishes.firstSeconds().isEmpty()) {
            double[] bound = strays(found) ? even.exactly() : found;
            for (double shift : SHIFTS) {
                rows.add(shifted(bound, shift));
            }
            return rows;
        }
        double first = wishes.firstSeconds().getAsDouble() * onsets.framesPerSecond();
        for (double shift : SHIFTS) {
            cut(shifted(found, shift), first, path).filter(row -> !strays(row)).ifPresent(rows::add);
        }
        if (rows.isEmpty()) {
            double[] following = even.following(first);
            rows.add(strays(following) ? even.exactly(first) : following);
        }
        return rows;
    }

    /** A told tempo binds, the mean of the steps as it does the path. */
    private boolean strays(double[] frames) {
        return wishes.sayTempo()
                && frames.length > 1
                && !wishes.allow(
                        (frames[frames.length - 1] - frames[0]) / (frames.length - 1) / onsets.framesPerSecond());
    }

    /** The row a share of a step later. */
    private static double[] shifted(double[] frames, double share) {
        if (share == 0) {
            return frames;
        }
        double[] moved = new double[Math.max(0, frames.length - 1)];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = frames[i] + share * (frames[i + 1] - frames[i]);
        }
        return moved;
    }

    /** What follows a told first beat, which takes the place of the row's own; nothing if the row has none there. */
    private Optional<double[]> cut(double[] frames, double first, TempoPath path) {
        double period = path.at(first / onsets.framesPerSecond()) * onsets.framesPerSecond();
        for (int i = 0; i + STEPS < frames.length; i++) {
            double step = (frames[i + STEPS] - first) / STEPS;
            if (Math.abs(frames[i] - first) <= NEAR_PERIODS * period
                    && Math.abs(StrictMath.log(step / period)) <= NEAR_STEPS) {
                double[] kept = Arrays.copyOfRange(frames, i, frames.length);
                kept[0] = first;
                return Optional.of(kept);
            }
        }
        return Optional.empty();
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
