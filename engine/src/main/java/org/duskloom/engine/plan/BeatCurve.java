package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.LevelCurve;

/** 1 on every beat, falling to 0 at the next. */
record BeatCurve(FrameBeats beats) implements LevelCurve {
    @Override
    public double at(double showSecond) {
        return 1 - beats.knots().shareAt(beats.knots().partsOf(showSecond));
    }

    @Override
    public boolean hearsBeats() {
        return true;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text("beat").list(List.copyOf(beats.beats().known()), FingerprintWriter::value);
    }
}
