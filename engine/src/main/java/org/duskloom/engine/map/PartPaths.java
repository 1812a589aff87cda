package org.duskloom.engine.map;

import java.util.ArrayList;
import java.util.List;

/** Lists a tree of parts as paths. */
final class PartPaths {
    private PartPaths() {}

    static List<String> of(List<Part> parts) {
        List<String> paths = new ArrayList<>();
        collect(parts, "", paths);
        return List.copyOf(paths);
    }

    private static void collect(List<Part> parts, String prefix, List<String> paths) {
        for (Part part : parts) {
            paths.add(prefix + part.name());
            collect(part.children(), prefix + part.name() + "/", paths);
        }
    }
}
