package org.duskloom.effects.kit;

import org.duskloom.engine.effect.CueTime;

/** Where each pixel of a canvas lies on a way from 0 to 1, at an instant. */
public interface SharePlane {
    /**
     * The share of the last pixel, so far below 1 that it stays below the next whole number when times of passes are
     * added to it as floats: the last pixel of a periodic pattern does not begin the next period.
     */
    float LAST = 1 - 0x1p-20f;

    /** Shares that do not move. */
    static SharePlane fixed(float[] shares) {
        return new FixedShares(shares);
    }

    /** Whether they are the same at all times; then {@link #begin} does nothing, and threads may share the plane. */
    boolean isConstant();

    /** Goes to an instant, in seconds from the start of the cue. */
    void begin(CueTime time);

    /** Of each pixel, in [0, 1]; not to be written to. */
    float[] shares();
}
