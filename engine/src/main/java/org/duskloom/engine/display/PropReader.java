package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
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
    private final Map<String, ShapeReader.ReadShape> shapes;
    private final Problems problems;
    private final Map<String, Location> firstByName = new HashMap<>();
    private final List<Node> places = new ArrayList<>();

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
                ? object.value(DisplayFields.NAME.name())
                        .filter(TextNode.class::isInstance)
                        .map(text -> Quoted.of(((TextNode) text).value()))
                        .orElse(String.valueOf(number))
                : String.valueOf(number);
        return Fields.of(node, DisplayFields.PROP, "prop " + name, problems).flatMap(this::bound);
    }

    /** Where the props that were read hang, as it is written. */
    List<Node> places() {
        return List.copyOf(places);
    }

    private Optional<Written> bound(Fields fields) {
        Optional<TextNode> name = fields.given(DisplayFields.NAME).filter(this::isFree);
        Optional<ShapeReader.ReadShape> shape =
                fields.given(DisplayFields.SHAPE_NAME).flatMap(this::shape);
        Placement placement = placement(fields);
        boolean reversed = fields.value(DisplayFields.REVERSE);
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
        fields.node(DisplayFields.AT).ifPresent(places::add);
        Point at = fields.node(DisplayFields.AT)
                .flatMap(node -> PointList.point(node, fields.label(DisplayFields.AT), problems))
                .orElse(Point.ORIGIN);
        return new Placement(
                fields.given(DisplayFields.MIRROR).orElse(Mirror.NONE),
                fields.value(DisplayFields.SCALE),
                fields.value(DisplayFields.TURN),
                fields.value(DisplayFields.TILT),
                fields.value(DisplayFields.YAW),
                at.x(),
                at.y(),
                at.z());
    }
}
