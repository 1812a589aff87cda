package org.duskloom.engine.survey.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;

/**
 * Looks for one or two measurements of a prop that spoil all others: one that is wrong, two that were each written down
 * for the other one, or two that are wrong. One wrong measurement hides another one as long as they are looked at one
 * by one. Looks among the pixels that fit worst, wired as described or from the other end.
 */
final class SlipSearch {
    private static final int PIXELS_TRIED = 12;

    private final Subject subject;
    private final List<Wiring> plain;

    /**
     * A measured pixel.
     *
     * @param index index into the measured pixels
     * @param squaredError what the best plain reading leaves over without it
     */
    record One(int index, double squaredError) {}

    /**
     * Two measured pixels.
     *
     * @param first index into the measured pixels
     * @param second the same, larger
     * @param squaredError what the best plain reading leaves over without what is wrong with them
     */
    record Two(int first, int second, double squaredError) {}

    SlipSearch(Subject subject) {
        this.subject = subject;
        int count = subject.prop().shape().pixelCount();
        this.plain = List.of(Wiring.AS_DESCRIBED, new Wiring(WiringKind.FROM_OTHER_END, 0, count, count - 1, true));
    }

    /** The two that leave least if their measurements are exchanged. */
    Optional<Two> exchanged() {
        MeasuredProp measured = subject.measured();
        return best((first, second) -> exchanged(measured, first, second));
    }

    /** What the best plain reading leaves over. */
    double squaredError() {
        return plainest(subject.measured()).squaredError();
    }

    /** The one that leaves least if it is left out; there must be two at least. */
    One one() {
        MeasuredProp measured = subject.measured();
        One best = null;
        for (int index : worst()) {
            double left = plainest(measured.without(index)).squaredError();
            best = best == null || left < best.squaredError() ? new One(index, left) : best;
        }
        return best;
    }

    /** The two that leave least if they are left out. */
    Optional<Two> two() {
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

    private Optional<Two> best(Mend mend) {
        int[] worst = worst();
        Two best = null;
        for (int second : worst) {
            for (int first : worst) {
                if (first < second) {
                    double left = plainest(mend.without(first, second)).squaredError();
                    best = best == null || left < best.squaredError() ? new Two(first, second, left) : best;
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
