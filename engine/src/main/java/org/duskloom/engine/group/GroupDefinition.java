package org.duskloom.engine.group;

import java.util.List;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;

/** A group as written: the addresses it takes, and those it takes away again. */
record GroupDefinition(String name, Location location, List<TextNode> all, List<TextNode> except) {
    GroupDefinition {
        all = List.copyOf(all);
        except = List.copyOf(except);
    }
}
