package org.duskloom.engine.display;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.wire.Ports;

/**
 * A display as read: what its props are, and what the rest of the program sees of them.
 *
 * @param units what lengths are measured in
 * @param unitsWritten whether the display says so; millimetres are assumed where it does not
 * @param shapes the shapes in the order of the file
 * @param props the props in wiring order, which is the order of the file; the same as those of the map
 * @param groups the addresses that a timeline may use, and the pixels behind them
 * @param ports the data outputs with the props on their lines; none where the display does not speak of them
 */
public record Display(
        Units units, boolean unitsWritten, List<Shape> shapes, List<PlacedProp> props, GroupTree groups, Ports ports) {
    public Display {
        Objects.requireNonNull(units, "units");
        shapes = List.copyOf(shapes);
        props = List.copyOf(props);
        Objects.requireNonNull(groups, "groups");
        Objects.requireNonNull(ports, "ports");
    }

    /** All pixels in wiring order; their own axes are those of the shapes, neither mirrored nor scaled. */
    public PixelMap map() {
        return groups.map();
    }

    /** The shape of that name. */
    public Optional<Shape> shape(String name) {
        return shapes.stream().filter(shape -> shape.name().equals(name)).findFirst();
    }
}
