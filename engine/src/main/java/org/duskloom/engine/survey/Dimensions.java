package org.duskloom.engine.survey;

/** Whether depth was measured. */
public enum Dimensions {
    /** x and y only: what the audience sees from the front. */
    FLAT(2),
    /** x, y and z. */
    DEEP(3);

    private final int count;

    Dimensions(int count) {
        this.count = count;
    }

    /** How many coordinates a point has. */
    public int count() {
        return count;
    }
}
