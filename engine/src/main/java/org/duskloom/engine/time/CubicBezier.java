package org.duskloom.engine.time;

import org.duskloom.engine.digest.FingerprintWriter;

/**
 * The curve of the control points (0, 0), (x1, y1), (x2, y2), (1, 1): its y where its x is the progress (W3C CSS Easing
 * Functions Level 1, "Cubic Bezier Easing Functions"). With x1 and x2 in [0, 1] x never falls, so there is one such y.
 */
record CubicBezier(double x1, double y1, double x2, double y2) implements Easing {
    /** After so many rounds nothing but halving is left to try, which then takes at most 60 more to reach 2^-60. */
    private static final int NEWTON_ROUNDS = 40;

    private static final int MOST_ROUNDS = 100;
    private static final double CLOSE_ENOUGH = 1e-15;

    CubicBezier {
        if (!(x1 >= 0 && x1 <= 1 && x2 >= 0 && x2 <= 1)) {
            throw new IllegalArgumentException("x1 and x2 must be in [0, 1]: " + x1 + ", " + x2);
        }
    }

    @Override
    public double at(double progress) {
        double x = Easing.clamped(progress);
        return x == 0 || x == 1 ? x : along(y1, y2, parameterAt(x));
    }

    /**
     * Newton's steps where they stay inside the bracket and the error falls by half, halving the bracket elsewhere.
     * Newton alone fails where the tangent is vertical, as it is in the middle of (0.5, 1, 0.5, 0).
     */
    private double parameterAt(double x) {
        double low = 0;
        double high = 1;
        double t = x;
        double lastError = 1;
        for (int round = 0; round < MOST_ROUNDS && high - low > CLOSE_ENOUGH; round++) {
            double error = along(x1, x2, t) - x;
            if (Math.abs(error) < CLOSE_ENOUGH) {
                return t;
            }
            low = error < 0 ? t : low;
            high = error > 0 ? t : high;
            double next = t - error / slope(x1, x2, t);
            boolean quick = round < NEWTON_ROUNDS && 2 * Math.abs(error) <= lastError;
            lastError = Math.abs(error);
            t = quick && next > low && next < high ? next : (low + high) / 2;
        }
        return t;
    }

    /** One coordinate of the curve, whose ends are 0 and 1. */
    private static double along(double first, double second, double t) {
        double rest = 1 - t;
        return 3 * rest * t * (rest * first + t * second) + t * t * t;
    }

    private static double slope(double first, double second, double t) {
        double rest = 1 - t;
        return 3 * (rest * rest * first + 2 * rest * t * (second - first) + t * t * (1 - second));
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text("cubic-bezier").number(x1).number(y1).number(x2).number(y2);
    }
}
