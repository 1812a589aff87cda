package org.duskloom.engine.survey.fit;

import org.duskloom.engine.survey.Dimensions;

/**
 * Where the zero point of a prop's shape may be. Two props that were taken for each other are commoner than any turn or
 * mirror image at the place itself; a prop that hangs anywhere needs more of an excuse than a quarter turn or the wrong
 * end, and less than any odd angle. How weights are used stands at {@link Form#weight()}.
 */
enum Move {
    /** Where it is described. */
    STAYS(0),
    /** Where that of another prop is described. */
    TAKES_A_PLACE(1),
    /** Anywhere. */
    FREE(1.8);

    private final double weight;

    Move(double weight) {
        this.weight = weight;
    }

    double weight() {
        return weight;
    }

    int parameters(Dimensions dimensions) {
        return this == FREE ? dimensions.count() : 0;
    }
}
