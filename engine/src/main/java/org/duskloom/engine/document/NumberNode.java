package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * A JSON number.
 *
 * @param location where it starts
 * @param value the nearest double; finite, but NaN where the reader refused the number, in which case the error is
 *     already reported
 * @param written the number as it stands in the file
 */
public record NumberNode(Location location, double value, String written) implements Node {
    /** A number that was worked out from what is written at a place; NaN if it comes from a number that was refused. */
    public static NumberNode computed(Location location, double value) {
        return new NumberNode(
                location, value, Double.isFinite(value) ? ShortestDecimal.of(value) : String.valueOf(value));
    }

    @Override
    public String kind() {
        return "a number";
    }
}
