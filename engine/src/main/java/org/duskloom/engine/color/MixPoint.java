package org.duskloom.engine.color;

/**
 * A colour as the three coordinates of a mixing space, not multiplied by its alpha.
 *
 * @param third the hue in degrees in OKLCh, and there not to be multiplied by alpha
 */
record MixPoint(double first, double second, double third, double alpha) {
    private static final MixPoint NOTHING = new MixPoint(0, 0, 0, 0);

    static MixPoint of(OkLab lab, double alpha) {
        return new MixPoint(lab.lightness(), lab.a(), lab.b(), alpha);
    }

    static MixPoint of(OkLch lch, double alpha) {
        return new MixPoint(lch.lightness(), lch.chroma(), lch.hueDegrees(), alpha);
    }

    /** The mix with another point of the same space. */
    MixPoint towards(MixPoint end, double share, boolean thirdIsHue) {
        double mixedAlpha = between(alpha, end.alpha, share);
        if (!(mixedAlpha > 0)) {
            return NOTHING;
        }
        double mixedThird = thirdIsHue
                ? between(third, end.third, share)
                : between(third * alpha, end.third * end.alpha, share) / mixedAlpha;
        return new MixPoint(
                between(first * alpha, end.first * end.alpha, share) / mixedAlpha,
                between(second * alpha, end.second * end.alpha, share) / mixedAlpha,
                mixedThird,
                mixedAlpha);
    }

    private static double between(double a, double b, double share) {
        return a + (b - a) * share;
    }
}
