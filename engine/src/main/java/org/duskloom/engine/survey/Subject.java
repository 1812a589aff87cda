package org.duskloom.engine.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.map.Positions;

/** One measured prop while it is studied: its readings, and which of its measurements are left out as slips. */
final class Subject {
    /** Left over by the best placement, relative to the size of the prop: below that no wiring need be tried to know the error. */
    private static final double GOOD_PLACEMENT = 0.05;

    /** One measurement in so many may be a slip. */
    private static final int SLIP_IN = 5;

    private static final double CHANCE_OF_A_SLIP = 1e-4;

    private final PlacedProp prop;
    private final Dimensions dimensions;
    private final Stance stance;
    private final List<Slip> slips = new ArrayList<>();
    private MeasuredProp measured;
    private List<Wiring> wirings;
    private List<Candidate> candidates;

    Subject(PlacedProp prop, MeasuredProp measured, Dimensions dimensions) {
        this.prop = prop;
        this.measured = measured;
        this.dimensions = dimensions;
        this.stance = new Stance(prop, prop.placement(), dimensions);
        look();
    }

    PlacedProp prop() {
        return prop;
    }

    MeasuredProp measured() {
        return measured;
    }

    Dimensions dimensions() {
        return dimensions;
    }

    Stance stance() {
        return stance;
    }

    /** The measurements that were left out. */
    List<Slip> slips() {
        return slips;
    }

    /** How many coordinates were measured. */
    int coordinates() {
        return dimensions.count() * measured.count();
    }

    /** The median distance from a pixel to the next one on the wire, as described; 0 for a single pixel. */
    double typicalStep() {
        Positions template = stance.template(false);
        return Extent.medianStep(template, 0, template.size());
    }

    boolean isWhollyMeasured() {
        return measured.count() == prop.shape().pixelCount();
    }

    /** Readings that keep the wiring; those that do not as well once {@link #search} was called. */
    List<Candidate> candidates() {
        return candidates;
    }

    /** The readings that start from another stance, of every wiring; those that leave so much more than the best may be missing. */
    List<Candidate> candidates(Stance other, double slack) {
        return ReadingSearch.candidates(other, measured, wirings(), dimensions, slack);
    }

    /** Tries every wiring; readings that leave so much more than the best may be missing. */
    void search(double slack) {
        candidates = candidates(stance, slack);
    }

    /** The reading that leaves least of all. */
    Candidate freest() {
        return candidates.stream()
                .min(Comparator.comparingDouble(Candidate::squaredError))
                .orElseThrow();
    }

    /** How many coordinates are left to tell the measuring error by, behind those that the freest reading uses up. */
    int spareCoordinates() {
        int turns = dimensions == Dimensions.DEEP ? 3 : 1;
        return coordinates() - dimensions.count() - turns - 1;
    }

    /**
     * Finds a good reading, and leaves out measurements that do not go with the others: the largest misfit, if without it so
     * little is left that chance would do that once in 10,000 times (S. S. Wilks, Sankhya A 25:407-426, 1963).
     *
     * @param least misfits below that are none
     */
    void leaveOutSlips(double least) {
        int most = measured.count() / SLIP_IN;
        do {
            settle();
        } while (slips.size() < most && leaveOutOne(least));
    }

    private void settle() {
        double size = Math.sqrt(meanSquaredRadius());
        int spare = Math.max(1, spareCoordinates());
        if (Math.sqrt(freest().squaredError() / spare) > GOOD_PLACEMENT * size) {
            search(0);
        }
    }

    private boolean leaveOutOne(double least) {
        Candidate reading = freest();
        int exponent = spareCoordinates() - dimensions.count();
        Misfits misfits = Misfits.of(reading, measured);
        int worst = misfits.worst();
        if (exponent < 2 || misfits.distance(worst) < least) {
            return false;
        }
        MeasuredProp others = measured.without(worst);
        Candidate again = reading.fittedTo(others);
        double share = again.squaredError() / reading.squaredError();
        if (measured.count() * StrictMath.pow(share, exponent / 2.0) >= CHANCE_OF_A_SLIP) {
            return false;
        }
        slips.add(new Slip(
                measured.pixel(worst), new Misfits(again, again.similarity(others), measured).distance(worst)));
        measured = others;
        look();
        return true;
    }

    private void look() {
        candidates = ReadingSearch.candidates(stance, measured, List.of(Wiring.AS_DESCRIBED), dimensions, 0);
    }

    private List<Wiring> wirings() {
        if (wirings == null) {
            wirings = Wirings.of(prop);
        }
        return wirings;
    }

    private double meanSquaredRadius() {
        Positions template = stance.template(false);
        Moments moments = new Moments();
        for (int i = 0; i < template.size(); i++) {
            moments.add(template.x(i), template.y(i), template.z(i), 0, 0, 0);
        }
        return moments.aboutMeans().from() / template.size();
    }
}
