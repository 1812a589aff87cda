package org.duskloom.engine.color;

import java.util.Objects;

/**
 * A colour at a place in a palette.
 *
 * @param position 0 to 1
 */
public record PaletteStop(double position, LinearColor color) {
    /**
     * @throws IllegalArgumentException if the position is outside [0, 1] or is NaN
     */
    public PaletteStop {
        Objects.requireNonNull(color, "color");
        if (!(position >= 0 && position <= 1)) {
            throw new IllegalArgumentException("a stop must be in [0, 1]: " + position);
        }
    }
}
