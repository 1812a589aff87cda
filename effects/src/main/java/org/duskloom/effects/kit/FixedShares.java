package org.duskloom.effects.kit;

import org.duskloom.engine.effect.CueTime;

/** Shares that do not move. */
final class FixedShares implements SharePlane {
    private final float[] shares;

    FixedShares(float[] shares) {
        this.shares = shares;
    }

    @Override
    public boolean isConstant() {
        return true;
    }

    @Override
    public void begin(CueTime time) {
        // They are the same at all times.
    }

    @Override
    public float[] shares() {
        return shares;
    }
}
