package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntFunction;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Exchange;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;

/** Finds props that hang in each other's places: in circles of two or more. */
final class Exchanges {
    private static final int PLACES_TRIED = 6;

    /** Within how many standard deviations a place counts as found. */
    private static final double NEAR = 6;

    private final List<PlacedProp> props;
    private final Dimensions dimensions;
    private final TreeMap<Double, List<Integer>> propsByX = new TreeMap<>();
    private final Map<Integer, Study> studies;
    private final IntFunction<Map<Integer, Study>> otherDepths;
    private final Map<Integer, Seat> seats = new HashMap<>();

    /** Where a prop was found, and the readings that say so. */
    private record Seat(Study study, int host, List<Candidate> readings) {}

    private Exchanges(
            List<PlacedProp> props,
            Map<Integer, Study> studies,
            Dimensions dimensions,
            IntFunction<Map<Integer, Study>> otherDepths) {
        this.studies = studies;
        this.otherDepths = otherDepths;
        this.props = props;
        this.dimensions = dimensions;
        for (int i = 0; i < props.size(); i++) {
            propsByX.computeIfAbsent(props.get(i).placement().x(), x -> new ArrayList<>())
                    .add(i);
        }
    }

    /**
     * Looks for exchanges, and settles the studies of the props that are in one.
     *
     * @param props all props of the display
     * @param studies those that were measured, by prop; replaced where a prop is in the place of one of another depth
     * @param otherDepths studies of a prop as if it hung at the depth of another, by that one
     * @param placeOf where names of places go that a prop took without a circle, by prop
     */
    static List<Exchange> settle(
            List<PlacedProp> props,
            Map<Integer, Study> studies,
            Dimensions dimensions,
            IntFunction<Map<Integer, Study>> otherDepths,
            Map<Integer, String> placeOf) {
        Exchanges search = new Exchanges(props, studies, dimensions, otherDepths);
        studies.forEach(search::seat);
        return search.circles(placeOf);
    }

    private void seat(int propIndex, Study study) {
        boolean elsewhere = study.verdict() == Verdict.DIFFERENT
                ? study.preferred().form().move() == Move.FREE
                : study.verdict() == Verdict.UNDETERMINED && !study.subject().isMuddled();
        Map<Integer, Study> there = new LinkedHashMap<>();
        if (elsewhere) {
            near(propIndex, study).forEach(host -> there.put(host, study));
        }
        Optional<Seat> seat = best(there);
        if (seat.isEmpty() && (elsewhere || study.verdict() == Verdict.UNEXPLAINED)) {
            seat = best(otherDepths.apply(propIndex));
        }
        seat.ifPresent(found -> seats.put(propIndex, found));
    }

    /** The place that explains most, if any does. */
    private Optional<Seat> best(Map<Integer, Study> byHost) {
        List<Seat> explained = new ArrayList<>();
        byHost.forEach((host, study) -> {
            List<Candidate> readings = study.chooseAt(props.get(host));
            if (!readings.isEmpty()) {
                explained.add(new Seat(study, host, readings));
            }
        });
        return explained.stream()
                .min(Comparator.comparingDouble(seat -> seat.readings().get(0).squaredError()));
    }

    /** The props that are described nearest to where the zero point of this one was found. */
    private List<Integer> near(int propIndex, Study study) {
        Placement found = found(study);
        double reach = reach(study);
        return propsByX.subMap(found.x() - reach, true, found.x() + reach, true).values().stream()
                .flatMap(List::stream)
                .filter(other -> other != propIndex)
                .filter(other -> distance(props.get(other).placement(), found) <= reach)
                .sorted(Comparator.comparingDouble(
                        other -> distance(props.get(other).placement(), found)))
                .limit(PLACES_TRIED)
                .toList();
    }

    private static Placement found(Study study) {
        Subject subject = study.subject();
        Candidate reading = study.verdict() == Verdict.UNDETERMINED ? moved(subject) : study.preferred();
        return Placed.of(reading, reading.similarity(subject.measured()), reading.turnFit(subject.measured()))
                .placement();
    }

    private static Candidate moved(Subject subject) {
        Form move = new Form(Move.FREE, Turn.STAYS, false, false, WiringKind.AS_DESCRIBED);
        return new Candidate(move, subject.stance(), Wiring.AS_DESCRIBED, 0);
    }

    private static double reach(Study study) {
        ReadingBuilder builder = new ReadingBuilder(study.subject(), study.sigma());
        return NEAR * Math.max(study.sigma(), builder.placeError(study.preferred()));
    }

    private double distance(Placement a, Placement b) {
        double dx = a.x() - b.x();
        double dy = a.y() - b.y();
        double dz = dimensions == Dimensions.DEEP ? a.z() - b.z() : 0;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private List<Exchange> circles(Map<Integer, String> placeOf) {
        List<Exchange> exchanges = new ArrayList<>();
        Set<Integer> settled = new HashSet<>();
        for (int start : seats.keySet().stream().sorted().toList()) {
            Set<Integer> circle = circle(start);
            if (circle.isEmpty()) {
                placeOf.put(start, name(seats.get(start).host()));
            } else if (settled.addAll(circle)) {
                circle.forEach(this::settle);
                exchanges.add(new Exchange(circle.stream().map(this::name).toList()));
            }
        }
        return exchanges;
    }

    private void settle(int propIndex) {
        Seat seat = seats.get(propIndex);
        seat.study().settleAt(props.get(seat.host()), seat.readings());
        studies.put(propIndex, seat.study());
    }

    /** The props that one comes by, from place to place, until it comes back to the first; empty if it does not. */
    private Set<Integer> circle(int start) {
        Set<Integer> passed = new LinkedHashSet<>();
        int at = start;
        while (seats.containsKey(at) && passed.add(at)) {
            at = seats.get(at).host();
        }
        return at == start ? passed : Set.of();
    }

    private String name(int propIndex) {
        return props.get(propIndex).prop().name();
    }
}
