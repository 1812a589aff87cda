package org.duskloom.engine.survey.fit;

import java.util.Objects;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Wiring;
import org.joml.Vector3d;

/**
 * The reading of one form that fits best: what it starts from, which wiring of its kind it takes, and what it leaves
 * over. Its other values follow from these.
 *
 * @param form what differs
 * @param stance where it starts from
 * @param wiring the order of the pixels
 * @param squaredError the sum of the squared distances of the measured pixels from where it puts them
 */
record Candidate(Form form, Stance stance, Wiring wiring, double squaredError) {
    Candidate {
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(stance, "stance");
        Objects.requireNonNull(wiring, "wiring");
    }

    /** The pairs of places that it brings together: those described for its wiring, and those measured. */
    Moments moments(MeasuredProp measured) {
        return MeasuredMoments.of(stance, measured, form.mirrored(), wiring);
    }

    /** What brings them together, counted from the zero point of the stance, in its axes. */
    Similarity similarity(MeasuredProp measured) {
        Moments moments = moments(measured);
        PairSpread spread = spread(moments);
        TurnFit turn = turnFit(spread);
        double scale = spread.scale(turn.match(), form.sizing());
        if (form.move() != Move.FREE) {
            return new Similarity(turn.rotation(), scale, new Vector3d());
        }
        return Similarity.taking(moments.fromMean(), moments.toMean(), turn.rotation(), scale);
    }

    TurnFit turnFit(MeasuredProp measured) {
        return turnFit(spread(moments(measured)));
    }

    /** The spread of the places that are moved, about the point that stays or about their mean. */
    PairSpread spread(MeasuredProp measured) {
        return spread(moments(measured));
    }

    /** The same form and wiring, fitted to other measurements. */
    Candidate fittedTo(MeasuredProp measured) {
        PairSpread spread = spread(moments(measured));
        return new Candidate(form, stance, wiring, spread.left(turnFit(spread).match(), form.sizing()));
    }

    /** The same at the place that it starts from, which is another prop's. */
    Candidate takingAPlace() {
        return new Candidate(form.takingAPlace(), stance, wiring, squaredError);
    }

    private PairSpread spread(Moments moments) {
        return form.move() == Move.FREE ? moments.aboutMeans() : moments.aboutOrigin();
    }

    private TurnFit turnFit(PairSpread spread) {
        return TurnFit.of(spread.cross(), form.turn(), form.mirrored(), stance.mirrorsInY());
    }
}
