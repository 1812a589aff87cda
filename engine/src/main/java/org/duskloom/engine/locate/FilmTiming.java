package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.find.FindStep;

/**
 * Finds a run in a film: when it begins and how long a step is held, in pictures, so that how much is lit follows the
 * whole run best.
 */
final class FilmTiming {
    /** Below this correlation it is another film, or only a piece of the run. */
    private static final double LEAST_CORRELATION = 0.75;

    /** For how many pictures a step must be held at least: one that sees no other step, and those beside it. */
    private static final double LEAST_HOLD = 3;

    /** From the middle of a step this share of it, to both sides, is surely not another one. */
    private static final double SAFE = 0.2;

    private final FindRun run;
    private final double[] sums;
    private final double[] squares;
    private final int[] litPixels;
    private final int pictures;

    /**
     * @param litPixels how many pixels are lit in each step
     * @param lit how much is lit in each picture, in any unit
     */
    private FilmTiming(FindRun run, int[] litPixels, double[] lit) {
        this.run = run;
        this.pictures = lit.length;
        this.sums = new double[lit.length + 1];
        this.squares = new double[lit.length + 1];
        for (int i = 0; i < lit.length; i++) {
            sums[i + 1] = sums[i] + lit[i];
            squares[i + 1] = squares[i] + lit[i] * lit[i];
        }
        this.litPixels = litPixels;
    }

    /** How many pixels are lit in each step. */
    private static int[] litPixels(FindRun run) {
        return run.steps().stream()
                .mapToInt(step -> (int) IntStream.range(0, run.code().pixelCount())
                        .filter(pixel -> run.isLit(step, pixel))
                        .count())
                .toArray();
    }

    /**
     * When a run is played.
     *
     * @param start when it begins, in pictures
     * @param hold for how many pictures a step is held
     * @param correlation how well what is lit follows it, up to 1
     */
    private record Timing(double start, double hold, double correlation) {
        Timing better(Timing other) {
            return other.correlation > correlation ? other : this;
        }
    }

    static Sequence find(FindRun run, Overview overview) throws PicturesRefusedException {
        int[] litPixels = litPixels(run);
        FilmTiming film = new FilmTiming(run, litPixels, lit(overview));
        Timing timing = film.timing();
        if (timing.hold > 0) {
            // By now it is known when all is lit and when nothing is: dots that do not follow that are no lights.
            overview.keepFollowing(film.shownIn(timing, true), film.shownIn(timing, false));
            film = new FilmTiming(run, litPixels, lit(overview));
            timing = film.timing();
        }
        if (timing.correlation < LEAST_CORRELATION) {
            throw new PicturesRefusedException(
                    "",
                    "no whole run of " + run.code().pixelCount() + " pixels is seen in these " + film.pictures
                            + " pictures" + Sequences.otherRounds(run, film.pictures),
                    "take the pictures of a film that begins before the first blink and ends after the last, at least"
                            + " six for each step, at a steady rate");
        }
        List<int[]> shown = new ArrayList<>();
        for (FindStep step : run.pictures()) {
            shown.add(film.shown(step, timing));
        }
        return new Sequence(run, shown);
    }

    private static double[] lit(Overview overview) {
        return IntStream.range(0, overview.count()).mapToDouble(overview::lit).toArray();
    }

    /** The pictures in which all pixels are lit, or none. */
    private int[] shownIn(Timing timing, boolean all) {
        int wanted = all ? run.code().pixelCount() : 0;
        return IntStream.range(0, litPixels.length)
                .filter(step -> litPixels[step] == wanted)
                .flatMap(step -> IntStream.of(shown(run.steps().get(step), timing)))
                .toArray();
    }

    private Timing timing() {
        Timing best = new Timing(0, 0, -1);
        double longest = 2.0 * pictures / run.halves();
        double ratio = 1 + 0.5 / run.halves();
        for (double hold = LEAST_HOLD; hold <= longest; hold *= ratio) {
            best = best.better(bestStart(hold, 0, pictures, hold / 8));
        }
        if (best.hold == 0) {
            // Too few pictures for any hold.
            return best;
        }
        for (double fine = 0.5; fine > 0.002; fine /= 2) {
            Timing middle = best;
            for (int i = -2; i <= 2; i++) {
                double hold = middle.hold * (1 + i * fine * (ratio - 1));
                double around = middle.start - (hold - middle.hold) * run.halves() / 4;
                double step = middle.hold / 8 * fine;
                best = best.better(bestStart(hold, around - 3 * step, around + 3 * step, step));
            }
        }
        return best;
    }

    private Timing bestStart(double hold, double from, double to, double step) {
        Timing best = new Timing(from, hold, -1);
        double length = hold * run.halves() / 2;
        for (double start = Math.max(0, from); start <= to && start + length <= pictures; start += step) {
            best = best.better(new Timing(start, hold, correlation(start, hold)));
        }
        return best;
    }

    /** Of what is lit with what should be, over the time of the run. */
    private double correlation(double start, double hold) {
        double time = hold * run.halves() / 2;
        double sumXy = 0;
        double sumX = 0;
        double sumXx = 0;
        for (int i = 0; i < litPixels.length; i++) {
            FindStep step = run.steps().get(i);
            double from = start + hold * step.startHalves() / 2;
            double length = hold * step.halves() / 2;
            sumXy += litPixels[i] * (upTo(sums, from + length) - upTo(sums, from));
            sumX += litPixels[i] * length;
            sumXx += (double) litPixels[i] * litPixels[i] * length;
        }
        double sumY = upTo(sums, start + time) - upTo(sums, start);
        double sumYy = upTo(squares, start + time) - upTo(squares, start);
        double spreads = (time * sumXx - sumX * sumX) * (time * sumYy - sumY * sumY);
        return spreads > 0 ? (time * sumXy - sumX * sumY) / Math.sqrt(spreads) : 0;
    }

    private static double upTo(double[] sums, double time) {
        int whole = Math.min((int) time, sums.length - 2);
        return sums[whole] + (time - whole) * (sums[whole + 1] - sums[whole]);
    }

    /** The pictures round the middle of a step. Picture 0 is from time 0 to 1. */
    private int[] shown(FindStep step, Timing timing) {
        double middle = timing.start + timing.hold * (step.startHalves() + step.halves() / 2.0) / 2 - 0.5;
        List<Integer> shown = new ArrayList<>();
        int nearest = (int) StrictMath.rint(middle);
        for (int picture = nearest - 1; picture <= nearest + 1; picture++) {
            if (picture == nearest || Math.abs(picture - middle) <= SAFE * timing.hold) {
                shown.add(Math.max(0, Math.min(pictures - 1, picture)));
            }
        }
        return shown.stream().mapToInt(Integer::intValue).toArray();
    }
}
