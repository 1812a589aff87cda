package org.duskloom.engine.sound.music;

/**
 * The period of the beat from second to second, near to one of the whole song: the way through the tempogram that fits
 * best and bends least (Viterbi).
 */
final class TempoPath {
    /** Periods tried lie so far apart. */
    private static final double STEP = 0.01;

    /** And reach so many steps to both sides: 20 %. */
    private static final int REACH = 20;

    private static final int MOST_STEPS_PER_SECOND = 4;
    private static final double BEND_COST = 0.02;

    private final double[] periods;

    private TempoPath(double[] periods) {
        this.periods = periods;
    }

    /** @param wishes a tempo that is told is not left */
    static TempoPath near(Tempogram tempogram, double periodSeconds, Wishes wishes) {
        int states = 2 * REACH + 1;
        double[] tried = new double[states];
        for (int s = 0; s < states; s++) {
            double period = periodSeconds * StrictMath.exp(STEP * (s - REACH));
            tried[s] = wishes.sayTempo() ? wishes.within(period) : period;
        }
        int count = tempogram.count();
        int[][] from = new int[count][states];
        double[] best = new double[states];
        for (int w = 0; w < count; w++) {
            double[] next = new double[states];
            for (int s = 0; s < states; s++) {
                double most = Double.NEGATIVE_INFINITY;
                for (int k = -MOST_STEPS_PER_SECOND; k <= MOST_STEPS_PER_SECOND; k++) {
                    int before = s + k;
                    if (before >= 0 && before < states && best[before] - BEND_COST * k * k > most) {
                        most = best[before] - BEND_COST * k * k;
                        from[w][s] = before;
                    }
                }
                next[s] = most + tempogram.at(w, tried[s]);
            }
            best = next;
        }
        return new TempoPath(traced(tried, from, best));
    }

    private static double[] traced(double[] tried, int[][] from, double[] best) {
        int state = 0;
        for (int s = 0; s < best.length; s++) {
            state = best[s] > best[state] ? s : state;
        }
        double[] periods = new double[from.length];
        for (int w = from.length - 1; w >= 0; w--) {
            periods[w] = tried[state];
            state = from[w][state];
        }
        return Windows.gaussian(periods, 2);
    }

    /** The period at a time. */
    double at(double seconds) {
        double place = Math.max(0, Math.min(periods.length - 1, seconds));
        return Windows.at(periods, place);
    }

    /** How well the song repeats along the path, at best 1. */
    double meanFit(Tempogram tempogram) {
        double sum = 0;
        for (int w = 0; w < tempogram.count(); w++) {
            sum += tempogram.at(w, at(w));
        }
        return sum / tempogram.count();
    }
}
