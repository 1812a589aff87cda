package org.duskloom.engine.timeline;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.ExactTime;

/**
 * A piece of timeline with layers and a clock of its own, as written.
 *
 * @param name what it is called
 * @param location where it is defined
 * @param length from its start to its end; above zero
 * @param same whether every play of it makes the same random choices
 * @param layers from the bottom up; times count from the start of the scene
 * @param names the first names of the addresses in it and in the scenes that it plays, as far as those are not told
 *     what they stand for, with the place where each is written first
 */
public record Scene(
        String name,
        Location location,
        ExactTime length,
        boolean same,
        List<Layer> layers,
        Map<String, Location> names) {
    public Scene {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(location, "location");
        Objects.requireNonNull(length, "length");
        layers = List.copyOf(layers);
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    }
}
