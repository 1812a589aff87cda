package org.duskloom.engine.preview;

import java.util.OptionalInt;

/**
 * How a contact strip is laid out; what is empty is chosen so that the sheet suits a screen.
 *
 * @param columns panels side by side; no more than there are moments
 * @param panelWidth width of a panel in dots of the picture, from {@value #NARROWEST}
 * @param pixelSize diameter of a pixel in dots of the picture, 1 to {@value #LARGEST_PIXEL}; panels that are not given
 *     a width become so wide that neighbours stay apart
 * @param propNames whether props are named in the panels, where there is room
 */
public record StripOptions(OptionalInt columns, OptionalInt panelWidth, OptionalInt pixelSize, boolean propNames) {
    /** The narrowest panel that can be asked for: a time fits under it. */
    public static final int NARROWEST = 64;

    /** The largest pixel that can be asked for. */
    public static final int LARGEST_PIXEL = 100;

    /** @throws IllegalArgumentException if a number is too small or too large */
    public StripOptions {
        int pixel = pixelSize.orElse(1);
        if (columns.orElse(1) < 1 || panelWidth.orElse(NARROWEST) < NARROWEST || pixel < 1 || pixel > LARGEST_PIXEL) {
            throw new IllegalArgumentException(
                    "columns from 1, panels from " + NARROWEST + " dots, pixels of 1 to " + LARGEST_PIXEL);
        }
    }

    /** Panels and pixels of the chosen sizes. */
    public StripOptions(OptionalInt columns, OptionalInt panelWidth, boolean propNames) {
        this(columns, panelWidth, OptionalInt.empty(), propNames);
    }

    /** The same with panels of a width, unless they have one. */
    StripOptions withPanelWidth(int dots) {
        return panelWidth.isPresent() ? this : new StripOptions(columns, OptionalInt.of(dots), pixelSize, propNames);
    }

    /** Everything chosen, no names. */
    public static StripOptions standard() {
        return new StripOptions(OptionalInt.empty(), OptionalInt.empty(), false);
    }
}
