package org.duskloom.engine.survey;

/** How a prop may be turned, from the turn that is described. */
enum Turn {
    /** Not at all. */
    STAYS(0, 0, 0),
    /** By one, two or three quarters of a turn, as the audience sees it. */
    QUARTER(0, 1, 1),
    /** By any angle, as the audience sees it. */
    FREE(1, 1, 2),
    /** Every way; where depth was measured. */
    ALL_WAYS(3, 2, 4);

    private final int parameters;
    private final int changes;
    private final double weight;

    Turn(int parameters, int changes, double weight) {
        this.parameters = parameters;
        this.changes = changes;
        this.weight = weight;
    }

    /** How many things differ. */
    int changes() {
        return changes;
    }

    /** How far-fetched it is. */
    double weight() {
        return weight;
    }

    /** How many numbers are fitted. */
    int parameters() {
        return parameters;
    }
}
