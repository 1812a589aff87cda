package org.duskloom.engine.display;

import java.util.Objects;
import org.duskloom.engine.map.Prop;

/**
 * A prop of a display: which shape it has and how it stands.
 *
 * @param prop its pixels and parts in the pixel map
 * @param shape what it is one of
 * @param placement how it stands on the stage
 * @param reversed whether it is wired from the other end: its pixel k is the k-th last of the shape
 */
public record PlacedProp(Prop prop, Shape shape, Placement placement, boolean reversed) {
    public PlacedProp {
        Objects.requireNonNull(prop, "prop");
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(placement, "placement");
    }

    /** Which pixel of the shape a pixel of the prop is, both from 0. */
    public int shapePixel(int propPixel) {
        return reversed ? shape.pixelCount() - 1 - propPixel : propPixel;
    }
}
