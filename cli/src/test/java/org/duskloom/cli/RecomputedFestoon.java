package org.duskloom.cli;

/**
 * The light of festoon by the page of meanings, in doubles; nothing of the program is used. The places on a chain come
 * from the equation of the catenary alone: its lowest point is the one for which both ends lie on it, its a the one for
 * which it hangs through as far as it shall.
 */
final class RecomputedFestoon {
    private static final int PIECES = 128;

    private final RecomputedLight light;
    private final RecomputedCanvas canvas;
    private final double cos;
    private final double sin;
    private final int swags;
    private final double[] leastAlongAcross;
    private final double[] rangeAlongAcross;
    /** The ends of the pieces of the first swag, from its first end. */
    private final double[][] chain;

    RecomputedFestoon(RecomputedLight light) {
        this.light = light;
        this.canvas = light.canvas();
        double toward = Math.toRadians(light.number("toward", 0));
        cos = Math.cos(toward);
        sin = Math.sin(toward);
        swags = (int) light.number("swags", 1);
        leastAlongAcross = new double[] {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] greatest = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = 0; i < canvas.pixels().length; i++) {
            for (int axis = 0; axis < 2; axis++) {
                leastAlongAcross[axis] = Math.min(leastAlongAcross[axis], place(i)[axis]);
                greatest[axis] = Math.max(greatest[axis], place(i)[axis]);
            }
        }
        rangeAlongAcross = new double[] {greatest[0] - leastAlongAcross[0], greatest[1] - leastAlongAcross[1]};
        chain = chain(rangeAlongAcross[0] / swags, light.number("rise", 0), light.number("sag", 0.3));
    }

    double[][] light() {
        double[][] all = new double[canvas.pixels().length][];
        double thickness = light.number("thickness", 0.2);
        double phi = light.isReversed() ? -light.forward() : light.forward();
        for (int i = 0; i < all.length; i++) {
            double[] nearest = nearest(place(i));
            all[i] = light.lit(
                    RecomputedLight.frac(light.number("bands", 1) * nearest[1] - phi),
                    RecomputedLight.band(nearest[0] + thickness / 2, thickness, light.number("soft", 0.25)));
        }
        return all;
    }

    /** Along and across. */
    private double[] place(int i) {
        double x = canvas.x()[i];
        double y = canvas.y()[i];
        return new double[] {x * cos + y * sin, y * cos - x * sin};
    }

    /** The distance from the nearest row, and the share of the row before the nearest point of it. */
    private double[] nearest(double[] place) {
        double[] best = {Double.POSITIVE_INFINITY, 0};
        double span = rangeAlongAcross[0] / swags;
        for (int row = 0; row < light.number("rows", 1); row++) {
            double top = leastAlongAcross[1]
                    + (light.number("height", 0.75) - row * light.number("row-gap", 0.25)) * rangeAlongAcross[1];
            for (int swag = 0; swag < swags; swag++) {
                double fromX = place[0] - leastAlongAcross[0] - swag * span;
                double fromY = place[1] - top - swag * light.number("rise", 0) * span;
                for (int piece = 0; piece < PIECES; piece++) {
                    double wide = chain[piece + 1][0] - chain[piece][0];
                    double high = chain[piece + 1][1] - chain[piece][1];
                    double share = ((fromX - chain[piece][0]) * wide + (fromY - chain[piece][1]) * high)
                            / (wide * wide + high * high);
                    double on = Math.min(1, Math.max(0, share));
                    double away = Math.hypot(fromX - chain[piece][0] - on * wide, fromY - chain[piece][1] - on * high);
                    if (away < best[0]) {
                        best = new double[] {away, (swag + (piece + on) / PIECES) / swags};
                    }
                }
            }
        }
        return best;
    }

    private static double[][] chain(double span, double rise, double sag) {
        double[][] points = new double[PIECES + 1][];
        if (sag == 0) {
            for (int i = 0; i <= PIECES; i++) {
                points[i] = new double[] {span * i / PIECES, rise * span * i / PIECES};
            }
            return points;
        }
        double slack = 1e-3 * span;
        double taut = 1e3 * span;
        for (int i = 0; i < 200; i++) {
            double a = Math.sqrt(slack * taut);
            double lowest = lowest(a, span, rise);
            double middle = a * (Math.cosh((span / 2 - lowest) / a) - Math.cosh(lowest / a));
            if (rise * span / 2 - middle > sag * span) {
                slack = a;
            } else {
                taut = a;
            }
        }
        double lowest = lowest(taut, span, rise);
        double first = Math.sinh(-lowest / taut);
        double last = Math.sinh((span - lowest) / taut);
        for (int i = 0; i <= PIECES; i++) {
            // The length of the chain from its lowest point to x is a · sinh((x - lowest) / a).
            double arc = first + (last - first) * i / PIECES;
            double fromLowest = Math.log(arc + Math.hypot(arc, 1));
            points[i] =
                    new double[] {lowest + taut * fromLowest, taut * (Math.cosh(fromLowest) - Math.cosh(lowest / taut))
                    };
        }
        return points;
    }

    /** From cosh p - cosh q = 2 sinh((p + q) / 2) sinh((p - q) / 2), for ends that lie the rise apart. */
    private static double lowest(double a, double span, double rise) {
        double turned = rise * span / (2 * a * Math.sinh(span / (2 * a)));
        return span / 2 - a * Math.log(turned + Math.hypot(turned, 1));
    }
}
