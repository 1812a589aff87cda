package org.duskloom.engine.sound.music;

import java.util.Arrays;

/**
 * Beats by dynamic programming: D. P. W. Ellis, Beat Tracking by Dynamic Programming, J. New Music Research 36(1),
 * 2007. Of all rows of beats that one which has the greatest sum of onset strengths less what it costs that steps
 * differ from the period, log(step / period) squared. The period is that of the tempo path at each place.
 */
final class BeatTracker {
    /** What it costs that a step is e times too long, in strengths of an onset. */
    private static final double TIGHTNESS = 300;

    private BeatTracker() {}

    /** Frames of the beats, between frames where the strength has its peak there. */
    static double[] track(Onsets onsets, TempoPath path) {
        double[] strength = onsets.strength();
        int count = strength.length;
        double rate = onsets.framesPerSecond();
        double[] best = new double[count];
        int[] from = new int[count];
        double[] logs = logs((int) Math.ceil(2 * longest(path, count / rate) * rate) + 2);
        for (int n = 0; n < count; n++) {
            double period = path.at(n / rate) * rate;
            double logPeriod = StrictMath.log(period);
            double most = 0;
            from[n] = -1;
            for (int m = Math.max(0, n - (int) Math.round(2 * period)); m <= n - (int) Math.round(period / 2); m++) {
                double log = logs[n - m] - logPeriod;
                double value = best[m] - TIGHTNESS * log * log;
                if (value > most) {
                    most = value;
                    from[n] = m;
                }
            }
            best[n] = strength[n] + most;
        }
        return count == 0 ? new double[0] : traced(best, from, strength, path.at(count / rate) * rate);
    }

    private static double[] logs(int count) {
        double[] logs = new double[count];
        for (int i = 1; i < count; i++) {
            logs[i] = StrictMath.log(i);
        }
        return logs;
    }

    private static double longest(TempoPath path, double seconds) {
        double most = path.at(0);
        for (int i = 0; i <= seconds + 1; i++) {
            most = Math.max(most, path.at(i));
        }
        return most;
    }

    private static double[] traced(double[] best, int[] from, double[] strength, double period) {
        int last = 0;
        for (int n = Math.max(0, best.length - (int) Math.ceil(2 * period)); n < best.length; n++) {
            last = best[n] > best[last] ? n : last;
        }
        double[] beats = new double[best.length];
        int size = 0;
        for (int n = last; n >= 0; n = from[n]) {
            beats[size++] = refined(strength, n);
        }
        double[] result = new double[size];
        for (int i = 0; i < size; i++) {
            result[i] = beats[size - 1 - i];
        }
        Arrays.sort(result);
        return result;
    }

    /** The top of the parabola through a peak and what stands beside it. */
    private static double refined(double[] strength, int n) {
        if (n == 0 || n == strength.length - 1) {
            return n;
        }
        double before = strength[n - 1];
        double after = strength[n + 1];
        double bend = before - 2 * strength[n] + after;
        return bend >= 0 || before > strength[n] || after > strength[n] ? n : n + 0.5 * (before - after) / bend;
    }
}
