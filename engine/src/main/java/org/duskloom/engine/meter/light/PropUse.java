package org.duskloom.engine.meter.light;

import java.util.Objects;

/**
 * How much of a prop is used over a run.
 *
 * @param prop its name
 * @param pixelCount how many pixels it has
 * @param darkShare the share of the frames in which all of it is dark
 * @param meanLight the mean of its relative luminance over all pixels and frames, 0 to 1
 * @param neverLit its pixels that are dark in every frame, from 0, rising
 * @param columns the mean relative luminance in each of some hundred equal stretches of the run, for a chart
 */
public record PropUse(
        String prop, int pixelCount, double darkShare, double meanLight, int[] neverLit, float[] columns) {
    public PropUse {
        Objects.requireNonNull(prop, "prop");
    }
}
