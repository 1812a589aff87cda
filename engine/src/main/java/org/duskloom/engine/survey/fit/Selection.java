package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.survey.Dimensions;

/**
 * Chooses among readings. The rule:
 *
 * <ol>
 *   <li>A reading is tenable if no other one that fits more freely leaves clearly less: less by more than 12 squares of
 *       the measuring error, 4 more for every number that it fits more, and twice the logarithm of the number of props.
 *       Chance does that less than once in 10,000 times for one prop, and for the more props the less, so that it
 *       hardly does for any.
 *   <li>Of the tenable ones, those are dropped that let differ all that another one lets differ, and more.
 *   <li>Of the rest the one with the fewest differences is preferred; of as many, the least far-fetched. The others are
 *       its rivals.
 * </ol>
 */
final class Selection {
    private static final int MOST_CHANGES_MORE = 1;

    private static final Comparator<Candidate> SIMPLEST_FIRST = Comparator.<Candidate>comparingInt(
                    candidate -> candidate.form().changes())
            .thenComparingDouble(candidate -> candidate.form().weight())
            .thenComparingDouble(Candidate::squaredError);

    private final Criterion criterion;
    private final int coordinates;
    private final Dimensions dimensions;
    private final int leastSpare;

    /**
     * For the readings of a prop.
     *
     * @param subject the prop
     * @param criterion when a difference counts
     */
    Selection(Subject subject, Criterion criterion) {
        this.criterion = criterion;
        this.coordinates = subject.coordinates();
        this.dimensions = subject.dimensions();
        this.leastSpare = subject.isWhollyMeasured() ? 0 : 2;
    }

    /** The tenable readings, the preferred one first; nothing if too little was measured for every one of them. */
    List<Candidate> choose(List<Candidate> candidates) {
        List<Candidate> backed = candidates.stream().filter(this::isBacked).toList();
        List<Candidate> kept = new ArrayList<>();
        for (Candidate candidate : tenable(backed)) {
            if (kept.stream().noneMatch(simpler -> candidate.form().includes(simpler.form()))) {
                kept.add(candidate);
            }
        }
        int most = kept.isEmpty() ? 0 : kept.get(0).form().changes() + MOST_CHANGES_MORE;
        return kept.stream()
                .filter(candidate -> candidate.form().changes() <= most)
                .toList();
    }

    /** Whether what the reading leaves over is no more than measuring errors make. */
    boolean fits(Candidate candidate) {
        int spare = Math.max(1, spare(candidate));
        return candidate.squaredError() <= criterion.variance() * ChiSquare.upper(spare);
    }

    /** Simplest first, so that what includes another one comes behind it. */
    private List<Candidate> tenable(List<Candidate> candidates) {
        double[] least = new double[Form.MOST_PARAMETERS + 1];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (Candidate candidate : candidates) {
            int used = candidate.form().parameters(dimensions);
            least[used] = Math.min(least[used], candidate.squaredError());
        }
        return candidates.stream()
                .filter(candidate -> candidate.squaredError() <= bound(candidate, least))
                .sorted(SIMPLEST_FIRST)
                .toList();
    }

    private double bound(Candidate candidate, double[] least) {
        int used = candidate.form().parameters(dimensions);
        double bound = Double.POSITIVE_INFINITY;
        for (int parameters = 0; parameters < least.length; parameters++) {
            bound = Math.min(bound, least[parameters] + criterion.clearly(parameters - used));
        }
        return bound;
    }

    /** Whether enough was measured to hold against the reading, if it were wrong. */
    private boolean isBacked(Candidate candidate) {
        return spare(candidate) >= leastSpare;
    }

    private int spare(Candidate candidate) {
        return coordinates - candidate.form().parameters(dimensions);
    }
}
