package org.duskloom.engine.color;

import java.util.Objects;

/**
 * What lies between the stops of a palette.
 *
 * @param mix the space in which colours are mixed; has no effect on hard bands
 * @param stepped whether each colour holds, unmixed, until the next stop
 * @param cyclic whether the end of the palette joins its start
 */
public record PaletteStyle(ColorMix mix, boolean stepped, boolean cyclic) {
    /** Mixed in OKLab from the first stop to the last. */
    public static final PaletteStyle SMOOTH = new PaletteStyle(ColorMix.OKLAB, false, false);

    public PaletteStyle {
        Objects.requireNonNull(mix, "mix");
    }

    /** Where the colour of this index stands among so many that are spread evenly. */
    double evenPosition(int index, int count) {
        int gaps = stepped || cyclic ? count : count - 1;
        return gaps == 0 ? 0 : (double) index / gaps;
    }
}
