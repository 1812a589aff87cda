package org.duskloom.engine.meter.light;

import java.util.List;

/**
 * How much of a display is used over a run.
 *
 * @param props in wiring order
 * @param hues the colours, most light first; shares of all light of the frames that were looked at, together 1
 */
public record UseFigures(List<PropUse> props, List<HueShare> hues) {
    public UseFigures {
        props = List.copyOf(props);
        hues = List.copyOf(hues);
    }

    /**
     * A colour.
     *
     * @param share of all light
     */
    public record HueShare(LightHue hue, double share) {}

    /** How many pixels are never lit. */
    public int neverLitCount() {
        return props.stream().mapToInt(prop -> prop.neverLit().length).sum();
    }
}
