package org.duskloom.engine.timeline;

/** Along which axes a cue measures. */
public enum Axes implements Word {
    /** Those of the stage: up is up however a prop hangs. */
    STAGE("stage"),
    /** Those of the shape, so that the look turns with the prop. */
    OWN("own"),
    /** Turned from the prop's own for each member: its right points away from the middle of its prop. */
    OUTWARD("outward");

    private final String word;

    Axes(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
