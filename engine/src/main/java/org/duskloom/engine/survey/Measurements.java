package org.duskloom.engine.survey;

import java.util.List;
import java.util.Objects;

/**
 * Where pixels were measured to hang.
 *
 * @param props the props of which pixels were measured, in wiring order; at least one
 * @param dimensions whether depth was measured
 * @param isPhoto whether they are places in a photo; else they are on the stage
 */
public record Measurements(List<MeasuredProp> props, Dimensions dimensions, boolean isPhoto) {
    /** Measurements on the stage. */
    public Measurements(List<MeasuredProp> props, Dimensions dimensions) {
        this(props, dimensions, false);
    }

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
