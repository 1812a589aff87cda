package org.duskloom.engine.color;

import java.util.Optional;

/**
 * The mix of two opaque colours as one cubic polynomial of the share for each channel of linear light, not clipped. In
 * linear light the mix is straight. In OKLab the three cube roots of the cone responses are straight in the share, the
 * responses themselves are cubes of these, and the channels are weighted sums of the responses (B. Ottosson, "A
 * perceptual color space for image processing", 2020).
 */
public final class CubicMix {
    private static final int TERMS = 4;

    private final double[] red;
    private final double[] green;
    private final double[] blue;

    private CubicMix(double[] red, double[] green, double[] blue) {
        this.red = red;
        this.green = green;
        this.blue = blue;
    }

    /**
     * The mix from {@code a} (share 0) to {@code b} (share 1); empty where it is no polynomial: if a colour is not
     * opaque, or between different colours in OKLCh.
     */
    public static Optional<CubicMix> between(LinearColor a, LinearColor b, ColorMix mix) {
        if (a.alpha() != 1 || b.alpha() != 1) {
            return Optional.empty();
        }
        if (mix == ColorMix.LINEAR || a.equals(b)) {
            return Optional.of(straight(a, b));
        }
        return mix == ColorMix.OKLAB ? Optional.of(throughOkLab(OkLab.of(a), OkLab.of(b))) : Optional.empty();
    }

    /** Red as the factors of 1, share, its square and its cube. */
    public double[] red() {
        return red.clone();
    }

    /** Green, likewise. */
    public double[] green() {
        return green.clone();
    }

    /** Blue, likewise. */
    public double[] blue() {
        return blue.clone();
    }

    private static CubicMix straight(LinearColor a, LinearColor b) {
        return new CubicMix(straight(a.red(), b.red()), straight(a.green(), b.green()), straight(a.blue(), b.blue()));
    }

    private static double[] straight(double from, double to) {
        return new double[] {from, to - from, 0, 0};
    }

    private static CubicMix throughOkLab(OkLab a, OkLab b) {
        Matrix3 roots = OkMatrices.CUBE_ROOTS_FROM_LAB;
        double[] l = cube(roots.first(a.lightness(), a.a(), a.b()), roots.first(b.lightness(), b.a(), b.b()));
        double[] m = cube(roots.second(a.lightness(), a.a(), a.b()), roots.second(b.lightness(), b.a(), b.b()));
        double[] s = cube(roots.third(a.lightness(), a.a(), a.b()), roots.third(b.lightness(), b.a(), b.b()));
        double[] red = new double[TERMS];
        double[] green = new double[TERMS];
        double[] blue = new double[TERMS];
        for (int term = 0; term < TERMS; term++) {
            red[term] = OkMatrices.RGB_FROM_CONES.first(l[term], m[term], s[term]);
            green[term] = OkMatrices.RGB_FROM_CONES.second(l[term], m[term], s[term]);
            blue[term] = OkMatrices.RGB_FROM_CONES.third(l[term], m[term], s[term]);
        }
        return new CubicMix(red, green, blue);
    }

    /** The cube of what runs straight from one root to the other. */
    private static double[] cube(double from, double to) {
        double way = to - from;
        return new double[] {from * from * from, 3 * from * from * way, 3 * from * way * way, way * way * way};
    }
}
