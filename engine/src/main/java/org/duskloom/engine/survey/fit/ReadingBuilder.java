package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Estimate;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.WiringKind;
import org.joml.Matrix3dc;
import org.joml.Vector3d;

/** Makes readings of fitted candidates: works out their values, errors and misfits. */
final class ReadingBuilder {
    private final Subject subject;
    private final double sigma;

    ReadingBuilder(Subject subject, double sigma) {
        this.subject = subject;
        this.sigma = sigma;
    }

    /**
     * The reading of a candidate.
     *
     * @param candidate the candidate
     * @param host the prop at whose place it starts; the prop itself if it takes no place
     */
    Reading reading(Candidate candidate, PlacedProp host) {
        MeasuredProp measured = subject.measured();
        Similarity similarity = candidate.similarity(measured);
        Placed placed = Placed.of(candidate, similarity, candidate.turnFit(measured));
        Misfits misfits = new Misfits(candidate, similarity, measured);
        return new Reading(
                changes(candidate, placed, host),
                placed.placement(),
                candidate.wiring(),
                misfits.typical(),
                misfits.distance(misfits.worst()),
                measured.pixel(misfits.worst()));
    }

    /**
     * How far the prop is moved and turned, if it may be both, with the wiring and the mirror image of a reading;
     * nothing if it is tilted or too little was measured.
     */
    Optional<Estimate> estimate(Candidate reading) {
        Form free = new Form(
                Move.FREE,
                Turn.FREE,
                reading.form().mirrored(),
                false,
                reading.wiring().kind());
        Candidate candidate = new Candidate(free, subject.stance(), reading.wiring(), 0).fittedTo(subject.measured());
        boolean askew = reading.form().turn() == Turn.ALL_WAYS;
        if (askew || candidate.spread(subject.measured()).from() <= 4 * sigma * sigma) {
            return Optional.empty();
        }
        Placed placed =
                Placed.of(candidate, candidate.similarity(subject.measured()), candidate.turnFit(subject.measured()));
        Placement described = subject.prop().placement();
        return Optional.of(new Estimate(
                placed.placement().x() - described.x(),
                placed.placement().y() - described.y(),
                placed.placement().z() - described.z(),
                placeError(candidate),
                placed.turnedDegrees(),
                StrictMath.toDegrees(leverError(candidate))));
    }

    private List<Change> changes(Candidate candidate, Placed placed, PlacedProp host) {
        Placement described = subject.prop().placement();
        Placement now = placed.placement();
        Form form = candidate.form();
        double lever = leverError(candidate);
        List<Change> changes = new ArrayList<>();
        if (form.move() == Move.TAKES_A_PLACE) {
            boolean takesTurn = candidate.stance().placement().turnDegrees() != described.turnDegrees();
            changes.add(new Change.TookThePlace(host.prop().name(), takesTurn));
        }
        if (form.mirrored()) {
            changes.add(new Change.Mirrored(now.mirror()));
        }
        if (form.turn() == Turn.ALL_WAYS) {
            Matrix3dc turn = candidate.similarity(subject.measured()).rotation();
            changes.add(new Change.TurnedInSpace(Rotations.angle(turn)));
        } else if (form.turn() != Turn.STAYS) {
            boolean quarter = form.turn() == Turn.QUARTER;
            changes.add(new Change.Turned(placed.turnedDegrees(), quarter, quarter ? 0 : StrictMath.toDegrees(lever)));
        }
        if (form.resized()) {
            changes.add(new Change.Resized(now.scale() / described.scale(), lever));
        }
        if (form.move() == Move.FREE) {
            changes.add(new Change.Moved(
                    now.x() - described.x(), now.y() - described.y(), now.z() - described.z(), placeError(candidate)));
        }
        if (form.wiring() != WiringKind.AS_DESCRIBED) {
            changes.add(new Change.Rewired(candidate.wiring()));
        }
        return changes;
    }

    /**
     * The standard deviation of a fitted angle in radians, and of a fitted scale relative to it: that of one coordinate
     * by the root of the sum of the squared distances from the point that stays, or from the mean.
     */
    private double leverError(Candidate candidate) {
        double from = candidate.spread(subject.measured()).from();
        return from > 0 ? sigma / Math.sqrt(from) : 0;
    }

    /**
     * The standard deviation of the zero point's place: of the mean place, and of the angle times the distance between
     * both.
     */
    double placeError(Candidate candidate) {
        double lever = leverError(candidate);
        Vector3d mean = candidate.moments(subject.measured()).fromMean();
        double squaredArm = mean.lengthSquared();
        double ofMean = sigma * sigma / subject.measured().count();
        boolean arm =
                candidate.form().turn().parameters() > 0 || candidate.form().resized();
        return Math.sqrt(ofMean + (arm ? lever * lever * squaredArm : 0));
    }
}
