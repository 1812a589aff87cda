package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/**
 * A JSON number.
 *
 * @param location where it starts
 * @param value the nearest double; finite, but NaN where the reader refused the number, in which case the error is
 *     already reported
 * @param written the number as it stands in the file
 */
public record NumberNode(Location location, double value, String written) implements Node {
    @Override
    public String kind() {
        return "a number";
    }
}
