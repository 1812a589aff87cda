package org.duskloom.engine.time;

import org.duskloom.engine.digest.FingerprintWriter;

/** Progress as it is. */
record Unchanged() implements Easing {
    @Override
    public double at(double progress) {
        return Easing.clamped(progress);
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text("linear");
    }
}
