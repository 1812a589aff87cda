package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Finds the opposing changes of relative luminance of many signals, in the sense of WCAG 2.2 (W3C Recommendation, 5
 * October 2023, "general flash and red flash thresholds"): a change by 10 % or more of the maximum relative luminance
 * from one peak or valley to the next, where the darker of the two is below 0.80. Steps add up: a rise of three small
 * steps is one change as soon as it has come to 10 %.
 *
 * <p>After a rise the next change can only be a fall from the highest value since, and after a fall a rise from the
 * lowest: so one number a signal is kept, with the way in which it is followed. Only before the first change both are.
 */
final class LuminanceSwings {
    /** What misses the least change by so little counts as one: steps such as 0.2 to 0.3 are no binary fractions. */
    private static final double MARGIN = 1e-6;

    /** In the units of {@link CodeLight}. */
    private static final int LEAST_CHANGE = (int) Math.ceil((0.1 - MARGIN) * CodeLight.ONE);

    private static final int DARKER_BELOW = (int) Math.floor(0.8 * CodeLight.ONE);

    /** Farther from every value than any change: has a signal looked at. */
    private static final int UNDECIDED = 1 << 30;

    private static final int RISEN = 1;
    private static final int FALLEN = -1;

    /** 1 where the highest value since the last change is followed, -1 where it is the lowest. */
    private final int[] way;

    /** That value times its way. */
    private final int[] extreme;

    /** Of signals without a change so far. */
    private final int[] least;

    private final int[] most;

    /** @param signals how many there are */
    LuminanceSwings(int signals) {
        way = new int[signals];
        extreme = new int[signals];
        least = new int[signals];
        most = new int[signals];
        Arrays.fill(way, RISEN);
        Arrays.fill(extreme, UNDECIDED);
        Arrays.fill(least, Integer.MAX_VALUE);
    }

    /**
     * Follows the next values of signals that stand in a row.
     *
     * @param values one for each
     * @param turning becomes below 0 where {@link #step} is to be called
     */
    void follow(int first, int end, int[] values, int[] turning) {
        int[] ways = way;
        int[] extremes = extreme;
        for (int i = first; i < end; i++) {
            int along = ways[i] * values[i];
            int back = extremes[i] - along;
            // The larger of it and 0, in a way that becomes vector instructions.
            back &= ~(back >> 31);
            extremes[i] = along + back;
            turning[i] = LEAST_CHANGE - 1 - back;
        }
    }

    /**
     * Looks at the next value of a signal. Need not be called of a signal that is followed, unless it is turning.
     *
     * @return whether a change has come about
     */
    boolean step(int signal, int luminance) {
        if (extreme[signal] == UNDECIDED) {
            return stepUndecided(signal, luminance);
        }
        int along = way[signal] * luminance;
        extreme[signal] = Math.max(extreme[signal], along);
        boolean darkEnough = way[signal] == FALLEN || luminance < DARKER_BELOW;
        return extreme[signal] - along >= LEAST_CHANGE && darkEnough && turn(signal, luminance, -way[signal]);
    }

    private boolean stepUndecided(int signal, int luminance) {
        least[signal] = Math.min(least[signal], luminance);
        most[signal] = Math.max(most[signal], luminance);
        if (luminance - least[signal] >= LEAST_CHANGE && least[signal] < DARKER_BELOW) {
            return turn(signal, luminance, RISEN);
        }
        if (most[signal] - luminance >= LEAST_CHANGE && luminance < DARKER_BELOW) {
            return turn(signal, luminance, FALLEN);
        }
        if (luminance == 0) {
            // What has been black can only rise: the same as after a fall to black, and no more is asked of it till
            // then.
            turn(signal, luminance, FALLEN);
        }
        return false;
    }

    private boolean turn(int signal, int luminance, int to) {
        way[signal] = to;
        extreme[signal] = to * luminance;
        return true;
    }
}
