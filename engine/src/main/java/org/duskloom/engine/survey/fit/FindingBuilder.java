package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.Rival;
import org.duskloom.engine.survey.Slip;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.Wiring;
import org.joml.Matrix3d;
import org.joml.Vector3d;

/** Turns a finished study into a finding. */
final class FindingBuilder {
    private static final int MOST_RIVALS = 2;

    private final Study study;
    private final Subject subject;
    private final ReadingBuilder readings;
    private final Optional<String> placeOf;

    FindingBuilder(Study study, Optional<String> placeOf) {
        this.study = study;
        this.subject = study.subject();
        this.readings = new ReadingBuilder(subject, study.sigma());
        this.placeOf = placeOf;
    }

    /** The finding of a prop that differs for itself, or not. */
    Finding alone() {
        Reading preferred = readings.reading(study.preferred(), study.host());
        boolean isFar = preferred.typicalMisfit() > subject.typicalStep();
        if (study.verdict() == Verdict.UNEXPLAINED && isFar) {
            return finding(readings.reading(study.asDescribed(), subject.prop()), List.of());
        }
        return finding(preferred, study.verdict() == Verdict.DIFFERENT ? rivals(preferred) : List.of());
    }

    /** One that is less simple and that no measurement would tell is of no use beside one that is as simple. */
    private List<Rival> rivals(Reading preferred) {
        List<Rival> rivals = new ArrayList<>();
        int changes = study.preferred().form().changes();
        for (Candidate candidate : study.chosen().subList(1, study.chosen().size())) {
            Reading reading = readings.reading(candidate, study.host());
            Rival rival = Rivals.rival(subject, preferred, reading, study.sigma());
            boolean isSimple = candidate.form().changes() == changes;
            if (rivals.size() < MOST_RIVALS
                    && (isSimple || rivals.isEmpty() || rival.test().isPresent())) {
                rivals.add(rival);
            }
        }
        return rivals;
    }

    /** The finding of a prop that moved together with others. */
    Finding together(int index, Similarity motion) {
        Reading own = readings.reading(study.preferred(), study.host());
        List<Change> changes = new ArrayList<>(List.of(new Change.MovedTogether(index)));
        own.changes().stream()
                .filter(change -> change instanceof Change.Rewired)
                .forEach(changes::add);
        Reading unmeasured = new Reading(changes, moved(motion), own.wiring(), 0, 0, 0);
        Misfits misfits = new Misfits(unmeasured.places(subject.prop()), subject.measured(), subject.dimensions());
        Reading together = new Reading(
                changes,
                unmeasured.placement(),
                own.wiring(),
                misfits.typical(),
                misfits.distance(misfits.worst()),
                subject.measured().pixel(misfits.worst()));
        return finding(together, List.of());
    }

    /** The prop's placement after a motion of the stage. */
    private Placement moved(Similarity motion) {
        Placement from = subject.prop().placement();
        Vector3d to = motion.of(from.x(), from.y(), from.z());
        if (subject.dimensions() == Dimensions.FLAT && subject.stance().turnsInItsOwnPlane()) {
            double turn = Rotations.normalized(from.turnDegrees() + motion.turnDegrees());
            return new Placement(from.mirror(), from.scale(), turn, 0, 0, to.x, to.y, from.z());
        }
        double[] angles = Rotations.angles(motion.rotation()
                .mul(Rotations.rotation(from.turnDegrees(), from.tiltDegrees(), from.yawDegrees()), new Matrix3d()));
        double depth = subject.dimensions() == Dimensions.DEEP ? to.z : from.z();
        return new Placement(from.mirror(), from.scale(), angles[0], angles[1], angles[2], to.x, to.y, depth);
    }

    private Finding finding(Reading reading, List<Rival> rivals) {
        boolean unclear = !subject.isMuddled() && (study.verdict() == Verdict.UNDETERMINED || study.isLimited());
        return new Finding(
                subject.prop(),
                subject.isMuddled() ? 0 : subject.measured().count(),
                study.verdict(),
                asDescribed().typical(),
                reading,
                rivals,
                subject.isMuddled() ? Optional.empty() : readings.estimate(study.preferred()),
                unclear ? Optional.of(Shortages.of(subject, study.sigma())) : Optional.empty(),
                slips(reading),
                subject.muddles(),
                placeOf);
    }

    /**
     * How far they are from where the others put them: by the reading that is told, or the nearest one where none
     * explains.
     */
    private List<Slip> slips(Reading reading) {
        if (subject.slips().isEmpty()) {
            return List.of();
        }
        boolean explained = study.verdict() == Verdict.AS_DESCRIBED || study.verdict() == Verdict.DIFFERENT;
        Reading others = explained ? reading : readings.reading(subject.freest(), subject.prop());
        Misfits misfits = new Misfits(others.places(subject.prop()), subject.everyOne(), subject.dimensions());
        return IntStream.range(0, subject.everyOne().count())
                .filter(i -> subject.slips().contains(subject.everyOne().pixel(i)))
                .mapToObj(i -> new Slip(subject.everyOne().pixel(i), misfits.distance(i)))
                .toList();
    }

    private Misfits asDescribed() {
        Reading described = new Reading(List.of(), subject.prop().placement(), Wiring.AS_DESCRIBED, 0, 0, 0);
        return new Misfits(described.places(subject.prop()), subject.measured(), subject.dimensions());
    }
}
