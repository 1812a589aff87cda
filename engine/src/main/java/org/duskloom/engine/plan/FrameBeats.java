package org.duskloom.engine.plan;

import java.math.BigInteger;
import org.duskloom.engine.effect.MusicClock;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.Pulse;
import org.duskloom.engine.time.Ratio;

/** The beats of the music over the frames of a show. Immutable; asking allocates nothing. */
final class FrameBeats {
    private final Beats beats;
    private final FrameKnots knots;
    private final int[] bars;

    FrameBeats(Beats beats, FrameRate rate) {
        this.beats = beats;
        this.knots = new FrameKnots(beats.known(), rate);
        this.bars = beats.bars().stream().mapToInt(Integer::intValue).toArray();
    }

    /** Where the beats lie. */
    FrameKnots knots() {
        return knots;
    }

    /** The beats as they are written. */
    Beats beats() {
        return beats;
    }

    /** The number of the bar in which a beat is, below 0 before the first. */
    long bar(long beat) {
        int from = barInterval(beat);
        return from + Math.floorDiv(beat - bars[from], bars[from + 1] - bars[from]);
    }

    /** The number of the beat that starts a bar. */
    long beatOf(long bar) {
        int from = (int) Math.max(0, Math.min(bars.length - 2, bar));
        return bars[from] + (bar - from) * (bars[from + 1] - bars[from]);
    }

    /** How far a place between a beat and the next is within its bar, in [0, 1). */
    double shareOfBar(long beat, double share) {
        long bar = bar(beat);
        long first = beatOf(bar);
        return (beat - first + share) / (beatOf(bar + 1) - first);
    }

    private int barInterval(long beat) {
        int low = 0;
        int high = bars.length - 2;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (bars[middle] <= beat) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** The clock of members that begin at an instant of the show. */
    MusicClock from(ExactTime start) {
        Ratio place = beats.placeOf(Pulse.BEAT, start);
        long beat = place.floor().longValueExact();
        return new Clock(
                this,
                start.seconds(),
                beat,
                place.minus(new Ratio(place.floor(), BigInteger.ONE)).nearest());
    }

    /**
     * Beats since an instant. Where that is as far behind its beat as a frame is behind one, the difference is whole.
     *
     * @param beat the number of the beat before the start
     * @param share how far the start is from there to the next
     */
    private record Clock(FrameBeats all, double startSeconds, long beat, double share) implements MusicClock {
        @Override
        public double beatsAt(long frame) {
            long part = all.knots.partsOf(frame);
            return all.knots.numberAt(part) - beat + (all.knots.shareAt(part) - share);
        }

        @Override
        public double barsAt(long frame) {
            long part = all.knots.partsOf(frame);
            long now = all.knots.numberAt(part);
            double inBar = all.shareOfBar(now, all.knots.shareAt(part)) - all.shareOfBar(beat, share);
            return all.bar(now) - all.bar(beat) + inBar;
        }

        @Override
        public double secondsAfterBeats(double beats) {
            return all.knots.seconds(beat + share + beats) - startSeconds;
        }

        @Override
        public double secondsAfterBars(double bars) {
            double place = all.bar(beat) + all.shareOfBar(beat, share) + bars;
            long bar = (long) Math.floor(place);
            long first = all.beatOf(bar);
            double inBeats = first + (place - bar) * (all.beatOf(bar + 1) - first);
            return all.knots.seconds(inBeats) - startSeconds;
        }
    }
}
