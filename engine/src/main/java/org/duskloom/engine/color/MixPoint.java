package org.duskloom.engine.color;

/**
 * A colour as the three coordinates of a mixing space, not multiplied by its alpha.
 *
 * @param third the hue in degrees in OKLCh, and there not to be multiplied by alpha
 */
record MixPoint(double first, double second, double third, double alpha) {
    static MixPoint of(OkLab lab, double alpha) {
        return new MixPoint(lab.lightness(), lab.a(), lab.b(), alpha);
    }

    static MixPoint of(OkLch lch, double alpha) {
        return new MixPoint(lch.lightness(), lch.chroma(), lch.hueDegrees(), alpha);
    }

    /** Alpha on the way to another point of the same space. */
    double alphaTowards(MixPoint end, double share) {
        return between(alpha, end.alpha, share);
    }

    /**
     * The first coordinate on the way to another point; {@code mixedAlpha} is that of {@link #alphaTowards}, above 0.
     */
    double firstTowards(MixPoint end, double share, double mixedAlpha) {
        return between(first * alpha, end.first * end.alpha, share) / mixedAlpha;
    }

    /** The second coordinate, likewise. */
    double secondTowards(MixPoint end, double share, double mixedAlpha) {
        return between(second * alpha, end.second * end.alpha, share) / mixedAlpha;
    }

    /** The third coordinate, likewise; a hue is not multiplied by alpha. */
    double thirdTowards(MixPoint end, double share, double mixedAlpha, boolean isHue) {
        return isHue
                ? between(third, end.third, share)
                : between(third * alpha, end.third * end.alpha, share) / mixedAlpha;
    }

    private static double between(double a, double b, double share) {
        return a + (b - a) * share;
    }
}
