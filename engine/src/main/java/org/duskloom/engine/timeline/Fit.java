package org.duskloom.engine.timeline;

/** How a canvas is laid over its members. */
public enum Fit implements Word {
    /** Centred on the bounding box; the longer half-side becomes 1, the aspect stays. */
    CONTAIN("contain"),
    /** Each axis by itself from -1 to 1. */
    STRETCH("stretch"),
    /** Stage units, from the centre of the bounding box. */
    NONE("none");

    private final String word;

    Fit(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
