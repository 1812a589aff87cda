package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;

/**
 * Finds the best reading of every form for one prop, by trying every wiring. For each wiring the measured pixels are
 * gone through once; all placements follow from the sums. A wiring is given up where a few pixels alone leave more,
 * however the prop is placed, than readings known before leave over with all of them. Of very many measured pixels only
 * some are looked at until the best wirings are known.
 */
final class ReadingSearch {
    private static final int PIXELS_TRIED = 64;
    private static final int PIXELS_TRIED_FIRST = 10;
    private static final List<Turn> FLAT_TURNS = List.of(Turn.STAYS, Turn.QUARTER, Turn.FREE);
    private static final List<Turn> DEEP_TURNS = List.of(Turn.values());

    private final Stance stance;
    private final MeasuredProp measured;
    private final List<Turn> turns;
    private final Positions seen;
    private final int[] everyOne;
    private final int[] tried;
    private final int[] triedFirst;
    private final double slack;
    private final int placings;
    private final double[] least;
    private final Wiring[] best;
    private double leastOfAll = Double.POSITIVE_INFINITY;

    private ReadingSearch(Stance stance, MeasuredProp measured, Dimensions dimensions, double slack) {
        this.stance = stance;
        this.measured = measured;
        this.turns = dimensions == Dimensions.DEEP ? DEEP_TURNS : FLAT_TURNS;
        this.seen = stance.seen(measured.places());
        this.everyOne = MeasuredMoments.everyOne(measured);
        this.tried = MeasuredMoments.spread(measured, PIXELS_TRIED);
        this.triedFirst = MeasuredMoments.spread(measured, PIXELS_TRIED_FIRST);
        this.slack = slack;
        this.placings = 4 * turns.size();
        int forms = placings * 2 * WiringKind.values().length;
        this.least = new double[forms];
        this.best = new Wiring[forms];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
    }

    /**
     * The best reading of every form that there is a wiring for, if its scale is within reason.
     *
     * @param slack how much more than the best reading one may leave over; those that leave more may be missing
     */
    static List<Candidate> candidates(
            Stance stance, MeasuredProp measured, List<Wiring> wirings, Dimensions dimensions, double slack) {
        ReadingSearch search = new ReadingSearch(stance, measured, dimensions, slack);
        for (Wiring wiring : wirings) {
            search.tryOut(wiring, false);
            search.tryOut(wiring, true);
        }
        return search.candidates();
    }

    private void tryOut(Wiring wiring, boolean mirrored) {
        Positions template = stance.template(mirrored);
        if (tried.length > triedFirst.length) {
            Moments few = MeasuredMoments.of(template, seen, measured, triedFirst, wiring);
            if (freest(few.aboutMeans()) > leastOfAll + slack) {
                return;
            }
        }
        Moments moments = MeasuredMoments.of(template, seen, measured, tried, wiring);
        int first = placings * (2 * wiring.kind().ordinal() + (mirrored ? 1 : 0));
        PairSpread moved = moments.aboutMeans();
        leastOfAll = Math.min(leastOfAll, freest(moved));
        takeAll(first, moments.aboutOrigin(), wiring, mirrored);
        takeAll(first + placings / 2, moved, wiring, mirrored);
    }

    /** What is left over by the freest placement. */
    private double freest(PairSpread spread) {
        Turn freest = turns.get(turns.size() - 1);
        return spread.left(TurnFit.match(spread.cross(), freest, false, false), Sizing.FREE);
    }

    private void takeAll(int first, PairSpread spread, Wiring wiring, boolean mirrored) {
        for (int i = 0; i < turns.size(); i++) {
            double match = TurnFit.match(spread.cross(), turns.get(i), mirrored, stance.mirrorsInY());
            take(first + 2 * i, spread.left(match, Sizing.KEPT), wiring);
            take(first + 2 * i + 1, spread.left(match, Sizing.WITHIN_REASON), wiring);
        }
    }

    private void take(int form, double left, Wiring wiring) {
        if (left < least[form]) {
            least[form] = left;
            best[form] = wiring;
        }
    }

    private List<Candidate> candidates() {
        List<Candidate> candidates = new ArrayList<>();
        for (int index = 0; index < best.length; index++) {
            if (best[index] != null) {
                Form form = form(index, best[index].kind());
                candidates.add(new Candidate(form, stance, best[index], left(form, best[index], least[index])));
            }
        }
        // All pixels may tell a scale out of reason where those that were tried did not.
        candidates.removeIf(candidate -> candidate.squaredError() == Double.POSITIVE_INFINITY);
        return candidates;
    }

    private double left(Form form, Wiring wiring, double leftOfTried) {
        if (tried.length == measured.count()) {
            return leftOfTried;
        }
        Moments moments = MeasuredMoments.of(stance.template(form.mirrored()), seen, measured, everyOne, wiring);
        PairSpread spread = form.move() == Move.FREE ? moments.aboutMeans() : moments.aboutOrigin();
        double match = TurnFit.match(spread.cross(), form.turn(), form.mirrored(), stance.mirrorsInY());
        return spread.left(match, form.sizing());
    }

    private Form form(int index, WiringKind wiring) {
        int placing = index % placings;
        boolean mirrored = index / placings % 2 == 1;
        Move move = placing < placings / 2 ? Move.STAYS : Move.FREE;
        Turn turn = turns.get(placing % (placings / 2) / 2);
        return new Form(move, turn, mirrored, placing % 2 == 1, wiring);
    }
}
