package org.duskloom.engine.color;

/**
 * Encoded sRGB from a hue and shares of grey (W3C CSS Color Module Level 4, sample algorithms of "HSL colors" and "HWB
 * colors"). The parts of the results are encoded values in [0, 1].
 */
final class HueColors {
    private HueColors() {}

    /** From a hue in degrees, a saturation and a lightness in [0, 1]. */
    static LinearRgb ofHsl(double hueDegrees, double saturation, double lightness) {
        double reach = saturation * Math.min(lightness, 1 - lightness);
        return new LinearRgb(
                lightness - reach * wave(0, hueDegrees),
                lightness - reach * wave(8, hueDegrees),
                lightness - reach * wave(4, hueDegrees));
    }

    /**
     * From a hue in degrees and shares of white and black in [0, 1], which are reduced where they are more than all.
     */
    static LinearRgb ofHwb(double hueDegrees, double whiteness, double blackness) {
        double sum = whiteness + blackness;
        if (sum >= 1) {
            return new LinearRgb(whiteness / sum, whiteness / sum, whiteness / sum);
        }
        LinearRgb pure = ofHsl(hueDegrees, 1, 0.5);
        double rest = 1 - sum;
        return new LinearRgb(
                pure.red() * rest + whiteness, pure.green() * rest + whiteness, pure.blue() * rest + whiteness);
    }

    private static double wave(int shift, double hueDegrees) {
        double k = shift + hueDegrees / 30;
        k -= 12 * Math.floor(k / 12);
        return Math.max(-1, Math.min(Math.min(k - 3, 9 - k), 1));
    }
}
