package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.IntPredicate;

/**
 * Readings laid beside the pairs of a run, so that as few pictures as possible are missing or too many. Readings count
 * from 0.
 *
 * @param alone those whose partner is missing, each with the pair that it seems to belong to, counted from 0
 * @param extra those that belong to no pair
 * @param missingPairs how many pairs are missing, nobody knows where
 */
record PairMatch(List<Alone> alone, List<Integer> extra, int missingPairs) {
    /** How far the other picture of a pair may be, where those between are too many. */
    private static final int FARTHEST = 3;

    /**
     * What one picture costs that is missing or too many; a pair that is missing costs a little less than two, and a
     * picture that is seen elsewhere a little less than one.
     */
    private static final int ONE = 11;

    private static final int PAIR = 20;

    /** A reading whose partner is missing, and the pair it belongs to, from 0. */
    record Alone(int reading, int pair) {}

    /** How many pictures are missing or too many. */
    int faults() {
        return alone.size() + extra.size() + 2 * missingPairs;
    }

    /**
     * The best way, by the least cost of the first so many readings in so many pairs.
     *
     * @param readings how many there are
     * @param pairs how many there should be
     * @param arePair whether a reading and a later one give together what the lit picture shows
     * @param isSeenElsewhere whether a reading shows what another picture shows, so that it is rather too many than
     *     alone
     */
    static PairMatch of(int readings, int pairs, BiPredicate<Integer, Integer> arePair, IntPredicate isSeenElsewhere) {
        int[] extra = new int[readings + 1];
        for (int reading = 0; reading < readings; reading++) {
            extra[reading + 1] = extra[reading] + (isSeenElsewhere.test(reading) ? ONE - 1 : ONE);
        }
        Step[][] best = new Step[readings + 1][pairs + 1];
        best[0][0] = new Step(0, null, 0, 0, 0);
        for (int from = 0; from < readings; from++) {
            boolean[] partner = new boolean[FARTHEST + 1];
            for (int off = 1; off <= FARTHEST && from + off < readings; off++) {
                partner[off] = arePair.test(from, from + off);
            }
            for (int pair = 0; pair <= pairs; pair++) {
                Step here = best[from][pair];
                if (here == null) {
                    continue;
                }
                for (int off = 1; off <= FARTHEST && pair < pairs; off++) {
                    if (partner[off]) {
                        offer(
                                best,
                                from + off + 1,
                                pair + 1,
                                new Step(extra[from + off] - extra[from + 1], here, from, pair, 2));
                    }
                }
                if (pair < pairs) {
                    offer(best, from + 1, pair + 1, new Step(ONE, here, from, pair, 1));
                }
                offer(best, from + 1, pair, new Step(extra[from + 1] - extra[from], here, from, pair, 0));
            }
        }
        int taken = pairs;
        for (int pair = pairs - 1; pair >= 0; pair--) {
            Step end = best[readings][pair];
            if (end != null && end.cost + PAIR * (pairs - pair) < total(best[readings][taken], pairs - taken)) {
                taken = pair;
            }
        }
        return of(best[readings][taken], readings, pairs - taken);
    }

    private static int total(Step end, int missing) {
        return end == null ? Integer.MAX_VALUE : end.cost + PAIR * missing;
    }

    private static void offer(Step[][] best, int reading, int pair, Step step) {
        Step before = best[reading][pair];
        if (before == null || step.cost < before.cost) {
            best[reading][pair] = step;
        }
    }

    /** One reading, or two that are a pair with those between left out. */
    private static final class Step {
        final int cost;
        final Step before;
        final int reading;
        final int pair;
        final int ofPair;

        Step(int cost, Step before, int reading, int pair, int ofPair) {
            this.cost = cost + (before == null ? 0 : before.cost);
            this.before = before;
            this.reading = reading;
            this.pair = pair;
            this.ofPair = ofPair;
        }
    }

    private static PairMatch of(Step end, int readings, int missingPairs) {
        List<Alone> alone = new ArrayList<>();
        List<Integer> extra = new ArrayList<>();
        int after = readings;
        for (Step step = end; step.before != null; step = step.before) {
            if (step.ofPair == 1) {
                alone.add(0, new Alone(step.reading, step.pair));
            } else {
                // Of a pair the first and the last are taken.
                int last = step.ofPair == 2 ? after - 2 : after - 1;
                int first = step.ofPair == 2 ? step.reading + 1 : step.reading;
                for (int reading = last; reading >= first; reading--) {
                    extra.add(0, reading);
                }
            }
            after = step.reading;
        }
        return new PairMatch(alone, extra, missingPairs);
    }
}
