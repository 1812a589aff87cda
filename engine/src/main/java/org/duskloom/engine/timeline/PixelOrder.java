package org.duskloom.engine.timeline;

/** The order in which an effect runs along pixels. */
public enum PixelOrder implements Word {
    /** Members one after the other, each along its wire. */
    WIRING("wiring"),
    /** From left to right. */
    RIGHT("right"),
    /** From the bottom up. */
    UP("up"),
    /** From the centre out. */
    OUTWARD("outward"),
    /** Round the centre as the hands of a clock, from the top. */
    CLOCKWISE("clockwise"),
    /**
     * Members one after the other, each round its own middle as the hands of a clock, from its top as the audience sees
     * it, whatever the axes.
     */
    AROUND("around"),
    /** Each member lights as one step. */
    MEMBERS("members");

    private final String word;

    PixelOrder(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
