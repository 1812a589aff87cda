package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Muddle;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;

/** One measured prop while it is studied: its readings, and which of its measurements are left out as slips. */
final class Subject {
    /**
     * Left over by the best placement, relative to the size of the prop: below that no wiring need be tried to know the
     * error.
     */
    private static final double GOOD_PLACEMENT = 0.05;

    /** One measurement in so many may be a slip. */
    private static final int SLIP_IN = 5;

    private static final double CHANCE_OF_A_SLIP = 1e-4;

    /** Four are left of that many, which still tell. */
    private static final int PIXELS_FOR_AN_EXCHANGE = 6;

    private final PlacedProp prop;
    private final Dimensions dimensions;
    private final Stance stance;
    private final double floor;
    private final List<Integer> slips = new ArrayList<>();
    private final List<Muddle> muddles = new ArrayList<>();
    private boolean isMuddled;
    private final MeasuredProp everyOne;
    private MeasuredProp measured;
    private List<Wiring> wirings;
    private List<Candidate> candidates;

    Subject(PlacedProp prop, MeasuredProp measured, Dimensions dimensions) {
        this(prop, measured, dimensions, 0);
    }

    /** @param floor what a measured coordinate is wrong by at least, however well the others go together */
    Subject(PlacedProp prop, MeasuredProp measured, Dimensions dimensions, double floor) {
        this.prop = prop;
        this.floor = floor;
        this.everyOne = measured;
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

    /** The pixels of which the measurements were left out, from 0. */
    List<Integer> slips() {
        return slips;
    }

    /** All of its measurements, with those that were left out. */
    MeasuredProp everyOne() {
        return everyOne;
    }

    /** Measurements that were mixed up and left out. */
    List<Muddle> muddles() {
        return muddles;
    }

    /** Whether none is left without those that were mixed up; they are still there, and tell nothing. */
    boolean isMuddled() {
        return isMuddled;
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

    /**
     * The readings that start from another stance, of every wiring; those that leave so much more than the best may be
     * missing.
     */
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
     * Finds a good reading, and leaves out measurements that do not go with the others: the largest misfit, if without
     * it so little is left that chance would do that once in 10,000 times (S. S. Wilks, Sankhya A 25:407-426, 1963).
     *
     * @param least misfits below that are none
     * @param good errors below that are small: two measurements are called wrong only if the others then fit so well
     */
    void leaveOutSlips(double least, double good) {
        leaveOutHeaps();
        int count = measured.count();
        int most = count / SLIP_IN;
        // Before wirings are tried: of few measurements with a slip among them one of the many fits nearly as well.
        while (count - measured.count() < most && leaveOutOneOfPlain(least, good)) {}
        settle();
        // Of six pixels two may be exchanged; beyond that no more may be wrong than in any case.
        while (count - measured.count() + 2 <= Math.max(2, most) && leaveOutExchanged(least, good)) {
            settle();
        }
        while (count - measured.count() < most && leaveOutOne(least)
                || most > 1 && count == measured.count() && leaveOutTwo(least, good)) {
            settle();
        }
    }

    private void leaveOutHeaps() {
        Positions template = stance.template(false);
        MeasuredProp all = measured;
        boolean[] left = new boolean[all.count()];
        for (List<Integer> heap : Heaps.of(all, template)) {
            int any = heap.get(0);
            muddles.add(new Muddle.OnePlace(
                    heap.stream().map(all::pixel).toList(),
                    all.places().x(any),
                    all.places().y(any),
                    all.places().z(any),
                    Heaps.extent(heap, all, template)));
            heap.forEach(i -> left[i] = true);
        }
        for (int i = left.length - 1; i >= 0; i--) {
            isMuddled |= left[i] && measured.count() == 1;
            measured = left[i] && measured.count() > 1 ? measured.without(i) : measured;
        }
        measured = isMuddled ? all : measured;
        look();
    }

    /** The one without which the wiring that is described, or that from the other end, leaves least. */
    private boolean leaveOutOneOfPlain(double least, double good) {
        SlipSearch search = new SlipSearch(this);
        double before = search.squaredError();
        int exponent = spareCoordinates() - dimensions.count();
        if (isMuddled || exponent < 2 || before <= least * least) {
            return false;
        }
        SlipSearch.One one = search.one();
        boolean isWrong = one.squaredError() <= good * good * exponent
                && isUnlikely(one.squaredError(), before, measured.count(), exponent);
        if (isWrong) {
            leaveOut(one.index());
        }
        return isWrong;
    }

    /**
     * Leaves out the one measurement that alone keeps the prop from being wired as described, where the measuring error
     * is known. Another wiring that rests on a single reading is less likely than a slip of the pen.
     */
    void leaveOutSlip(Criterion criterion) {
        int left = slips.size()
                + muddles.stream().mapToInt(muddle -> muddle.pixels().size()).sum();
        boolean tooMany = SLIP_IN * (left + 1) > measured.count() + left;
        if (isMuddled || tooMany || spareCoordinates() <= dimensions.count() || explains(plain(), criterion)) {
            return;
        }
        SlipSearch search = new SlipSearch(this);
        SlipSearch.One one = search.one();
        double choices = criterion.variance() * 2 * StrictMath.log(measured.count());
        if (search.squaredError() - one.squaredError() <= criterion.clearly(dimensions.count()) + choices) {
            return;
        }
        MeasuredProp all = measured;
        List<Candidate> before = candidates;
        leaveOut(one.index());
        if (!explains(candidates, criterion)) {
            slips.remove(slips.size() - 1);
            measured = all;
            candidates = before;
        }
    }

    private List<Candidate> plain() {
        return candidates.stream()
                .filter(candidate -> candidate.form().wiring() == WiringKind.AS_DESCRIBED)
                .toList();
    }

    private boolean explains(List<Candidate> readings, Criterion criterion) {
        Selection selection = new Selection(this, criterion);
        List<Candidate> tenable = selection.choose(readings);
        return !tenable.isEmpty() && selection.fits(tenable.get(0));
    }

    /** Two exchanged measurements fit as they are, and use up no coordinates. */
    private boolean leaveOutExchanged(double least, double good) {
        double before = freest().squaredError();
        int count = measured.count();
        if (isMuddled || count < PIXELS_FOR_AN_EXCHANGE || before <= least * least) {
            return false;
        }
        Optional<SlipSearch.Two> pair = new SlipSearch(this)
                .exchanged()
                .filter(found -> found.squaredError() <= good * good * spareCoordinates())
                .filter(found -> isUnlikely(found.squaredError(), before, SlipSearch.pairs(count), spareCoordinates()));
        pair.ifPresent(found -> {
            muddles.add(new Muddle.Exchanged(List.of(measured.pixel(found.first()), measured.pixel(found.second()))));
            measured = measured.without(found.second()).without(found.first());
            look();
        });
        return pair.isPresent();
    }

    /** Two that are wrong hide each other as long as only one is left out. */
    private boolean leaveOutTwo(double least, double good) {
        double before = freest().squaredError();
        int count = measured.count();
        int exponent = spareCoordinates() - 2 * dimensions.count();
        if (isMuddled || exponent < 2 || before <= least * least) {
            return false;
        }
        Optional<SlipSearch.Two> pair = new SlipSearch(this)
                .two()
                .filter(found -> found.squaredError() <= good * good * exponent)
                .filter(found -> isUnlikely(found.squaredError(), before, SlipSearch.pairs(count), exponent));
        pair.ifPresent(found -> {
            leaveOut(found.second());
            leaveOut(found.first());
        });
        return pair.isPresent();
    }

    /** Whether chance would leave so little in one of so many choices once in 10,000 times. */
    private boolean isUnlikely(double squaredError, double before, double choices, int coordinates) {
        double always = floor * floor * coordinates;
        double share = (squaredError + always) / (before + always);
        return choices * StrictMath.pow(share, coordinates / 2.0) < CHANCE_OF_A_SLIP;
    }

    private void leaveOut(int index) {
        slips.add(measured.pixel(index));
        measured = measured.without(index);
        look();
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
        // The wiring was chosen as well, perhaps so that it makes one pixel stand out.
        double choices = (double) measured.count()
                * (reading.form().wiring() == WiringKind.AS_DESCRIBED
                        ? 1
                        : wirings().size());
        if (!isUnlikely(again.squaredError(), reading.squaredError(), choices, exponent)) {
            return false;
        }
        leaveOut(worst);
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
