package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.survey.Noise;

/** Works out how well was measured. */
final class NoiseEstimate {
    /** A tolerance is what a measurement exceeds once in some hundred times. */
    private static final double SIGMAS_IN_TOLERANCE = 3;

    /** Nobody measures better, relative to the size of the display: keeps rounding from being taken for differences. */
    private static final double LEAST_SHARE_OF_DIAGONAL = 1e-5;

    /** Half of the spare coordinates or more stand behind a median. */
    private static final double WEIGHT_OF_MEDIAN = 0.6;

    private static final double LARGEST_FACTOR = 2;

    /** From about twenty spare coordinates on, what was found counts, whatever is usual. */
    private static final double WELL_KNOWN_FACTOR = 1.36;

    /** What a tape or a photo of a small display gives, if little is known: common practice, no source. */
    private static final double USUAL_MILLIMETRES = 5;

    /** Nobody mistakes a pixel for its neighbour's place, nor measures worse than so many times what is usual. */
    private static final double LARGEST_SHARE_OF_STEP = 0.5;

    private static final double LARGEST_IN_USUAL = 3;

    /** No display is so small that errors would hide it. */
    private static final double LEAST_DIAGONAL_IN_ERRORS = 50;

    /** The squared error of a prop and on how many coordinates it stands. */
    private record Share(double variance, int spare, boolean isPlausible) {}

    private NoiseEstimate() {}

    static Noise ofTolerance(double tolerance) {
        return new Noise(tolerance / SIGMAS_IN_TOLERANCE, Noise.Source.TOLERANCE, 0);
    }

    /** What rounding alone may come to. */
    static double least(double diagonal) {
        return Math.max(LEAST_SHARE_OF_DIAGONAL * diagonal, Double.MIN_NORMAL);
    }

    /**
     * The median over all props of what their best placements leave over, so that a few bent props count for nothing;
     * without those that leave over more than half the step from pixel to pixel, for which no reading fits at all. Of
     * few measurements the upper bound that it exceeds once in twenty times, so that nothing is read into chance; but
     * no more than twice what was found, and 5 mm if that were less.
     *
     * @param floor what it is at least
     */
    static Noise estimate(List<Subject> subjects, double diagonal, double millimetresPerUnit, double floor) {
        Noise noise = estimate(subjects, diagonal, millimetresPerUnit);
        return noise.sigma() >= floor ? noise : new Noise(floor, Noise.Source.FLOOR, noise.spareCoordinates());
    }

    /** The same for what may be measured as well as anything. */
    static Noise estimate(List<Subject> subjects, double diagonal, double millimetresPerUnit) {
        double usual = usual(diagonal, millimetresPerUnit);
        List<Share> all = shares(subjects, usual);
        List<Share> shares =
                new ArrayList<>(all.stream().filter(Share::isPlausible).toList());
        if (shares.isEmpty()) {
            return new Noise(usual, all.isEmpty() ? Noise.Source.ASSUMED : Noise.Source.IMPLAUSIBLE, 0);
        }
        int spare = shares.stream().mapToInt(Share::spare).sum();
        double counted = shares.size() == 1 ? spare : Math.max(1, WEIGHT_OF_MEDIAN * spare);
        double variance = median(shares, spare);
        double found = Math.max(Math.sqrt(variance), least(diagonal));
        double factor = Math.sqrt(counted / ChiSquare.lower(counted));
        double bound = found * Math.min(factor, LARGEST_FACTOR);
        boolean unsure = factor > LARGEST_FACTOR && bound < usual
                || factor > WELL_KNOWN_FACTOR && found < usual && bound > usual;
        return unsure ? new Noise(usual, Noise.Source.ASSUMED, spare) : new Noise(bound, Noise.Source.MEASURED, spare);
    }

    /** The largest error that a prop's measurements may have, whatever its pixels say. */
    static double largest(double typicalStep, double usual) {
        return Math.max(LARGEST_SHARE_OF_STEP * typicalStep, good(usual));
    }

    /** An error that nobody is surprised at, whatever the steps are. */
    static double good(double usual) {
        return LARGEST_IN_USUAL * usual;
    }

    /** What is assumed where nothing is known. */
    static double usual(double diagonal, double millimetresPerUnit) {
        double usual = USUAL_MILLIMETRES / millimetresPerUnit;
        return diagonal > 0 ? Math.min(usual, diagonal / LEAST_DIAGONAL_IN_ERRORS) : usual;
    }

    private static List<Share> shares(List<Subject> subjects, double usual) {
        List<Share> shares = new ArrayList<>();
        for (Subject subject : subjects) {
            int spare = subject.spareCoordinates();
            if (spare > 0 && !subject.isMuddled()) {
                double variance = subject.freest().squaredError() / spare;
                double shown = subjects.size() == 1 ? 1 : ChiSquare.medianShare(spare);
                boolean plausible = Math.sqrt(variance) <= largest(subject.typicalStep(), usual);
                shares.add(new Share(variance / shown, spare, plausible));
            }
        }
        return shares;
    }

    private static double median(List<Share> shares, int spare) {
        shares.sort(Comparator.comparingDouble(Share::variance));
        int passed = 0;
        for (Share share : shares) {
            passed += share.spare();
            if (2 * passed >= spare) {
                return share.variance();
            }
        }
        throw new IllegalStateException("no median of " + shares);
    }
}
