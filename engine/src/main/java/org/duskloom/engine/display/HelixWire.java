package org.duskloom.engine.display;

/**
 * The wire of a helix on a mast or a cone. At the share t of its turns it is at the height h·t and the radius r(t) = r0
 * + (r1 - r0)·t, so its speed is sqrt(a² + u²) with a² = h² + (r1 - r0)² and u = 2π·turns·r(t), and its length the
 * integral of that: with F(u) = (u·sqrt(a² + u²) + a²·asinh(u/a))/2, the length up to t is (F(u(t)) -
 * F(u(0)))/(2π·turns·(r1 - r0)).
 *
 * @param bottom radius at the bottom, r0
 * @param top radius at the top, r1
 * @param height h, above 0
 * @param turns how often it goes round; 0 is a straight line
 */
record HelixWire(double bottom, double top, double height, double turns) {
    /** Below this share of the radius a cone counts as a mast: the difference of the two F would be all rounding. */
    private static final double FLAT = 1e-6;

    private static final int MOST_HALVINGS = 100;
    private static final int MOST_NEWTON_STEPS = 20;

    double radiusAt(double share) {
        return bottom + (top - bottom) * share;
    }

    /** The length of the whole wire. */
    double length() {
        return lengthTo(1);
    }

    /** The same cone with the turns that a wire of that length makes; none if it is too short for one. */
    HelixWire withLength(double length) {
        double low = 0;
        double high = length / (Math.PI * (bottom + top));
        for (int i = 0; i < MOST_HALVINGS && low < high; i++) {
            double middle = (low + high) / 2;
            boolean tooShort = withTurns(middle).length() < length;
            low = tooShort ? middle : low;
            high = tooShort ? high : middle;
        }
        return withTurns(withTurns(0).length() < length ? (low + high) / 2 : 0);
    }

    /**
     * The share of the turns at a share of the length.
     *
     * @param lengthShare 0 to 1
     * @param guess a share of the turns before it, to begin from
     */
    double shareAt(double lengthShare, double guess) {
        if (isEven() || lengthShare == 0 || lengthShare == 1) {
            return lengthShare;
        }
        double wanted = lengthShare * length();
        double share = guess;
        for (int i = 0; i < MOST_NEWTON_STEPS; i++) {
            double next = Math.max(0, Math.min(1, share - (lengthTo(share) - wanted) / speedAt(share)));
            if (Math.abs(next - share) < 1e-14) {
                return next;
            }
            share = next;
        }
        return share;
    }

    private HelixWire withTurns(double other) {
        return new HelixWire(bottom, top, height, other);
    }

    private double lengthTo(double share) {
        if (isEven()) {
            return share * speedAt(0.5);
        }
        return (antiderivative(share) - antiderivative(0)) / (2 * Math.PI * turns * (top - bottom));
    }

    /** Whether the speed is the same all along. */
    private boolean isEven() {
        return turns == 0 || Math.abs(top - bottom) < FLAT * (top + bottom);
    }

    private double speedAt(double share) {
        double a = slant();
        double u = 2 * Math.PI * turns * radiusAt(share);
        return Math.sqrt(a * a + u * u);
    }

    private double antiderivative(double share) {
        double a = slant();
        double u = 2 * Math.PI * turns * radiusAt(share);
        double asinh = StrictMath.log(u / a + Math.sqrt(u / a * (u / a) + 1));
        return (u * Math.sqrt(a * a + u * u) + a * a * asinh) / 2;
    }

    /** What the wire would be long without turns. */
    private double slant() {
        return Math.sqrt(height * height + (top - bottom) * (top - bottom));
    }
}
