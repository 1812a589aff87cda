package org.duskloom.engine.display;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Reads the props of a display, one after the other. */
final class PropReader {
    private static final double MOST_DEGREES = 3600;
    private static final double SMALLEST_SCALE = 0.001;
    private static final double LARGEST_SCALE = 1000;

    private final Map<String, ShapeReader.ReadShape> shapes;
    private final Problems problems;
    private final Map<String, Location> firstByName = new HashMap<>();

    PropReader(Map<String, ShapeReader.ReadShape> shapes, Problems problems) {
        this.shapes = shapes;
        this.problems = problems;
    }

    /**
     * A prop as written.
     *
     * @param name its name
     * @param shape its shape; empty if there is none of that name
     * @param placement how it stands
     * @param reversed whether it is wired from the other end
     * @param location where its name stands
     */
    record Written(
            String name,
            Optional<ShapeReader.ReadShape> shape,
            Placement placement,
            boolean reversed,
            Location location) {}

    /** The prop, in spite of errors too, as long as it has a name of its own. */
    Optional<Written> read(Node node, int number) {
        String name = node instanceof ObjectNode object
                ? object.value("name")
                        .filter(TextNode.class::isInstance)
                        .map(text -> Quoted.of(((TextNode) text).value()))
                        .orElse(String.valueOf(number))
                : String.valueOf(number);
        return Fields.of(node, "prop " + name, problems).flatMap(this::bound);
    }

    private Optional<Written> bound(Fields fields) {
        fields.require("name", "shape", "at");
        Optional<TextNode> name = fields.textNode("name").filter(this::isFree);
        Optional<ShapeReader.ReadShape> shape = fields.textNode("shape").flatMap(this::shape);
        Placement placement = placement(fields);
        boolean reversed = fields.flag("reverse").orElse(false);
        fields.finish();
        return name.map(text -> new Written(text.value(), shape, placement, reversed, text.location()));
    }

    private boolean isFree(TextNode name) {
        Optional<String> fault = Names.fault(name.value());
        if (fault.isPresent()) {
            problems.error(name.location(), "the prop name " + Quoted.of(name.value()) + " " + fault.get());
            return false;
        }
        Location first = firstByName.putIfAbsent(name.value(), name.location());
        if (first != null) {
            problems.error(
                    name.location(), "two props are called " + Quoted.of(name.value()), "the first stands at " + first);
        }
        return first == null;
    }

    private Optional<ShapeReader.ReadShape> shape(TextNode written) {
        ShapeReader.ReadShape shape = shapes.get(written.value());
        if (shape == null) {
            problems.error(
                    written.location(),
                    "there is no shape " + Quoted.of(written.value()),
                    NearestName.hint(written.value(), shapes.keySet()));
        }
        return Optional.ofNullable(shape);
    }

    private Placement placement(Fields fields) {
        Point at = fields.node("at")
                .flatMap(node -> PointList.point(node, "\"at\" of " + fields.what(), problems))
                .orElse(Point.ORIGIN);
        Mirror mirror = fields.choice("mirror", Mirror.words()).map(Mirror::of).orElse(Mirror.NONE);
        double scale = fields.number("scale", SMALLEST_SCALE, LARGEST_SCALE).orElse(1);
        double turn = angle(fields, "turn");
        double tilt = angle(fields, "tilt");
        double yaw = angle(fields, "yaw");
        return new Placement(mirror, scale, turn, tilt, yaw, at.x(), at.y(), at.z());
    }

    private static double angle(Fields fields, String name) {
        return fields.number(name, -MOST_DEGREES, MOST_DEGREES).orElse(0);
    }
}
