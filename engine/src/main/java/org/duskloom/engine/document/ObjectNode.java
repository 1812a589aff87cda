package org.duskloom.engine.document;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.Location;

/**
 * A JSON object.
 *
 * @param location where its opening brace stands
 * @param fields its fields in the order of the file; no name stands twice
 */
public record ObjectNode(Location location, List<Field> fields) implements Node {
    public ObjectNode {
        fields = List.copyOf(fields);
    }

    @Override
    public String kind() {
        return "an object";
    }

    /** The value of the field of that name, found by going through all fields. */
    public Optional<Node> value(String name) {
        for (Field field : fields) {
            if (field.name().equals(name)) {
                return Optional.of(field.value());
            }
        }
        return Optional.empty();
    }
}
