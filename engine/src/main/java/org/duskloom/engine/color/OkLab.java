package org.duskloom.engine.color;

/**
 * A colour in OKLab, where equal distances look about equal (B. Ottosson, 2020; W3C CSS Color Module Level 4).
 *
 * @param lightness 0 black to 1 white
 * @param a green (negative) to red, about -0.4 to 0.4
 * @param b blue (negative) to yellow, about -0.4 to 0.4
 */
record OkLab(double lightness, double a, double b) {
    /** The colour's light; its alpha is left out. */
    static OkLab of(LinearColor color) {
        return of(LinearRgb.of(color));
    }

    /**
     * The colour as light. What sRGB cannot show is clipped to [0, 1] in linear light, part by part; this keeps
     * bright colours bright and may turn their hue a little.
     *
     * @param alpha the alpha to give it, clipped to [0, 1]
     */
    LinearColor toLinear(double alpha) {
        return toRgb().clipped(alpha);
    }

    static OkLab of(LinearRgb rgb) {
        Matrix3 cones = OkMatrices.CONES_FROM_RGB;
        double l = StrictMath.cbrt(cones.first(rgb.red(), rgb.green(), rgb.blue()));
        double m = StrictMath.cbrt(cones.second(rgb.red(), rgb.green(), rgb.blue()));
        double s = StrictMath.cbrt(cones.third(rgb.red(), rgb.green(), rgb.blue()));
        Matrix3 lab = OkMatrices.LAB_FROM_CUBE_ROOTS;
        return new OkLab(lab.first(l, m, s), lab.second(l, m, s), lab.third(l, m, s));
    }

    LinearRgb toRgb() {
        Matrix3 roots = OkMatrices.CUBE_ROOTS_FROM_LAB;
        double l = cube(roots.first(lightness, a, b));
        double m = cube(roots.second(lightness, a, b));
        double s = cube(roots.third(lightness, a, b));
        Matrix3 rgb = OkMatrices.RGB_FROM_CONES;
        return new LinearRgb(rgb.first(l, m, s), rgb.second(l, m, s), rgb.third(l, m, s));
    }

    /**
     * Writes the light of a colour as {@link #toLinear} has it, without allocating.
     *
     * @param target receives red, green and blue, clipped to [0, 1]
     * @param offset where the three floats begin
     */
    static void fillLinear(double lightness, double a, double b, float[] target, int offset) {
        Matrix3 roots = OkMatrices.CUBE_ROOTS_FROM_LAB;
        double l = cube(roots.first(lightness, a, b));
        double m = cube(roots.second(lightness, a, b));
        double s = cube(roots.third(lightness, a, b));
        Matrix3 rgb = OkMatrices.RGB_FROM_CONES;
        target[offset] = LinearColor.share(rgb.first(l, m, s));
        target[offset + 1] = LinearColor.share(rgb.second(l, m, s));
        target[offset + 2] = LinearColor.share(rgb.third(l, m, s));
    }

    private static double cube(double value) {
        return value * value * value;
    }
}
