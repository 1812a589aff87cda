package org.duskloom.engine.survey;

import java.util.List;
import java.util.Objects;

/**
 * Where pixels were measured to hang.
 *
 * @param props the props of which pixels were measured, in wiring order; at least one
 * @param dimensions whether depth was measured
 */
public record Measurements(List<MeasuredProp> props, Dimensions dimensions) {
    /**
     * @throws IllegalArgumentException if there is no prop
     */
    public Measurements {
        props = List.copyOf(props);
        Objects.requireNonNull(dimensions, "dimensions");
        if (props.isEmpty()) {
            throw new IllegalArgumentException("nothing was measured");
        }
    }

    /** How many pixels were measured. */
    public int pixelCount() {
        return props.stream().mapToInt(MeasuredProp::count).sum();
    }
}
