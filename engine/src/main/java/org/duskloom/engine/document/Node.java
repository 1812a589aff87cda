package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/** One JSON value as it was written, with the place where it starts. */
public sealed interface Node permits TextNode, NumberNode, FlagNode, NullNode, ListNode, ObjectNode {
    /** Where the value starts. */
    Location location();

    /** What it is, as a phrase for a message: "a text", "a number", "true or false", "null", "a list", "an object". */
    String kind();
}
