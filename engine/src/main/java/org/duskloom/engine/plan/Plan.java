package org.duskloom.engine.plan;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.time.FrameRate;

/**
 * A show that is ready to be rendered. Immutable; any number of threads may render any of its frames.
 *
 * @param rate frames per second
 * @param frameCount how many frames there are, from 0
 * @param pixelCount how many pixels a frame has
 * @param layers from the bottom up
 * @param brushCount how many brushes a thread needs: one for each canvas, but plays of a cue after each other share
 */
public record Plan(FrameRate rate, long frameCount, int pixelCount, List<PlannedLayer> layers, int brushCount) {
    public Plan {
        Objects.requireNonNull(rate, "rate");
        layers = List.copyOf(layers);
    }

    /**
     * What decides the frames of each stretch of so many frames, by value: two stretches with the same fingerprint, of
     * one plan or of two, have the same bytes; see {@link PlannedCue#fingerprint()}. Of what is not seen in a stretch
     * its fingerprint does not depend.
     *
     * @param stretchFrames how many frames a stretch has, at least 1; the last one may have fewer
     */
    public List<Fingerprint> fingerprints(long stretchFrames) {
        return StretchFingerprints.of(this, stretchFrames);
    }
}
