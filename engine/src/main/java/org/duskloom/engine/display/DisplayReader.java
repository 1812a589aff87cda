package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.wire.PortFields;
import org.duskloom.engine.wire.PortReader;
import org.duskloom.engine.wire.PowerFields;

/** Reads a display from its JSON tree. What it may hold stands in {@link DisplayFields}. */
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
        Optional<Display> display = Fields.of(root, DisplayFields.DISPLAY, "the display", problems)
                .flatMap(new DisplayReader(files, problems)::bound);
        return problems.errorCount() > errorsBefore ? Optional.empty() : display;
    }

    private Optional<Display> bound(Fields fields) {
        fields.given(DisplayFields.FORMAT);
        Optional<Units> units = fields.given(DisplayFields.UNITS);
        Map<String, ShapeReader.ReadShape> shapes = shapes(fields, units.orElse(Units.MILLIMETRES));
        PropPlacer placer = new PropPlacer(props(fields, shapes), problems);
        Optional<PixelMap> map = placer.map();
        Optional<Node> groups = fields.node(DisplayFields.GROUPS);
        PortReader.Written wiring = new PortReader.Written(
                fields.given(PowerFields.KINDS).orElse(List.of()),
                fields.given(PortFields.PORTS),
                fields.given(PowerFields.SUPPLIES));
        return map.map(pixels -> {
            GroupTree tree = groups.map(node -> GroupReader.read(node, pixels, placer.incomplete(), problems))
                    .orElseGet(() -> GroupTree.of(pixels, placer.incomplete()));
            return new Display(
                    units.orElse(Units.MILLIMETRES),
                    units.isPresent(),
                    shapes.values().stream().map(ShapeReader.ReadShape::shape).toList(),
                    placer.props(),
                    tree,
                    PortReader.read(
                            wiring, tree, units.orElse(Units.MILLIMETRES).millimetres() / 1000, problems));
        });
    }

    private Map<String, ShapeReader.ReadShape> shapes(Fields fields, Units units) {
        ShapeReader reader = new ShapeReader(files, units, problems);
        Map<String, ShapeReader.ReadShape> shapes = new LinkedHashMap<>();
        for (Field field : fields.given(DisplayFields.SHAPES).orElse(List.of())) {
            shapes.put(field.name(), reader.read(field));
        }
        return shapes;
    }

    private List<PropReader.Written> props(Fields fields, Map<String, ShapeReader.ReadShape> shapes) {
        PropReader reader = new PropReader(shapes, problems);
        List<PropReader.Written> props = new ArrayList<>();
        Optional<ListNode> list = fields.given(DisplayFields.PROPS);
        int number = 1;
        for (Node item : list.map(ListNode::items).orElse(List.of())) {
            reader.read(item, number++).ifPresent(props::add);
        }
        SplitNumbers.warn(reader.places(), problems);
        return props;
    }
}
