package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Puts parts that are known by path into each other. */
final class PartTree {
    private final Map<String, int[]> pixelsByPath;
    private final Function<String, Location> locationOf;
    private final Problems problems;
    private final Map<String, List<String>> pathsInside = new HashMap<>();

    /**
     * @param pixelsByPath the pixels of every part, in order
     * @param locationOf where a part is defined; asked for those only that reach out of the part round them
     * @param problems where errors go
     */
    PartTree(Map<String, int[]> pixelsByPath, Function<String, Location> locationOf, Problems problems) {
        this.pixelsByPath = pixelsByPath;
        this.locationOf = locationOf;
        this.problems = problems;
        pixelsByPath
                .keySet()
                .forEach(path -> pathsInside
                        .computeIfAbsent(PartPath.parent(path), key -> new ArrayList<>())
                        .add(path));
    }

    /** The outermost parts. A part with a pixel that the part round it has not is an error and is left out. */
    List<Part> parts() {
        return pathsInside.getOrDefault("", List.of()).stream().map(this::part).toList();
    }

    private Part part(String path) {
        List<Part> children = new ArrayList<>();
        List<String> inside = pathsInside.getOrDefault(path, List.of());
        BitSet pixels = new BitSet();
        if (!inside.isEmpty()) {
            Arrays.stream(pixelsByPath.get(path)).forEach(pixels::set);
        }
        for (String inner : inside) {
            OptionalInt stray = Arrays.stream(pixelsByPath.get(inner))
                    .filter(pixel -> !pixels.get(pixel))
                    .findFirst();
            if (stray.isEmpty()) {
                children.add(part(inner));
            } else {
                report(inner, path, stray.getAsInt());
            }
        }
        return new Part(PartPath.name(path), pixelsByPath.get(path), children);
    }

    private void report(String inner, String outer, int pixel) {
        problems.error(
                locationOf.apply(inner),
                "part " + Quoted.of(inner) + " has pixel " + (pixel + 1) + ", which is not in " + Quoted.of(outer),
                "a part inside another has pixels of that one only");
    }
}
