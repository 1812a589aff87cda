package org.duskloom.engine.display;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Finds names that differ by upper and lower case only, of which one mostly is a slip. */
final class SimilarNames {
    private final Map<String, String> firstByKey = new HashMap<>();
    private final Problems problems;

    private SimilarNames(Problems problems) {
        this.problems = problems;
    }

    /** Props and groups, which share their names. */
    static void warnOfAddresses(GroupTree groups, Problems problems) {
        SimilarNames names = new SimilarNames(problems);
        for (Prop prop : groups.map().props()) {
            names.add("prop", prop.name(), prop.definedAt());
        }
        groups.groupNames()
                .forEach(name ->
                        names.add("group", name, groups.groupLocation(name).orElseThrow()));
    }

    static void warnOfShapes(List<Shape> shapes, Problems problems) {
        SimilarNames names = new SimilarNames(problems);
        shapes.forEach(shape -> names.add("shape", shape.name(), shape.definedAt()));
    }

    static void warnOfParts(Shape shape, Problems problems) {
        warnOfParts(shape.parts(), shape, problems);
    }

    private static void warnOfParts(List<Part> siblings, Shape shape, Problems problems) {
        SimilarNames names = new SimilarNames(problems);
        for (Part part : siblings) {
            names.add("part", part.name(), shape.definedAt());
            warnOfParts(part.children(), shape, problems);
        }
    }

    private void add(String kind, String name, Location location) {
        String shown = kind + " " + Quoted.of(name);
        String first = firstByKey.putIfAbsent(name.toLowerCase(Locale.ROOT), shown);
        if (first != null) {
            problems.warn(
                    location,
                    shown + " and " + first + " differ by upper and lower case only",
                    "give one of them another name");
        }
    }
}
