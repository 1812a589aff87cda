package org.duskloom.effects.festoon;

/**
 * A chain that hangs between two points (J. Bernoulli, Leibniz, Huygens 1691; any handbook of mechanics): <i>y = a
 * cosh((x - lowest) / a)</i> up to a constant. Lengths are in spans: the first end is (0, 0), the second (1, rise).
 *
 * <p>With u = 1/(2a) and sinh m = rise · u / sinh u, the lowest point of the whole curve lies at 1/2 - a m, and
 *
 * <pre>
 * y(x) = sinh(u x) sinh(u (x - 1) + m) / u
 * arc length from the first end to x = sinh(u x) cosh(u (x - 1) + m) / u
 * depth below the middle of the straight line between the ends = (cosh u - 1) cosh m / (2 u)
 * </pre>
 *
 * which is well behaved however taut the chain is. The last is the sag; its square grows with u, so u is found by
 * halving. Can be hung anew without allocating; for one thread then.
 */
final class Catenary {
    /** A chain with less sag is taken for straight. */
    private static final double STRAIGHT = 1e-6;

    private double rise;
    /** Half the span over a; 0 if the chain is straight. */
    private double u;

    private double m;
    /** The arc from the first end to the lowest point, times 2u. */
    private double arcToLowest;

    /** A straight and level chain. */
    Catenary() {}

    /**
     * Hangs the chain with a given sag.
     *
     * @param rise how much higher the second end is, in spans
     * @param sag how far the chain hangs below the straight line between its ends, in the middle, in spans; from 0 to
     *     100
     */
    void hang(double newRise, double newSag) {
        rise = newRise;
        u = newSag < STRAIGHT ? 0 : solve(newRise, newSag);
        m = u > 0 ? asinh(rise * u / StrictMath.sinh(u)) : 0;
        arcToLowest = StrictMath.sinh(u - m);
    }

    /** The parameter a, the radius of curvature at the lowest point; infinite if the chain is straight. */
    double a() {
        return 1 / (2 * u);
    }

    /**
     * Where the lowest point of the whole curve lies; it may be outside the span. Not finite if the chain is straight.
     */
    double lowestX() {
        return 0.5 - a() * m;
    }

    /** The height at a place along the span. */
    double heightAt(double x) {
        return u > 0 ? StrictMath.sinh(u * x) * StrictMath.sinh(u * (x - 1) + m) / u : rise * x;
    }

    /** The length of the chain. */
    double length() {
        return u > 0 ? StrictMath.sinh(u) * StrictMath.cosh(m) / u : Math.sqrt(1 + rise * rise);
    }

    /** The place along the span where so much of the chain lies before it. */
    double xAtArc(double arc) {
        if (u == 0) {
            return arc / length();
        }
        return (asinh(2 * u * arc - arcToLowest) + (u - m)) / (2 * u);
    }

    private static double solve(double rise, double sag) {
        double low = 0;
        double high = 1;
        while (sagSquared(rise, high) < sag * sag) {
            low = high;
            high *= 2;
        }
        double middle = (low + high) / 2;
        while (low < middle && middle < high) {
            if (sagSquared(rise, middle) < sag * sag) {
                low = middle;
            } else {
                high = middle;
            }
            middle = (low + high) / 2;
        }
        return middle;
    }

    /** The square of the sag, from cosh u - 1 = 2 sinh²(u / 2) and cosh² m = 1 + (rise · u / sinh u)². */
    private static double sagSquared(double rise, double u) {
        double half = StrictMath.sinh(u / 2);
        double level = half * half / u;
        double tilt = rise * StrictMath.tanh(u / 2) / 2;
        return level * level + tilt * tilt;
    }

    private static double asinh(double x) {
        double size = Math.abs(x);
        double log = StrictMath.log1p(size + size * size / (1 + Math.sqrt(1 + size * size)));
        return x < 0 ? -log : log;
    }
}
