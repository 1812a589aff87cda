package org.duskloom.engine.frame;

import java.util.Objects;

/**
 * A stretch of a show with a caption.
 *
 * @param firstFrame where it begins, in frames from the start of the show
 * @param frames how many frames it lasts, at least one
 * @param caption what it is, in a few words
 * @param sight what a person should see, in a sentence without a full stop
 */
public record RunStep(long firstFrame, long frames, String caption, String sight) {
    public RunStep {
        Objects.requireNonNull(caption, "caption");
        Objects.requireNonNull(sight, "sight");
        if (firstFrame < 0 || frames < 1) {
            throw new IllegalArgumentException(caption + ": " + frames + " frames from " + firstFrame);
        }
    }

    /** The frame in its middle. */
    public long middleFrame() {
        return firstFrame + frames / 2;
    }
}
