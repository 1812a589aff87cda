package org.duskloom.engine.timeline;

/** Whether members share a canvas. */
public enum Spread implements Word {
    /** One canvas round all members together. */
    WHOLE("whole"),
    /** A canvas for each member. */
    EACH("each");

    private final String word;

    Spread(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
