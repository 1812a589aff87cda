package org.duskloom.engine.report;

import java.util.Objects;

/**
 * How much light a cue paints.
 *
 * @param layer its layer
 * @param cue what it is called
 * @param mask whether it gates light instead
 * @param meanLight the mean relative luminance that it paints by itself, over its pixels while it plays, 0 to 1; as it
 *     was in a few frames that lie evenly
 * @param share how much of all pixels of all frames it is played on
 */
public record CueUse(String layer, String cue, boolean mask, double meanLight, double share) {
    public CueUse {
        Objects.requireNonNull(layer, "layer");
        Objects.requireNonNull(cue, "cue");
    }
}
