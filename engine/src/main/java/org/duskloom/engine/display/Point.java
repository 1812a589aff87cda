package org.duskloom.engine.display;

import org.duskloom.engine.geometry.Degrees;

/** A place, in a shape's own axes or on the stage. */
record Point(double x, double y, double z) {
    static final Point ORIGIN = new Point(0, 0, 0);

    /** The place at a distance and an angle from here: 0 degrees to the right, 90 up. */
    Point polar(double radius, double degrees) {
        return new Point(x + radius * Degrees.cosine(degrees), y + radius * Degrees.sine(degrees), z);
    }

    /** The place after some of the even steps that lead to another one; that one itself after all of them. */
    Point toward(Point end, int step, int steps) {
        if (step == 0 || step == steps) {
            return step == 0 ? this : end;
        }
        // Multiplying first keeps whole numbers whole.
        return new Point(
                x + (end.x - x) * step / steps, y + (end.y - y) * step / steps, z + (end.z - z) * step / steps);
    }

    /** The place a share of the way from here to another one; exactly that one from a share of 1 on. */
    Point toward(Point end, double share) {
        return share >= 1 ? end : new Point(mix(x, end.x, share), mix(y, end.y, share), mix(z, end.z, share));
    }

    double distance(Point other) {
        double dx = other.x - x;
        double dy = other.y - y;
        double dz = other.z - z;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private static double mix(double from, double to, double share) {
        return from + (to - from) * share;
    }
}
