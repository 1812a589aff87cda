package org.duskloom.effects.kit;

/**
 * Angles in the plane by plain arithmetic, without the arc tangent of {@link StrictMath} and without a branch, at a
 * quarter of its cost. They are not its very bits: whoever needs these asks for the angle itself where an error of
 * {@link #ERROR} could show.
 */
final class NearAngle {
    /** How far an angle may be from that of {@link StrictMath#atan2}, in turns; more than ten times what is found. */
    static final double ERROR = 1e-14;

    private static final double TURN = 2 * Math.PI;

    /** The arc tangent of k / CELLS, in turns. */
    private static final int CELLS = 64;

    private static final double[] ANGLES = new double[CELLS + 1];

    /** What an angle within the first eighth is in each of the eight: the first number plus the second times it. */
    private static final double[] BASES = new double[8];

    private static final double[] SIGNS = new double[8];

    static {
        for (int cell = 0; cell <= CELLS; cell++) {
            ANGLES[cell] = StrictMath.atan((double) cell / CELLS) / TURN;
        }
        for (int octant = 0; octant < 8; octant++) {
            boolean steep = (octant & 1) != 0;
            boolean left = (octant & 2) != 0;
            boolean below = (octant & 4) != 0;
            double base = steep ? 0.25 : 0;
            base = left ? 0.5 - base : base;
            BASES[octant] = below ? 1 - base : base;
            SIGNS[octant] = steep ^ left ^ below ? -1 : 1;
        }
    }

    private NearAngle() {}

    /** Counter-clockwise from the right, in [0, 1] turns; not a number at the very centre. */
    static double turns(double right, double up) {
        double across = Math.abs(right);
        double along = Math.abs(up);
        int octant = sign(across - along) | sign(right) << 1 | sign(up) << 2;
        double longer = Math.max(across, along);
        double shorter = Math.min(across, along);
        int cell = (int) (shorter / longer * CELLS + 0.5);
        double tangent = (double) cell / CELLS;
        // The tangent of what is left: at most 1/128, so that four terms of the series are enough.
        double rest = (shorter - tangent * longer) / (longer + tangent * shorter);
        double square = rest * rest;
        double series = rest * (1 - square * (1 / 3.0 - square * (1 / 5.0 - square * (1 / 7.0))));
        return BASES[octant] + SIGNS[octant] * (ANGLES[cell] + series * (1 / TURN));
    }

    /** 1 for a number below 0, else 0. */
    private static int sign(double value) {
        return (int) (Double.doubleToRawLongBits(value) >>> Double.SIZE - 1);
    }
}
