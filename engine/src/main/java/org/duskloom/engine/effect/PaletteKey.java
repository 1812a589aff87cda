package org.duskloom.engine.effect;

import java.util.Objects;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.time.Easing;

/**
 * A palette at a time.
 *
 * @param seconds from the start of the cue, or of the member where members start one after the other
 * @param palette the palette
 * @param easing how it gets there from the key before
 */
public record PaletteKey(double seconds, Palette palette, Easing easing) {
    public PaletteKey {
        Objects.requireNonNull(palette, "palette");
        Objects.requireNonNull(easing, "easing");
    }
}
