package org.duskloom.engine.display;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Location;

/**
 * A kind of prop, drawn once in its own axes.
 *
 * @param name its name
 * @param pixels where its pixels are in its own axes, in wiring order, in the display's unit; at least one
 * @param parts its parts; indices from 0
 * @param runs the stretches of pixels that were made together, in wiring order; together they are all pixels
 * @param definedAt where its name stands in the display
 */
public record Shape(String name, Positions pixels, List<Part> parts, List<Run> runs, Location definedAt) {
    public Shape {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(pixels, "pixels");
        parts = List.copyOf(parts);
        runs = List.copyOf(runs);
        Objects.requireNonNull(definedAt, "definedAt");
    }

    /** How many pixels it has; at least 1. */
    public int pixelCount() {
        return pixels.size();
    }

    /**
     * The pixels that one build step or one file made.
     *
     * @param kind the word of the step, such as {@code ring}, or {@code pixels} for a file
     * @param firstPixel index of the first, from 0
     * @param pixelCount how many, at least 1
     * @param location where the step stands, or the file's first row
     * @param lines the line of each of its pixels in the file; empty where they have no rows of their own
     */
    public record Run(String kind, int firstPixel, int pixelCount, Location location, List<Integer> lines) {
        public Run {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(location, "location");
            lines = List.copyOf(lines);
        }

        /** A run of a build step. */
        Run(String kind, int firstPixel, int pixelCount, Location location) {
            this(kind, firstPixel, pixelCount, location, List.of());
        }

        /** Where a pixel of the shape stands, which is one of the run's. */
        Location locationOf(int pixel) {
            return lines.isEmpty() ? location : new Location(location.file(), lines.get(pixel - firstPixel), 1);
        }
    }
}
