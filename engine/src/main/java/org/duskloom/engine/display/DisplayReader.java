package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Format;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;

/**
 * Reads a display from its JSON tree.
 *
 * <ul>
 *   <li>{@code duskloom}: {@code "display/1"}; required.
 *   <li>{@code units}: {@code "mm"} (default), {@code "cm"}, {@code "m"} or {@code "in"}, the unit of all lengths.
 *   <li>{@code shapes}: an object of shapes by name; required. A shape has {@code build}, a list of steps that make pixels in wiring
 *       order, or {@code pixels}, the path of a CSV file with the columns {@code pixel,x,y} and, where wanted, {@code z} and {@code
 *       part}; and, where wanted, {@code parts}.
 *   <li>A step is an object with one of {@code ring}, {@code arc}, {@code line}, {@code polyline}, {@code grid}, {@code spokes}, {@code
 *       helix}, {@code points}, and, where wanted, {@code part}: the path of the part that its pixels form. Steps that name the same
 *       part share it. The lines of a grid, the spokes and the turns of a helix become numbered parts of that part.
 *   <li>{@code parts}: an object of further parts by path. A part is written as pixel ranges ({@code "1-6, 9, 14-10"}, order kept,
 *       falling ranges run backwards) or as a list of parts, whose pixels follow each other.
 *   <li>{@code props}: the list of props in wiring order; required. A prop has {@code name}, {@code shape} and {@code at} ({@code [x, y]}
 *       or {@code [x, y, z]}), all required; and, where wanted, {@code mirror} ({@code "x"}: left and right change places, {@code
 *       "y"}: top and bottom do), {@code scale} (0.001 to 1000), {@code turn}, {@code tilt} and {@code yaw} (degrees, see {@link
 *       Placement}), {@code reverse} (wired from the other end; parts keep the order of their pixels).
 *   <li>{@code groups}: see {@link GroupReader}.
 * </ul>
 */
public final class DisplayReader {
    /** What the field {@code duskloom} of a display must say. */
    public static final String FORMAT = "display/1";

    private final ShapeFiles files;
    private final Problems problems;

    private DisplayReader(ShapeFiles files, Problems problems) {
        this.files = files;
        this.problems = problems;
    }

    /**
     * Reads a display.
     *
     * @param root the whole file
     * @param files reads the files that it names
     * @param problems where errors and warnings go; all of them, not only the first
     * @return the display, or nothing if an error was added
     */
    public static Optional<Display> read(Node root, ShapeFiles files, Problems problems) {
        int errorsBefore = problems.errorCount();
        PlacementMatrix.alteringProperty(System.getProperties())
                .ifPresent(name -> problems.error(
                        root.location(),
                        "the Java property " + name + " is set, with which props are placed differently",
                        "run without -D" + name));
        Optional<Display> display =
                Fields.of(root, "the display", problems).flatMap(new DisplayReader(files, problems)::bound);
        return problems.errorCount() > errorsBefore ? Optional.empty() : display;
    }

    private Optional<Display> bound(Fields fields) {
        Format.check(fields, FORMAT, problems);
        Optional<Units> units = fields.choice("units", Units.words()).flatMap(Units::of);
        fields.require("shapes", "props");
        Map<String, ShapeReader.ReadShape> shapes = shapes(fields);
        PropPlacer placer = new PropPlacer(props(fields, shapes), problems);
        Optional<PixelMap> map = placer.map();
        Optional<Node> groups = fields.node("groups");
        fields.finish();
        return map.map(pixels -> new Display(
                units.orElse(Units.MILLIMETRES),
                units.isPresent(),
                shapes.values().stream().map(ShapeReader.ReadShape::shape).toList(),
                placer.props(),
                groups.map(node -> GroupReader.read(node, pixels, placer.incomplete(), problems))
                        .orElseGet(() -> GroupTree.of(pixels))));
    }

    private Map<String, ShapeReader.ReadShape> shapes(Fields fields) {
        ShapeReader reader = new ShapeReader(files, problems);
        Map<String, ShapeReader.ReadShape> shapes = new LinkedHashMap<>();
        Optional<ObjectNode> object =
                fields.node("shapes").flatMap(node -> Expected.object(node, "\"shapes\" of the display", problems));
        for (Field field : object.map(ObjectNode::fields).orElse(List.of())) {
            shapes.put(field.name(), reader.read(field));
        }
        return shapes;
    }

    private List<PropReader.Written> props(Fields fields, Map<String, ShapeReader.ReadShape> shapes) {
        PropReader reader = new PropReader(shapes, problems);
        List<PropReader.Written> props = new ArrayList<>();
        Optional<ListNode> list = fields.list("props");
        if (list.isPresent() && list.get().items().isEmpty()) {
            problems.error(list.get().location(), "\"props\" of the display is empty", "put one prop in it at least");
        }
        int number = 1;
        for (Node item : list.map(ListNode::items).orElse(List.of())) {
            reader.read(item, number++).ifPresent(props::add);
        }
        return props;
    }
}
