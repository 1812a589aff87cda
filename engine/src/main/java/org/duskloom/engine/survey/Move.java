package org.duskloom.engine.survey;

/** Where the zero point of a prop's shape may be. */
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
