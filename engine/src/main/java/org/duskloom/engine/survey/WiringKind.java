package org.duskloom.engine.survey;

/** In which way the order of the pixels may differ from the one described. */
public enum WiringKind {
    /** Not at all. */
    AS_DESCRIBED(0, 0),
    /** It runs from the last pixel to the first. */
    FROM_OTHER_END(1, 0.9),
    /** On a closed loop: it begins at the same pixel and runs the other way. */
    OTHER_WAY(1, 1.5),
    /** It begins at another pixel. */
    OTHER_START(1, 2.5),
    /** It begins at another pixel and runs the other way. */
    OTHER_WAY_AND_START(2, 4),
    /** One stretch of the pixels begins at another pixel of its own. */
    STRETCH_OTHER_START(1, 3.5),
    /** One stretch of the pixels runs the other way. */
    STRETCH_OTHER_WAY(1, 3.5);

    private final int changes;
    private final double weight;

    WiringKind(int changes, double weight) {
        this.changes = changes;
        this.weight = weight;
    }

    /** How many things went another way than described. */
    int changes() {
        return changes;
    }

    /** How far-fetched it is. */
    double weight() {
        return weight;
    }

    /** Whether there is one such wiring for every pixel, as many as the values that a turn may have. */
    boolean isFree() {
        return this == OTHER_START
                || this == OTHER_WAY_AND_START
                || this == STRETCH_OTHER_START
                || this == STRETCH_OTHER_WAY;
    }

    /** Whether it says all that the other one says, and perhaps more. */
    boolean includes(WiringKind other) {
        return this == other || other == AS_DESCRIBED || this == OTHER_WAY_AND_START && other.ordinal() < ordinal();
    }
}
