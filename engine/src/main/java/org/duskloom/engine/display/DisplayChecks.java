package org.duskloom.engine.display;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Overlaps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.wire.PortChecks;

/** Looks for what is allowed in a display, but mostly is a slip. Everything it finds is a warning. */
public final class DisplayChecks {
    private static final int MAX_SHOWN = 5;

    private DisplayChecks() {}

    /**
     * All checks that a display allows without a timeline: those of {@link #warnOfBuild} and of {@link
     * #warnOfUngrouped}.
     */
    public static void warn(Display display, Problems problems) {
        warnOfBuild(display, problems);
        warnOfUngrouped(display.groups(), problems);
    }

    /**
     * Adds a warning for each of these: pixels at one place, once for props that hang there as a whole; a shape that no
     * prop has; a pixel that stands apart from its neighbours, or a step that jumps, in a list of places or a file;
     * props that hang in the same space; pixels on no port; names that differ by upper and lower case only.
     */
    public static void warnOfBuild(Display display, Problems problems) {
        BiPredicate<Integer, Integer> overlapping = new PropOverlaps(display.map()).warn(problems);
        Overlaps.warned(rounded(display.map()), overlapping, problems);
        warnOfUnusedShapes(display, problems);
        for (Shape shape : display.shapes()) {
            SpacingJumps.warn(shape, problems);
            SimilarNames.warnOfParts(shape, problems);
        }
        PortChecks.warnOfLoosePixels(display.ports(), display.map(), problems);
        SimilarNames.warnOfShapes(display.shapes(), problems);
        SimilarNames.warnOfAddresses(display.groups(), problems);
    }

    /**
     * Adds a warning if wires and leads have lengths whose unit the display does not say.
     *
     * @param file the display's
     */
    public static void warnOfLengths(Display display, Location file, Problems problems) {
        boolean hasLines =
                display.ports().ports().stream().anyMatch(port -> port.line().isPresent());
        boolean hasLeads = display.ports().supplies().stream()
                .flatMap(supply -> supply.feeds().stream())
                .anyMatch(feed -> feed.lead().isPresent());
        if (hasLines || hasLeads) {
            warnOfUnits(display, "'duskloom report' takes", file, problems);
        }
    }

    /**
     * Adds a warning if a display does not say its units.
     *
     * @param whoTakes what is made of its lengths, as in {@code the sheets take}
     * @param file the display's
     */
    public static void warnOfUnits(Display display, String whoTakes, Location file, Problems problems) {
        if (!display.unitsWritten()) {
            problems.warn(
                    file,
                    "the display does not say its \"units\": " + whoTakes + " its lengths for millimetres",
                    "write \"units\": \"mm\", \"cm\", \"m\" or \"in\"");
        }
    }

    /**
     * The checks of a map that is not made of shapes: pixels that stand apart, props that hang in the same space, names
     * that differ by upper and lower case only.
     */
    public static void warnOfPlainMap(GroupTree groups, Problems problems) {
        SpacingJumps.warn(groups.map(), problems);
        new PropOverlaps(groups.map()).warn(problems);
        SimilarNames.warnOfAddresses(groups, problems);
    }

    /**
     * Adds a warning for each group that neither another group uses nor anything else.
     *
     * @param groups the groups
     * @param usedElsewhere the names of groups that timelines use
     * @param problems where warnings go
     */
    public static void warnOfUnusedGroups(GroupTree groups, Set<String> usedElsewhere, Problems problems) {
        for (String name : groups.groupNames()) {
            if (!usedElsewhere.contains(name) && !groups.groupsInGroups().contains(name)) {
                problems.warn(
                        location(groups, name),
                        "group " + Quoted.of(name) + " is not used",
                        "play a cue on it, or remove it if no other show uses it");
            }
        }
    }

    /**
     * Pixels are at one place if they are nearer than a billionth of the stage: what rounding makes of equal places.
     */
    private static PixelMap rounded(PixelMap map) {
        double largest = IntStream.range(0, map.pixelCount())
                .mapToDouble(i -> Math.abs(map.stage().x(i))
                        + Math.abs(map.stage().y(i))
                        + Math.abs(map.stage().z(i)))
                .max()
                .orElse(0);
        // A power of two: typed coordinates lie on its multiples, not between two of them.
        double cell = StrictMath.scalb(1.0, StrictMath.getExponent(largest) - 30);
        if (largest == 0) {
            return map;
        }
        double[][] cells = new double[3][map.pixelCount()];
        for (int i = 0; i < map.pixelCount(); i++) {
            cells[0][i] = Math.rint(map.stage().x(i) / cell);
            cells[1][i] = Math.rint(map.stage().y(i) / cell);
            cells[2][i] = Math.rint(map.stage().z(i) / cell);
        }
        return new PixelMap(map.props(), new Positions(cells[0], cells[1], cells[2]), map.own());
    }

    private static void warnOfUnusedShapes(Display display, Problems problems) {
        Set<String> used = new HashSet<>();
        display.props().forEach(prop -> used.add(prop.shape().name()));
        for (Shape shape : display.shapes()) {
            if (!used.contains(shape.name())) {
                problems.warn(
                        shape.definedAt(),
                        "no prop has the shape " + Quoted.of(shape.name()),
                        "place one, or remove it");
            }
        }
    }

    /** Adds a warning if there are groups, but pixels in none of them; a timeline may name these all the same. */
    public static void warnOfUngrouped(GroupTree groups, Problems problems) {
        if (groups.groupNames().isEmpty()) {
            return;
        }
        BitSet grouped = grouped(groups);
        List<Prop> partly = groups.map().props().stream()
                .filter(prop -> ungrouped(prop, grouped) > 0)
                .toList();
        if (partly.isEmpty()) {
            return;
        }
        List<String> shown = partly.stream()
                .limit(MAX_SHOWN)
                .map(prop ->
                        Quoted.of(prop.name()) + " (" + ungrouped(prop, grouped) + " of " + prop.pixelCount() + ")")
                .toList();
        int more = partly.size() - shown.size();
        problems.warn(
                partly.get(0).definedAt(),
                "pixels in no group: " + String.join(", ", shown) + (more > 0 ? " and of " + more + " more props" : ""),
                "leave it so if cues name these props themselves");
    }

    private static BitSet grouped(GroupTree groups) {
        BitSet grouped = new BitSet();
        for (String name : groups.groupNames()) {
            TextNode address = new TextNode(location(groups, name), name);
            groups.resolve(List.of(address), new Problems()).orElse(List.of()).stream()
                    .flatMapToInt(member -> IntStream.of(member.pixels()))
                    .forEach(grouped::set);
        }
        return grouped;
    }

    private static int ungrouped(Prop prop, BitSet grouped) {
        int end = prop.firstPixel() + prop.pixelCount();
        return prop.pixelCount() - grouped.get(prop.firstPixel(), end).cardinality();
    }

    private static Location location(GroupTree groups, String name) {
        return groups.groupLocation(name).orElseThrow();
    }
}
