package org.duskloom.engine.color;

/**
 * Mixes colours that are not known beforehand in OKLab, without allocating. OKLab is a linear map of the cube roots of
 * the cone responses (B. Ottosson, "A perceptual color space for image processing", 2020), so a straight line in the
 * one is a straight line in the other, and the roots are mixed. Each colour takes three cube roots, however many mixes
 * it is in; where both colours stay, {@link MixPath} is cheaper.
 */
public final class LiveMix {
    /** Cube roots of a colour. */
    public static final int ROOTS = 3;

    private LiveMix() {}

    /**
     * Writes the cube roots of a colour's cone responses.
     *
     * @param colors red, green and blue, not multiplied by alpha
     * @param offset where the three floats begin
     * @param at where the three roots are written
     */
    public static void fillRoots(float[] colors, int offset, double[] roots, int at) {
        Matrix3 cones = OkMatrices.CONES_FROM_RGB;
        double red = colors[offset];
        double green = colors[offset + 1];
        double blue = colors[offset + 2];
        roots[at] = StrictMath.cbrt(cones.first(red, green, blue));
        roots[at + 1] = StrictMath.cbrt(cones.second(red, green, blue));
        roots[at + 2] = StrictMath.cbrt(cones.third(red, green, blue));
    }

    /**
     * Mixes a colour with another; multiplied by alpha first and divided after, as {@link ColorMix} says.
     *
     * @param fromRoots what {@link #fillRoots} wrote of the one
     * @param from where its roots begin
     * @param fromPart how much there is of it: its alpha times its share
     * @param toRoots the same of the other
     * @param to the same of the other
     * @param toPart the same of the other
     * @param target receives red, green, blue and alpha, the light not multiplied by alpha
     * @param offset where the four floats begin
     */
    public static void fill(
            double[] fromRoots,
            int from,
            double fromPart,
            double[] toRoots,
            int to,
            double toPart,
            float[] target,
            int offset) {
        double alpha = fromPart + toPart;
        double ofFrom = alpha > 0 ? fromPart / alpha : 0;
        double ofTo = alpha > 0 ? toPart / alpha : 0;
        double l = fromRoots[from] * ofFrom + toRoots[to] * ofTo;
        double m = fromRoots[from + 1] * ofFrom + toRoots[to + 1] * ofTo;
        double s = fromRoots[from + 2] * ofFrom + toRoots[to + 2] * ofTo;
        put(l * l * l, m * m * m, s * s * s, target, offset);
        target[offset + 3] = LinearColor.share(alpha);
    }

    private static void put(double l, double m, double s, float[] target, int offset) {
        Matrix3 rgb = OkMatrices.RGB_FROM_CONES;
        target[offset] = LinearColor.share(rgb.first(l, m, s));
        target[offset + 1] = LinearColor.share(rgb.second(l, m, s));
        target[offset + 2] = LinearColor.share(rgb.third(l, m, s));
    }
}
