package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Finds the opposing changes of relative luminance of many signals, in the sense of WCAG 2.2 (W3C Recommendation, 5
 * October 2023, "general flash and red flash thresholds"): a change by 10 % or more of the maximum relative luminance
 * from one peak or valley to the next, where the darker of the two is below 0.80. Steps add up: a rise of three small
 * steps is one change as soon as it has come to 10 %.
 */
final class LuminanceSwings {
    private static final float LEAST_CHANGE = 0.1f;
    private static final float DARKER_BELOW = 0.8f;

    /** What misses the least change by so little counts as one: steps such as 0.2 to 0.3 are no floats. */
    private static final float MARGIN = 1e-6f;

    private static final byte UP = 1;
    private static final byte DOWN = -1;

    /** Since the last change. */
    private final float[] least;

    private final float[] most;
    private final byte[] direction;

    /** @param signals how many there are */
    LuminanceSwings(int signals) {
        least = new float[signals];
        most = new float[signals];
        direction = new byte[signals];
        Arrays.fill(least, Float.POSITIVE_INFINITY);
        Arrays.fill(most, Float.NEGATIVE_INFINITY);
    }

    /**
     * Looks at the next value of a signal.
     *
     * @param luminance 0 to 1
     * @return whether a change has come about
     */
    boolean step(int signal, float luminance) {
        float low = least[signal];
        float high = most[signal];
        // Branches, as there is no NaN to be minded: Math.min would mind it.
        if (luminance < low) {
            low = luminance;
            least[signal] = low;
        }
        if (luminance > high) {
            high = luminance;
            most[signal] = high;
        }
        if (high - low < LEAST_CHANGE - MARGIN) {
            return false;
        }
        if (direction[signal] != UP && luminance - low >= LEAST_CHANGE - MARGIN && low < DARKER_BELOW) {
            return turn(signal, luminance, UP);
        }
        if (direction[signal] != DOWN && high - luminance >= LEAST_CHANGE - MARGIN && luminance < DARKER_BELOW) {
            return turn(signal, luminance, DOWN);
        }
        return false;
    }

    private boolean turn(int signal, float luminance, byte to) {
        direction[signal] = to;
        least[signal] = luminance;
        most[signal] = luminance;
        return true;
    }
}
