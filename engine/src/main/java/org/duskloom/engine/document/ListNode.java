package org.duskloom.engine.document;

import java.util.List;
import org.duskloom.engine.problem.Location;

/**
 * A JSON array.
 *
 * @param location where its opening bracket stands
 * @param items its values in the order of the file
 */
public record ListNode(Location location, List<Node> items) implements Node {
    public ListNode {
        items = List.copyOf(items);
    }

    @Override
    public String kind() {
        return "a list";
    }
}
