package org.duskloom.engine.wire;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.duskloom.engine.problem.Location;

/**
 * A piece of a data line: a prop or a part of one, or pixels that stay dark.
 *
 * @param name the address of the prop or part; empty for dark pixels
 * @param propIndex where the prop stands in the map; -1 for dark pixels
 * @param pixels global pixel indices in the order of the line; {@link #DARK} for a dark one; shared, not to be changed
 * @param location where it is written
 */
public record Link(String name, int propIndex, int[] pixels, Location location) {
    /** Stands for a pixel that is on the line, but not in the map. */
    public static final int DARK = -1;

    public Link {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(location, "location");
    }

    /** The global index of each pixel of a chain, in its order; {@link #DARK} for those that stay dark. */
    static int[] pixels(List<Link> chain) {
        return chain.stream().flatMapToInt(link -> Arrays.stream(link.pixels())).toArray();
    }

    /** How many pixels of the line it takes. */
    public int pixelCount() {
        return pixels.length;
    }

    /** Whether its pixels stay dark. */
    public boolean isDark() {
        return propIndex < 0;
    }
}
