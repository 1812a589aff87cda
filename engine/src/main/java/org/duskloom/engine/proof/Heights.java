package org.duskloom.engine.proof;

import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;

/** How high each pixel hangs, as a share of the height of the whole stage or of its prop: 0 lowest, 1 highest. */
final class Heights {
    /** Half of the height of the bar, as a share. */
    private static final double HALF_BAR = 0.06;

    private final double[] shares;

    private Heights(double[] shares) {
        this.shares = shares;
    }

    /** Heights on the stage. */
    static Heights ofStage(PixelMap map) {
        double[] shares = new double[map.pixelCount()];
        fill(shares, map.stage(), 0, shares.length);
        return new Heights(shares);
    }

    /** Heights of each prop along its shape's own up. */
    static Heights ofEachPropItself(PixelMap map) {
        double[] shares = new double[map.pixelCount()];
        for (Prop prop : map.props()) {
            fill(shares, map.own(), prop.firstPixel(), prop.firstPixel() + prop.pixelCount());
        }
        return new Heights(shares);
    }

    private static void fill(double[] shares, Positions positions, int from, int to) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) {
            lowest = Math.min(lowest, positions.y(i));
            highest = Math.max(highest, positions.y(i));
        }
        for (int i = from; i < to; i++) {
            // What has no height is in the middle.
            shares[i] = highest > lowest ? (positions.y(i) - lowest) / (highest - lowest) : 0.5;
        }
    }

    /** A white bar at a height that goes from the bottom to the top with the share. */
    void paint(double share, ProofLight light) {
        for (int i = 0; i < shares.length; i++) {
            double above = shares[i] - share;
            int color = above > 0 ? ProofLight.AMBER : ProofLight.BLUE;
            light.set(i, Math.abs(above) <= HALF_BAR ? ProofLight.WHITE : dimmed(color));
        }
    }

    private static int dimmed(int color) {
        return color >> 2 & 0x3F3F3F;
    }
}
