package org.duskloom.engine.map;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.problem.Location;

/**
 * One physical thing that carries pixels.
 *
 * @param name its name; see {@link Names}
 * @param firstPixel global index of its first pixel, from 0
 * @param pixelCount how many pixels it has, at least 1
 * @param parts its parts: numbered ones by number if all are numbered, else by lowest pixel, then by name
 * @param definedAt where it is defined
 */
public record Prop(String name, int firstPixel, int pixelCount, List<Part> parts, Location definedAt) {
    /**
     * @throws IllegalArgumentException if the name is not allowed, a count is out of range, a part's name stands twice
     *     or a part has a pixel beyond the last
     */
    public Prop {
        Names.fault(name).ifPresent(fault -> {
            throw new IllegalArgumentException("prop name \"" + name + "\" " + fault);
        });
        Objects.requireNonNull(definedAt, "definedAt");
        if (firstPixel < 0 || pixelCount < 1) {
            throw new IllegalArgumentException("prop \"" + name + "\" has no pixel");
        }
        parts = Part.inOrder(parts);
        Part.requireDistinctNames(parts);
        for (Part part : parts) {
            if (Arrays.stream(part.pixels()).max().orElseThrow() >= pixelCount) {
                throw new IllegalArgumentException("part \"" + part.name() + "\" goes beyond prop \"" + name + "\"");
            }
        }
    }

    /** The part at a path such as {@code petals} or {@code petals/3}. */
    public Optional<Part> part(String path) {
        List<Part> level = parts;
        Optional<Part> found = Optional.empty();
        for (String step : path.split("/", -1)) {
            found = level.stream().filter(part -> part.name().equals(step)).findFirst();
            level = found.map(Part::children).orElse(List.of());
        }
        return found;
    }

    /** The paths of all parts, outer before inner, in order. */
    public List<String> partPaths() {
        return PartPaths.of(parts);
    }
}
