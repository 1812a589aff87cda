package org.duskloom.engine.display;

/** How a prop is built the other way round than its shape is drawn. */
public enum Mirror {
    /** As drawn. */
    NONE("none", 1, 1),
    /** x changes its sign: left and right change places. */
    X("x", -1, 1),
    /** y changes its sign: top and bottom change places. */
    Y("y", 1, -1);

    private final String word;
    private final double signX;
    private final double signY;

    Mirror(String word, double signX, double signY) {
        this.word = word;
        this.signX = signX;
        this.signY = signY;
    }

    /** The word that stands in the file; {@link #NONE} is written by leaving it out. */
    public String word() {
        return word;
    }

    double signX() {
        return signX;
    }

    double signY() {
        return signY;
    }
}
