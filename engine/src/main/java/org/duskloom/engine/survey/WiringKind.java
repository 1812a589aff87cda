package org.duskloom.engine.survey;

/** In which way the order of the pixels may differ from the one described. */
public enum WiringKind {
    /** Not at all. */
    AS_DESCRIBED,
    /** It runs from the last pixel to the first. */
    FROM_OTHER_END,
    /** On a closed loop: it begins at the same pixel and runs the other way. */
    OTHER_WAY,
    /** It begins at another pixel. */
    OTHER_START,
    /** It begins at another pixel and runs the other way. */
    OTHER_WAY_AND_START,
    /** One stretch of the pixels begins at another pixel of its own. */
    STRETCH_OTHER_START,
    /** One stretch of the pixels runs the other way. */
    STRETCH_OTHER_WAY
}
