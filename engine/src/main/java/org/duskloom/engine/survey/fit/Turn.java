package org.duskloom.engine.survey.fit;

/**
 * How a prop may be turned, from the turn that is described. Quarters are what a square bracket or a wrong hole makes;
 * any angle is rarer; a turn in all ways is one about a second axis as well, so that it counts as two changes and
 * weighs twice as much. How weights are used stands at {@link Form#weight()}.
 */
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
