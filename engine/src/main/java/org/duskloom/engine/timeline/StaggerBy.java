package org.duskloom.engine.timeline;

/** Along what the starts of the members are spread. */
public enum StaggerBy implements Word {
    /** Member k starts k steps later. */
    MEMBERS("members"),
    /** Members that are the same part of different props start together, part after part. */
    PART("part"),
    /** All members of one prop start together, prop after prop. */
    PROP("prop"),
    /** From left to right, by the members' centres. */
    RIGHT("right"),
    /** From right to left. */
    LEFT("left"),
    /** From the bottom up. */
    UP("up"),
    /** From the top down. */
    DOWN("down"),
    /** From the centre out. */
    OUTWARD("outward"),
    /** From the outside in. */
    INWARD("inward"),
    /** Round the centre as the hands of a clock, from the top. */
    CLOCKWISE("clockwise");

    private final String word;

    StaggerBy(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
