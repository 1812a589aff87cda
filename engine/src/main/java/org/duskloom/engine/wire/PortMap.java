package org.duskloom.engine.wire;

import java.util.Objects;
import org.duskloom.engine.map.PixelMap;

/**
 * The ports of a display and the pixels that hang on them.
 *
 * @param ports at least one
 * @param map the pixels that chains name by their global indices
 */
public record PortMap(Ports ports, PixelMap map) {
    /**
     * @throws IllegalArgumentException if there is no port
     */
    public PortMap {
        Objects.requireNonNull(map, "map");
        if (ports.isEmpty()) {
            throw new IllegalArgumentException("no ports");
        }
    }
}
