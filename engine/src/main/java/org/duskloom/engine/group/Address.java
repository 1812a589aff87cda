package org.duskloom.engine.group;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * One address as written, taken apart.
 *
 * @param text the whole address
 * @param head the first name or pattern
 * @param steps the names or patterns of the parts, outer first; empty for a whole prop or a group
 * @param location where it is written
 */
record Address(String text, String head, List<String> steps, Location location) {
    static Optional<Address> of(TextNode written, Problems problems) {
        String text = written.value();
        String[] names = text.split("/", -1);
        for (String name : names) {
            if (name.isBlank()) {
                String message = text.isEmpty() ? "the address is empty" : Quoted.of(text) + " holds an empty name";
                problems.error(written.location(), message, "an address is prop, prop/part or group");
                return Optional.empty();
            }
        }
        List<String> all = List.of(names);
        return Optional.of(new Address(text, names[0], all.subList(1, all.size()), written.location()));
    }

    /** The parts' names as they are written, with their slashes. */
    String path() {
        return String.join("/", steps);
    }
}
