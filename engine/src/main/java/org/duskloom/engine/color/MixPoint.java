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
}
