package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Finds the opposing changes to and from a saturated red of many signals, by both rules that there are. A colour is a
 * saturated red where R / (R + G + B) is 0.8 or more.
 *
 * <ul>
 *   <li>The older rule (WCAG 2.0 and 2.1, after G. Harding and C. Binnie, 2002): max(0, (R - G - B) * 320) changes by
 *       more than 20 from one peak or valley to the next, and one of the two is a saturated red.
 *   <li>The rule of WCAG 2.2: one of the two is a saturated red, and their chromaticities differ by more than 0.2 in
 *       CIE 1976 u'v'. A colour is compared with the one before and with the farthest since the last change: on the way
 *       to red that with the least share of red, on the way from it that with the most. So slow changes count too.
 * </ul>
 *
 * <p>Black has no chromaticity; it is taken for white, the stricter choice. Light under 1/256 of full counts as black,
 * a choice of our own: the last steps of a fade are no flashes.
 */
final class RedSwings {
    /** What {@link #step} gives where a change has come about by the older rule. */
    static final int BY_OLDER_RULE = 1;

    /** What {@link #step} gives where a change has come about by the rule of WCAG 2.2. */
    static final int BY_CHROMATICITY = 2;

    private static final float SATURATED = 0.8f;
    private static final float OLDER_SCALE = 320;
    private static final float OLDER_CHANGE = 20;
    private static final double CHROMATICITY_CHANGE = 0.2;
    private static final float BLACK_BELOW = 1f / 256;
    private static final float MARGIN = 1e-6f;

    /** No share of red, so far. */
    private static final float NONE_LEAST = 2;

    private static final float NONE_MOST = -1;
    private static final byte UP = 1;
    private static final byte DOWN = -1;

    private final float[] olderLeast;
    private final float[] olderMost;
    private final boolean[] leastIsRed;
    private final boolean[] mostIsRed;
    private final byte[] olderDirection;

    /** Whether a saturated red is remembered by either rule. */
    private final boolean[] isWatched;

    /** Whether the last change by chromaticity led to red. */
    private final boolean[] isRed;

    /** The share of red of the colours that are farthest since that change; none where it is beyond 0 to 1. */
    private final float[] leastShare;

    private final float[] mostShare;
    private final Chroma leastRed;
    private final Chroma mostRed;
    /** Of the colour that is looked at, and of the one before. */
    private final Chroma now = new Chroma(1);

    private final Chroma before = new Chroma(1);

    /** CIE 1976 u'v' of many signals. */
    private static final class Chroma {
        private static final float WHITE_U = 0.197839826f;
        private static final float WHITE_V = 0.468336303f;

        private final float[] u;
        private final float[] v;

        Chroma(int signals) {
            u = new float[signals];
            v = new float[signals];
        }

        /** From linear sRGB by way of XYZ (IEC 61966-2-1; CIE 15 for u'v'). */
        void set(int signal, float r, float g, float b) {
            if (isBlack(r, g, b)) {
                u[signal] = WHITE_U;
                v[signal] = WHITE_V;
                return;
            }
            float x = 0.4124564f * r + 0.3575761f * g + 0.1804375f * b;
            float y = 0.2126729f * r + 0.7151522f * g + 0.0721750f * b;
            float z = 0.0193339f * r + 0.1191920f * g + 0.9503041f * b;
            float sum = x + 15 * y + 3 * z;
            u[signal] = 4 * x / sum;
            v[signal] = 9 * y / sum;
        }

        void copy(int signal, Chroma from, int of) {
            u[signal] = from.u[of];
            v[signal] = from.v[of];
        }

        boolean isFar(int signal, Chroma other, int of) {
            double du = u[signal] - other.u[of];
            double dv = v[signal] - other.v[of];
            return du * du + dv * dv > CHROMATICITY_CHANGE * CHROMATICITY_CHANGE;
        }
    }

    /** @param signals how many there are */
    RedSwings(int signals) {
        olderLeast = filled(signals, Float.POSITIVE_INFINITY);
        olderMost = filled(signals, Float.NEGATIVE_INFINITY);
        leastIsRed = new boolean[signals];
        mostIsRed = new boolean[signals];
        olderDirection = new byte[signals];
        isWatched = new boolean[signals];
        isRed = new boolean[signals];
        leastShare = filled(signals, NONE_LEAST);
        mostShare = filled(signals, NONE_MOST);
        leastRed = new Chroma(signals);
        mostRed = new Chroma(signals);
    }

    private static float[] filled(int signals, float value) {
        float[] values = new float[signals];
        Arrays.fill(values, value);
        return values;
    }

    private static boolean isBlack(float r, float g, float b) {
        return r < BLACK_BELOW && g < BLACK_BELOW && b < BLACK_BELOW;
    }

    /** Whether a colour is a saturated red. */
    static boolean isSaturated(float r, float g, float b) {
        return r >= SATURATED * (r + g + b) - MARGIN && !isBlack(r, g, b);
    }

    /**
     * Passes over a colour if it cannot make a change, which is quickly known of nearly all: it is no saturated red,
     * and no such red is remembered.
     *
     * @return whether that was all
     */
    boolean pass(int signal, float r, float g, float b) {
        float sum = r + g + b;
        if (isWatched[signal] || r >= SATURATED * sum - MARGIN && !isBlack(r, g, b)) {
            return false;
        }
        float value = r > g + b ? (r - g - b) * OLDER_SCALE : 0;
        if (value < olderLeast[signal]) {
            olderLeast[signal] = value;
        }
        if (value > olderMost[signal]) {
            olderMost[signal] = value;
        }
        if (r < leastShare[signal] * sum || sum < 3 * BLACK_BELOW) {
            keepLeastRed(signal, r, g, b);
        }
        return true;
    }

    /**
     * Looks at the next colour of a signal, in linear light.
     *
     * @param r0 red, green and blue of the colour before; the same as this one for the first
     * @return {@link #BY_OLDER_RULE}, {@link #BY_CHROMATICITY}, both added, or 0
     */
    int step(int signal, float r, float g, float b, float r0, float g0, float b0) {
        boolean red = isSaturated(r, g, b);
        int found = stepOlder(signal, Math.max(0, (r - g - b) * OLDER_SCALE), red) ? BY_OLDER_RULE : 0;
        if (red) {
            found += toRed(signal, r, g, b, r0, g0, b0) ? BY_CHROMATICITY : 0;
        } else if (mostShare[signal] >= 0) {
            found += fromRed(signal, r, g, b, r0, g0, b0) ? BY_CHROMATICITY : 0;
        } else {
            keepLeastRed(signal, r, g, b);
        }
        isWatched[signal] = mostShare[signal] >= 0 || leastIsRed[signal] || mostIsRed[signal];
        return found;
    }

    private boolean stepOlder(int signal, float value, boolean red) {
        if (value <= olderLeast[signal]) {
            leastIsRed[signal] = red || value == olderLeast[signal] && leastIsRed[signal];
            olderLeast[signal] = value;
        }
        if (value >= olderMost[signal]) {
            mostIsRed[signal] = red || value == olderMost[signal] && mostIsRed[signal];
            olderMost[signal] = value;
        }
        if (olderMost[signal] - olderLeast[signal] <= OLDER_CHANGE) {
            return false;
        }
        if (olderDirection[signal] != UP && value - olderLeast[signal] > OLDER_CHANGE && (red || leastIsRed[signal])) {
            return turn(signal, value, red, UP);
        }
        if (olderDirection[signal] != DOWN && olderMost[signal] - value > OLDER_CHANGE && (red || mostIsRed[signal])) {
            return turn(signal, value, red, DOWN);
        }
        return false;
    }

    private boolean turn(int signal, float value, boolean red, byte to) {
        olderDirection[signal] = to;
        olderLeast[signal] = value;
        olderMost[signal] = value;
        leastIsRed[signal] = red;
        mostIsRed[signal] = red;
        return true;
    }

    private boolean toRed(int signal, float r, float g, float b, float r0, float g0, float b0) {
        now.set(0, r, g, b);
        float share = r / (r + g + b);
        if (share > mostShare[signal]) {
            mostShare[signal] = share;
            mostRed.copy(signal, now, 0);
        }
        if (isRed[signal]) {
            return false;
        }
        before.set(0, r0, g0, b0);
        boolean far = leastShare[signal] <= 1 && now.isFar(0, leastRed, signal)
                || !isSaturated(r0, g0, b0) && now.isFar(0, before, 0);
        if (far) {
            isRed[signal] = true;
            leastShare[signal] = NONE_LEAST;
        }
        return far;
    }

    private boolean fromRed(int signal, float r, float g, float b, float r0, float g0, float b0) {
        now.set(0, r, g, b);
        before.set(0, r0, g0, b0);
        boolean far = now.isFar(0, mostRed, signal) || isSaturated(r0, g0, b0) && now.isFar(0, before, 0);
        if (far) {
            isRed[signal] = false;
            mostShare[signal] = NONE_MOST;
        }
        if (far || !isRed[signal]) {
            keepLeastRed(signal, r, g, b);
        }
        return far;
    }

    private void keepLeastRed(int signal, float r, float g, float b) {
        float sum = r + g + b;
        boolean black = isBlack(r, g, b);
        if (black ? leastShare[signal] > 1f / 3 : r < leastShare[signal] * sum) {
            leastShare[signal] = black ? 1f / 3 : r / sum;
            leastRed.set(signal, r, g, b);
        }
    }
}
