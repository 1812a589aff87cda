package org.duskloom.engine.time;

/** Progress as it is. */
record Unchanged() implements Easing {
    @Override
    public double at(double progress) {
        return Easing.clamped(progress);
    }
}
