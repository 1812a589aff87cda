package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * Makes the pixel map of a display: places the shape of every prop, and turns its wiring round where it is fed from
 * the other end. The pixels of a part keep their order then: a part is a piece of the thing, and a light that runs
 * along it shall run the same way on every prop of the shape.
 */
final class PropPlacer {
    /** Stands in for shapes that are not there, so that the names of their props are known. */
    private static final Shape UNKNOWN = new Shape(
            "unknown",
            new Positions(new double[1], new double[1], new double[1]),
            List.of(),
            List.of(),
            Location.ofFile(""));

    private final Problems problems;
    private final List<PlacedProp> props = new ArrayList<>();
    private final Set<String> incomplete = new HashSet<>();
    private final Map<Shape, List<Part>> reversedParts = new IdentityHashMap<>();
    private final double[][] stage;
    private final double[][] own;
    private int size;

    PropPlacer(List<PropReader.Written> written, Problems problems) {
        this.problems = problems;
        List<PropReader.Written> fitting = fitting(written);
        int count = fitting.stream().mapToInt(prop -> shape(prop).pixelCount()).sum();
        this.stage = new double[3][count];
        this.own = new double[3][count];
        fitting.forEach(this::place);
    }

    /** The props in wiring order. */
    List<PlacedProp> props() {
        return props;
    }

    /** The names of props that may lack parts, because something is wrong with their shapes. */
    Set<String> incomplete() {
        return incomplete;
    }

    /** All pixels; nothing if there is no prop. */
    Optional<PixelMap> map() {
        return props.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new PixelMap(props.stream().map(PlacedProp::prop).toList(), positions(stage), positions(own)));
    }

    /** The props up to the one with which there are too many pixels. */
    private List<PropReader.Written> fitting(List<PropReader.Written> written) {
        long pixels = 0;
        for (int i = 0; i < written.size(); i++) {
            pixels += shape(written.get(i)).pixelCount();
            if (pixels > PixelMap.MAX_PIXELS) {
                problems.error(
                        written.get(i).location(),
                        "with prop " + Quoted.of(written.get(i).name()) + " the display has more than "
                                + PixelMap.MAX_PIXELS + " pixels",
                        "split the display into several");
                return written.subList(0, i);
            }
        }
        return written;
    }

    private void place(PropReader.Written written) {
        Shape shape = shape(written);
        if (!written.shape().map(ShapeReader.ReadShape::complete).orElse(false)) {
            incomplete.add(written.name());
        }
        List<Part> parts = written.reversed() ? reversedParts(shape) : shape.parts();
        Prop prop = new Prop(written.name(), size, shape.pixelCount(), parts, written.location());
        PlacedProp placed = new PlacedProp(prop, shape, written.placement(), written.reversed());
        props.add(placed);
        new PlacementMatrix(written.placement()).place(shape.pixels(), written.reversed(), stage, size);
        for (int i = 0; i < shape.pixelCount(); i++) {
            int pixel = placed.shapePixel(i);
            own[0][size + i] = shape.pixels().x(pixel);
            own[1][size + i] = shape.pixels().y(pixel);
            own[2][size + i] = shape.pixels().z(pixel);
        }
        size += shape.pixelCount();
        checkReach(prop);
    }

    private void checkReach(Prop prop) {
        for (int i = prop.firstPixel(); i < size; i++) {
            double reach = Math.max(Math.abs(stage[0][i]), Math.max(Math.abs(stage[1][i]), Math.abs(stage[2][i])));
            if (reach > MapReader.MAX_COORDINATE) {
                problems.error(
                        prop.definedAt(),
                        "a pixel of prop " + Quoted.of(prop.name()) + " hangs beyond "
                                + (long) MapReader.MAX_COORDINATE,
                        "check \"at\" and \"scale\", or choose a larger unit");
                return;
            }
        }
    }

    private static Shape shape(PropReader.Written written) {
        return written.shape().map(ShapeReader.ReadShape::shape).orElse(UNKNOWN);
    }

    private List<Part> reversedParts(Shape shape) {
        return reversedParts.computeIfAbsent(shape, key -> reversed(shape.parts(), shape.pixelCount() - 1));
    }

    private static List<Part> reversed(List<Part> parts, int last) {
        return parts.stream().map(part -> reversed(part, last)).toList();
    }

    private static Part reversed(Part part, int last) {
        int[] pixels = part.pixels();
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = last - pixels[i];
        }
        return new Part(part.name(), pixels, reversed(part.children(), last));
    }

    private static Positions positions(double[][] values) {
        return new Positions(values[0], values[1], values[2]);
    }
}
