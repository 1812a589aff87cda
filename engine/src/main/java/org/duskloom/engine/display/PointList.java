package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;

/** Reads places: {@code [x, y]} or {@code [x, y, z]}, and lists of them. */
final class PointList {
    private static final ValueKind<?> COORDINATE =
            new ValueKind.Number("", -MapReader.MAX_COORDINATE, MapReader.MAX_COORDINATE);

    /** One place. */
    static final ValueKind.Own PLACE =
            ValueKind.Own.of("place: `[x, y]` or `[x, y, z]`", new ValueKind.Items(COORDINATE, 2, 3, ""));

    private PointList() {}

    /** Places, at least so many. */
    static ValueKind.Own places(int atLeast) {
        return ValueKind.Own.of(
                "list of places: `[x, y]` or `[x, y, z]`",
                new ValueKind.Items(PLACE, atLeast, Integer.MAX_VALUE, "each a place such as [0, 100]"));
    }

    /** A list of places, at least so many; nothing if one of them is wrong. */
    static Optional<List<Point>> read(Node node, String what, int atLeast, Problems problems) {
        Optional<ListNode> list = Expected.list(node, what, problems);
        if (list.isEmpty()) {
            return Optional.empty();
        }
        List<Node> items = list.get().items();
        if (items.size() < atLeast) {
            problems.error(
                    node.location(),
                    what + " has " + Counted.of(items.size(), "item"),
                    "allowed: at least " + atLeast + ", each a place such as [0, 100]");
            return Optional.empty();
        }
        SplitNumbers.warn(items, problems);
        List<Point> points = new ArrayList<>(items.size());
        for (int i = 0; i < items.size(); i++) {
            point(items.get(i), "item " + (i + 1) + " of " + what, problems).ifPresent(points::add);
        }
        return points.size() == items.size() ? Optional.of(points) : Optional.empty();
    }

    /** One place. */
    static Optional<Point> point(Node node, String what, Problems problems) {
        Optional<ListNode> list = Expected.list(node, what, problems);
        if (list.isEmpty()) {
            return Optional.empty();
        }
        List<Node> items = list.get().items();
        if (items.size() < 2 || items.size() > 3) {
            problems.error(
                    node.location(),
                    what + " has " + Counted.of(items.size(), "item"),
                    "allowed: 2 or 3 numbers, [x, y] or [x, y, z]"
                            + SplitNumbers.joined(items)
                                    .map(place -> "; the decimal sign is a dot: " + place)
                                    .orElse(""));
            return Optional.empty();
        }
        double[] values = new double[3];
        boolean complete = true;
        for (int i = 0; i < items.size(); i++) {
            OptionalDouble value = Expected.number(
                    items.get(i),
                    "xyz".charAt(i) + " in " + what,
                    -MapReader.MAX_COORDINATE,
                    MapReader.MAX_COORDINATE,
                    problems);
            complete &= value.isPresent();
            values[i] = value.orElse(0);
        }
        return complete ? Optional.of(new Point(values[0], values[1], values[2])) : Optional.empty();
    }
}
