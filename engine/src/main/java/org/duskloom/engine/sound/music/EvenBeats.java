package org.duskloom.engine.sound.music;

import java.util.Arrays;

/** Beats that lie as the tempo says: where the first one is told, and for what has none of its own, a drone or rain. */
final class EvenBeats {
    /** An onset belongs to a beat if it is so near, in periods: off-beats do not. */
    private static final double REACH_PERIODS = 0.12;

    /** Of what an onset is early or late the beats after it keep so much. */
    private static final double KEPT = 0.3;

    private final Onsets onsets;
    private final TempoPath path;
    private final double rate;

    EvenBeats(Onsets onsets, TempoPath path) {
        this.onsets = onsets;
        this.path = path;
        this.rate = onsets.framesPerSecond();
    }

    /** Beats from a first one on that go along with onsets near to them, but never over to those between. */
    double[] following(double firstFrame) {
        return from(firstFrame, true);
    }

    /** Beats from a first one on that follow the path exactly. */
    double[] exactly(double firstFrame) {
        return from(firstFrame, false);
    }

    /** Of all rows that follow the path exactly, the one under which most begins. */
    double[] exactly() {
        double[] best = new double[0];
        double most = Double.NEGATIVE_INFINITY;
        for (int start = 0; start < path.at(0) * rate; start++) {
            double[] row = from(start, false);
            double sum = 0;
            for (double frame : row) {
                sum += Windows.at(onsets.strength(), frame);
            }
            if (sum > most) {
                most = sum;
                best = row;
            }
        }
        return best;
    }

    private double[] from(double start, boolean follows) {
        double[] frames = new double[16];
        int count = 0;
        double expected = start;
        while (expected < onsets.count()) {
            double period = path.at(expected / rate) * rate;
            double found = follows && count > 0 ? onsetNear(expected, REACH_PERIODS * period) : expected;
            frames = count == frames.length ? Arrays.copyOf(frames, 2 * count) : frames;
            frames[count++] = found;
            expected += KEPT * (found - expected) + period;
        }
        return Arrays.copyOf(frames, count);
    }

    /** The strongest frame within a reach; the middle where there is no onset. */
    private double onsetNear(double middle, double reach) {
        double[] strength = onsets.strength();
        double place = middle;
        double most = 0;
        int last = (int) Math.min(strength.length - 2.0, Math.floor(middle + reach));
        for (int n = (int) Math.max(1, Math.ceil(middle - reach)); n <= last; n++) {
            if (strength[n] > most && strength[n] > strength[n - 1] && strength[n] >= strength[n + 1]) {
                most = strength[n];
                place = n;
            }
        }
        return place;
    }
}
