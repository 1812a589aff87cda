package org.duskloom.engine.color;

/**
 * The straight line from one point of a mixing space to another, multiplied by alpha first and divided after (W3C CSS
 * Color Module Level 4, "Interpolating with Alpha"). Immutable; asking allocates nothing.
 */
final class MixLine {
    private final boolean thirdIsHue;
    /** The coordinates of the start, multiplied by its alpha; a hue is not. */
    private final double first;

    private final double second;
    private final double third;
    private final double alpha;
    /** How much is added to each up to the end. */
    private final double firstWay;

    private final double secondWay;
    private final double thirdWay;
    private final double alphaWay;

    /** @param thirdIsHue whether the third coordinate is not to be multiplied by alpha */
    MixLine(MixPoint start, MixPoint end, boolean thirdIsHue) {
        this.thirdIsHue = thirdIsHue;
        first = start.first() * start.alpha();
        second = start.second() * start.alpha();
        third = thirdIsHue ? start.third() : start.third() * start.alpha();
        alpha = start.alpha();
        firstWay = end.first() * end.alpha() - first;
        secondWay = end.second() * end.alpha() - second;
        thirdWay = (thirdIsHue ? end.third() : end.third() * end.alpha()) - third;
        alphaWay = end.alpha() - alpha;
    }

    /** Alpha at a share of the line. */
    double alphaAt(double share) {
        return alpha + alphaWay * share;
    }

    /** The first coordinate; {@code mixedAlpha} is that of {@link #alphaAt}, above 0. */
    double firstAt(double share, double mixedAlpha) {
        return divided(first + firstWay * share, mixedAlpha);
    }

    /** The second coordinate, likewise. */
    double secondAt(double share, double mixedAlpha) {
        return divided(second + secondWay * share, mixedAlpha);
    }

    /** The third coordinate, likewise. */
    double thirdAt(double share, double mixedAlpha) {
        double sum = third + thirdWay * share;
        return thirdIsHue ? sum : divided(sum, mixedAlpha);
    }

    /** The alpha of opaque colours is exactly 1, and dividing takes long. */
    private static double divided(double premultiplied, double mixedAlpha) {
        return mixedAlpha == 1 ? premultiplied : premultiplied / mixedAlpha;
    }
}
