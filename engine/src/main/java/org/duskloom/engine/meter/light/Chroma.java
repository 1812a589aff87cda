package org.duskloom.engine.meter.light;

/**
 * A chromaticity in CIE 1976 u'v', and what a saturated red is: R / (R + G + B) is 0.8 or more (WCAG 2.2, "general
 * flash and red flash thresholds"). Black has no chromaticity; it is taken for white, the stricter choice. Light
 * under 1/256 of full counts as black, a choice of our own: the last steps of a fade are no flashes.
 */
final class Chroma {
    private static final double SATURATED = 0.8;
    private static final double CHANGE = 0.2;

    /** As far as nothing that is looked at would be missed. */
    private static final double NEAR = CHANGE - 1e-3;

    /** Less than a change by more than rounding of sums of distances, also between floats, may be. */
    static final double SURELY_NEAR = CHANGE - 1e-6;

    private static final double BLACK_BELOW = 1.0 / 256;
    private static final double MARGIN = 1e-6;

    /** The corners of the field of saturated reds. */
    private static final Chroma[] REDS = {of(1, 0, 0), of(SATURATED, 0.2, 0), of(SATURATED, 0, 0.2)};

    private double u;
    private double v;

    /** Of a colour in linear light. */
    static Chroma of(double... color) {
        Chroma chroma = new Chroma();
        chroma.set(color);
        return chroma;
    }

    private static boolean isBlack(double[] color) {
        return color[0] < BLACK_BELOW && color[1] < BLACK_BELOW && color[2] < BLACK_BELOW;
    }

    /** Whether a colour in linear light is a saturated red. */
    static boolean isSaturatedRed(double[] color) {
        return color[0] >= SATURATED * (color[0] + color[1] + color[2]) - MARGIN && !isBlack(color);
    }

    /** Takes a colour, in linear light, by way of XYZ (IEC 61966-2-1; CIE 15 for u'v'). */
    void set(double[] color) {
        if (isBlack(color)) {
            setLinear(1, 1, 1);
        } else {
            setLinear(color[0], color[1], color[2]);
        }
    }

    private void setLinear(double r, double g, double b) {
        double x = 0.4124564 * r + 0.3575761 * g + 0.1804375 * b;
        double y = 0.2126729 * r + 0.7151522 * g + 0.0721750 * b;
        double z = 0.0193339 * r + 0.1191920 * g + 0.9503041 * b;
        double scale = 1 / (x + 15 * y + 3 * z);
        u = 4 * x * scale;
        v = 9 * y * scale;
    }

    double u() {
        return u;
    }

    double v() {
        return v;
    }

    /** The distance from another. */
    double distance(double otherU, double otherV) {
        return Math.sqrt(square(otherU, otherV));
    }

    /** The square of the distance from another. */
    double square(Chroma other) {
        return square(other.u, other.v);
    }

    private double square(double otherU, double otherV) {
        return (u - otherU) * (u - otherU) + (v - otherV) * (v - otherV);
    }

    /** Whether a change from one colour to another counts, if one of them is a saturated red. */
    static boolean isFar(double square) {
        return square > CHANGE * CHANGE;
    }

    /**
     * Whether it is far from any saturated red; by a little more than exactly, as what counts as saturated is. What is
     * near to the corners of their field is near to all of them, as the field is a triangle.
     */
    boolean isFarFromSomeRed() {
        for (Chroma red : REDS) {
            if (square(red) > NEAR * NEAR) {
                return true;
            }
        }
        return false;
    }
}
