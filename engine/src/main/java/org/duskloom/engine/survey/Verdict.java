package org.duskloom.engine.survey;

/** What the measurements say of a prop. */
public enum Verdict {
    /** It hangs as described. */
    AS_DESCRIBED,
    /** It differs, and it is known how. */
    DIFFERENT,
    /** It differs, but too little was measured to tell how. */
    UNDETERMINED,
    /**
     * It differs in a way that no reading explains: bent, or wired in an order of its own. Its reading is the nearest
     * one, or as described if none comes nearer than a step from pixel to pixel.
     */
    UNEXPLAINED
}
