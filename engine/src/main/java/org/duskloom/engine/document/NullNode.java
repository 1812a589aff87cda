package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/**
 * The JSON literal null. No field of ours takes it: what is not wanted is left out.
 *
 * @param location where it starts
 */
record NullNode(Location location) implements Node {
    @Override
    public String kind() {
        return "null";
    }
}
