package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * A shape in a size in which it is built. Who drills a shape for a prop of scale 0.9 through a sheet of scale 1 has
 * spoilt the plate, so every scale that props have is drawn by itself.
 *
 * @param shape what it is
 * @param scale how many units of the display one unit of the shape is, above 0
 * @param props the names of the props of that shape and scale, in the order of the display
 * @param otherScales whether other props have the same shape at another scale
 */
public record ScaledShape(Shape shape, double scale, List<String> props, boolean otherScales) {
    public ScaledShape {
        Objects.requireNonNull(shape, "shape");
        props = List.copyOf(props);
    }

    /**
     * What has to be built for these props: shapes in the order of the props, each from the smallest scale to the
     * largest.
     */
    public static List<ScaledShape> of(List<PlacedProp> props) {
        List<ScaledShape> all = new ArrayList<>();
        for (Shape shape : props.stream().map(PlacedProp::shape).distinct().toList()) {
            TreeMap<Double, List<String>> namesByScale = new TreeMap<>();
            for (PlacedProp prop : props) {
                if (prop.shape().equals(shape)) {
                    namesByScale
                            .computeIfAbsent(prop.placement().scale(), scale -> new ArrayList<>())
                            .add(prop.prop().name());
                }
            }
            boolean several = namesByScale.size() > 1;
            namesByScale.forEach((scale, names) -> all.add(new ScaledShape(shape, scale, names, several)));
        }
        return all;
    }

    /** The scale as a person writes it, such as {@code 0.9}. */
    public String scaleText() {
        return ShortestDecimal.of(scale);
    }

    /** What its sheets are called, if nothing else is: its name, and where its scale is not 1, that too. */
    String sheetName() {
        return scale == 1 ? shape.name() : shape.name() + "-scale-" + scaleText();
    }
}
