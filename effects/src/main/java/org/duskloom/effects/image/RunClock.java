package org.duskloom.effects.image;

import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.area.ReelClock;
import org.duskloom.engine.effect.CueTime;

/** Shows each image of an animation for its share of the run. Immutable. */
final class RunClock implements ReelClock {
    /** Rounding must not show an image a frame longer. */
    private static final double ROUNDING = 1e-9;

    private final Motion motion;
    /** Where each image ends, as a share of the run. */
    private final double[] ends;

    RunClock(Film film, Motion motion) {
        this.motion = motion;
        double[] seconds = film.seconds();
        ends = new double[seconds.length];
        double sum = 0;
        for (int i = 0; i < ends.length; i++) {
            sum += seconds[i];
            ends[i] = sum;
        }
        for (int i = 0; i < ends.length; i++) {
            ends[i] /= sum;
        }
    }

    /** How long the file says a run is. */
    static double seconds(Film film) {
        double sum = 0;
        for (double seconds : film.seconds()) {
            sum += seconds;
        }
        return sum;
    }

    @Override
    public int imageAt(CueTime time) {
        double share = motion.passed(time) + (motion.isReversed() ? -ROUNDING : ROUNDING);
        int low = 0;
        int high = ends.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ends[middle] > share) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low < ends.length ? low : 0;
    }
}
