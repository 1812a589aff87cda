package org.duskloom.engine.timeline;

import java.util.Objects;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.problem.Location;

/**
 * A palette that settings may name.
 *
 * @param location where its name stands
 * @param palette its colours
 */
public record NamedPalette(Location location, Palette palette) {
    public NamedPalette {
        Objects.requireNonNull(location, "location");
        Objects.requireNonNull(palette, "palette");
    }
}
