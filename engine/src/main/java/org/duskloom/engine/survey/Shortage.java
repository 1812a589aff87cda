package org.duskloom.engine.survey;

import java.util.Objects;

/**
 * What is missing to tell a prop's readings apart.
 *
 * @param kind how the measured pixels lie
 * @param pixelToMeasure the pixel that would tell most, from 0 within its prop
 */
public record Shortage(Kind kind, int pixelToMeasure) {
    /** How the measured pixels lie. */
    public enum Kind {
        /** It is one pixel, or all are at one place. */
        ONE_PLACE,
        /** They are on a line, the prop's pixels are not. */
        ON_A_LINE,
        /** They are in a plane, the prop's pixels are not. */
        IN_A_PLANE,
        /** They lie well, but there are too few of them. */
        TOO_FEW
    }

    public Shortage {
        Objects.requireNonNull(kind, "kind");
    }
}
