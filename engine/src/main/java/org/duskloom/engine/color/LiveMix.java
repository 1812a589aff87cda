package org.duskloom.engine.color;

/**
 * Mixes colours that are not known beforehand in OKLab, without allocating. OKLab is a linear map of the cube roots of
 * the cone responses (B. Ottosson, "A perceptual color space for image processing", 2020), so a straight line in the
 * one is a straight line in the other, and the roots are mixed. A mix takes six cube roots; where both colours stay,
 * {@link MixPath} is cheaper.
 */
public final class LiveMix {
    private LiveMix() {}

    /**
     * Mixes a colour with another; multiplied by alpha first and divided after, as {@link ColorMix} says.
     *
     * @param from red, green, blue and alpha, the light not multiplied by alpha
     * @param to likewise
     * @param offset where the four floats begin, in all three arrays
     * @param share how much of {@code to}, in [0, 1]
     * @param target receives the mix; may be one of the others
     */
    public static void fill(float[] from, float[] to, int offset, double share, float[] target) {
        double fromPart = from[offset + 3] * (1 - share);
        double toPart = to[offset + 3] * share;
        double alpha = fromPart + toPart;
        double ofFrom = alpha > 0 ? fromPart / alpha : 0;
        double ofTo = alpha > 0 ? toPart / alpha : 0;
        Matrix3 cones = OkMatrices.CONES_FROM_RGB;
        double fromRed = from[offset];
        double fromGreen = from[offset + 1];
        double fromBlue = from[offset + 2];
        double toRed = to[offset];
        double toGreen = to[offset + 1];
        double toBlue = to[offset + 2];
        double l = root(cones.first(fromRed, fromGreen, fromBlue)) * ofFrom
                + root(cones.first(toRed, toGreen, toBlue)) * ofTo;
        double m = root(cones.second(fromRed, fromGreen, fromBlue)) * ofFrom
                + root(cones.second(toRed, toGreen, toBlue)) * ofTo;
        double s = root(cones.third(fromRed, fromGreen, fromBlue)) * ofFrom
                + root(cones.third(toRed, toGreen, toBlue)) * ofTo;
        put(l * l * l, m * m * m, s * s * s, target, offset);
        target[offset + 3] = LinearColor.share(alpha);
    }

    private static double root(double value) {
        return StrictMath.cbrt(value);
    }

    private static void put(double l, double m, double s, float[] target, int offset) {
        Matrix3 rgb = OkMatrices.RGB_FROM_CONES;
        target[offset] = LinearColor.share(rgb.first(l, m, s));
        target[offset + 1] = LinearColor.share(rgb.second(l, m, s));
        target[offset + 2] = LinearColor.share(rgb.third(l, m, s));
    }
}
