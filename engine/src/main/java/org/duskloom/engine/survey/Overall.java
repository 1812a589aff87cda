package org.duskloom.engine.survey;

import java.util.Objects;
import java.util.Optional;

/**
 * What is wrong with all measurements alike, and thus with the measuring rather than with the display.
 *
 * @param cause what it looks like
 * @param factor how large everything was measured, by what is described; 1 where that is right
 * @param unit the unit that it seems to be measured in instead of the display's, if it is one
 * @param flip how everything is mirrored
 * @param isDepthFlipped whether depth counts the other way too, as behind the display
 */
public record Overall(Cause cause, double factor, Optional<String> unit, Flip flip, boolean isDepthFlipped) {
    /** What it looks like. */
    public enum Cause {
        /** Another unit, another side, or both. */
        READING,
        /** Places in a picture. */
        PHOTO
    }

    /** How everything is mirrored. */
    public enum Flip {
        /** Not at all. */
        NONE,
        /** Left and right are exchanged: x has the wrong sign. */
        LEFT_RIGHT,
        /** Top and bottom are exchanged: y has the wrong sign. */
        TOP_BOTTOM
    }

    public Overall {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(flip, "flip");
    }
}
