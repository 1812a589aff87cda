package org.duskloom.engine.survey;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;

/**
 * Looks for two measurements of one prop that spoil all others: because each was written down for the other one, or because
 * both are wrong. One wrong measurement hides another one as long as they are looked at one by one. Looks among the pixels
 * that fit worst, wired as described or from the other end.
 */
final class PairSearch {
    private static final int PIXELS_TRIED = 12;

    private final Subject subject;
    private final List<Wiring> plain;

    /**
     * Two measured pixels.
     *
     * @param first index into the measured pixels
     * @param second the same, larger
     * @param squaredError what the best plain reading leaves over without what is wrong with them
     */
    record Pair(int first, int second, double squaredError) {}

    PairSearch(Subject subject) {
        this.subject = subject;
        int count = subject.prop().shape().pixelCount();
        this.plain = List.of(Wiring.AS_DESCRIBED, new Wiring(WiringKind.FROM_OTHER_END, 0, count, count - 1, true));
    }

    /** The two that leave least if their measurements are exchanged. */
    Optional<Pair> exchanged() {
        MeasuredProp measured = subject.measured();
        return best((first, second) -> exchanged(measured, first, second));
    }

    /** The two that leave least if they are left out. */
    Optional<Pair> leftOut() {
        MeasuredProp measured = subject.measured();
        return best((first, second) -> measured.without(second).without(first));
    }

    /** How many pairs there are. */
    static double pairs(int count) {
        return count * (count - 1) / 2.0;
    }

    private interface Mend {
        MeasuredProp without(int first, int second);
    }

    private Optional<Pair> best(Mend mend) {
        int[] worst = worst();
        Pair best = null;
        for (int second : worst) {
            for (int first : worst) {
                if (first < second) {
                    double left = plainest(mend.without(first, second)).squaredError();
                    best = best == null || left < best.squaredError() ? new Pair(first, second, left) : best;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private int[] worst() {
        MeasuredProp measured = subject.measured();
        Misfits misfits = Misfits.of(plainest(measured), measured);
        return IntStream.range(0, measured.count())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -misfits.distance(i)))
                .limit(PIXELS_TRIED)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private Candidate plainest(MeasuredProp measured) {
        return ReadingSearch.candidates(subject.stance(), measured, plain, subject.dimensions(), 0).stream()
                .min(Comparator.comparingDouble(Candidate::squaredError))
                .orElseThrow();
    }

    private static MeasuredProp exchanged(MeasuredProp measured, int first, int second) {
        Positions places = measured.places();
        double[][] at = new double[3][places.size()];
        for (int i = 0; i < places.size(); i++) {
            int from = i == first ? second : i == second ? first : i;
            at[0][i] = places.x(from);
            at[1][i] = places.y(from);
            at[2][i] = places.z(from);
        }
        return measured.at(new Positions(at[0], at[1], at[2]));
    }
}
