package org.duskloom.engine.plan;

import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.time.Pulse;

/** The beats or the bars of the music, which go on before the first and beyond the last that is known. */
record PulseHits(FrameBeats all, Pulse pulse) implements Hits {
    @Override
    public long lastAt(long frame) {
        return numberOf(all.knots().numberAt(all.knots().partsOf(frame)));
    }

    @Override
    public long lastBefore(double showSecond) {
        return numberOf(all.knots().numberAt(all.knots().partsOf(showSecond) - 1));
    }

    @Override
    public double since(long frame, Period.Unit unit) {
        long part = all.knots().partsOf(frame);
        long beat = all.knots().numberAt(part);
        double share = all.knots().shareAt(part);
        long first = pulse == Pulse.BAR ? all.beatOf(all.bar(beat)) : beat;
        return switch (unit) {
            case SECONDS -> all.knots().secondsSince(first, part);
            case BEATS -> beat - first + share;
            case BARS ->
                pulse == Pulse.BAR
                        ? all.shareOfBar(beat, share)
                        : all.shareOfBar(beat, share) - all.shareOfBar(beat, 0);
        };
    }

    @Override
    public double shareToNext(long frame) {
        long part = all.knots().partsOf(frame);
        double share = all.knots().shareAt(part);
        return pulse == Pulse.BEAT ? share : all.shareOfBar(all.knots().numberAt(part), share);
    }

    @Override
    public boolean isEndless() {
        return true;
    }

    @Override
    public boolean hearsBeats() {
        return true;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text(pulse.name());
    }

    private long numberOf(long beat) {
        return pulse == Pulse.BEAT ? beat : all.bar(beat);
    }
}
