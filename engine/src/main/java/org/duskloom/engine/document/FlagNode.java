package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/**
 * The JSON literal true or false.
 *
 * @param location where it starts
 * @param value which of the two
 */
public record FlagNode(Location location, boolean value) implements Node {
    @Override
    public String kind() {
        return "true or false";
    }
}
