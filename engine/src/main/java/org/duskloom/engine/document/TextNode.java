package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/**
 * A JSON string.
 *
 * @param location where its opening quote stands
 * @param value its text, escapes resolved; well-formed Unicode
 */
public record TextNode(Location location, String value) implements Node {
    @Override
    public String kind() {
        return "a text";
    }
}
