package org.duskloom.engine.preview;

import java.util.OptionalInt;

/**
 * How a contact strip is laid out; what is empty is chosen so that the sheet suits a screen.
 *
 * @param columns panels side by side; no more than there are moments
 * @param panelWidth width of a panel in dots of the picture, from {@value #NARROWEST}
 * @param propNames whether props are named in the panels, where there is room
 */
public record StripOptions(OptionalInt columns, OptionalInt panelWidth, boolean propNames) {
    /** The narrowest panel that can be asked for: a time fits under it. */
    public static final int NARROWEST = 64;

    /** @throws IllegalArgumentException if a number is too small */
    public StripOptions {
        if (columns.orElse(1) < 1 || panelWidth.orElse(NARROWEST) < NARROWEST) {
            throw new IllegalArgumentException("columns from 1, panels from " + NARROWEST + " dots");
        }
    }

    /** Everything chosen, no names. */
    public static StripOptions standard() {
        return new StripOptions(OptionalInt.empty(), OptionalInt.empty(), false);
    }
}
