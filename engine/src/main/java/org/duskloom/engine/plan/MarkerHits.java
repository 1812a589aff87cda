package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.MusicClock;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;

/** Some markers, in order of time. */
final class MarkerHits implements Hits {
    /** Behind the last marker there is none that is ever reached. */
    private static final ExactTime FAR = ExactTime.ofSeconds(90_000);

    private final List<ExactTime> instants;
    private final FrameKnots knots;
    private final MusicClock[] clocks;

    /**
     * @param instants rising, one at least
     * @param beats of the music, to count by
     */
    MarkerHits(List<ExactTime> instants, FrameRate rate, Optional<FrameBeats> beats) {
        this.instants = List.copyOf(instants);
        List<ExactTime> all = new ArrayList<>(instants);
        all.add(instants.get(instants.size() - 1).plus(FAR));
        knots = new FrameKnots(all, rate);
        clocks = instants.stream()
                .map(instant -> beats.map(music -> music.from(instant)).orElse(MusicClock.NONE))
                .toArray(MusicClock[]::new);
    }

    @Override
    public long lastAt(long frame) {
        return number(knots.numberAt(knots.partsOf(frame)));
    }

    @Override
    public long lastBefore(double showSecond) {
        return number(knots.numberAt(knots.partsOf(showSecond) - 1));
    }

    private static long number(long found) {
        return found < 0 ? NEVER : found;
    }

    @Override
    public double since(long frame, Period.Unit unit) {
        long last = lastAt(frame);
        if (last == NEVER) {
            return 0;
        }
        MusicClock clock = clocks[(int) Math.min(last, clocks.length - 1L)];
        return switch (unit) {
            case SECONDS -> knots.secondsSince(last, knots.partsOf(frame));
            case BEATS -> clock.beatsAt(frame);
            case BARS -> clock.barsAt(frame);
        };
    }

    @Override
    public double shareToNext(long frame) {
        long last = lastAt(frame);
        return last == NEVER || last >= instants.size() - 1 ? 0 : knots.shareAt(knots.partsOf(frame));
    }

    @Override
    public boolean isEndless() {
        return false;
    }

    @Override
    public boolean hearsBeats() {
        return false;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text("markers").list(instants, FingerprintWriter::value);
    }
}
