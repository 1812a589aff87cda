package org.duskloom.effects.kit;

import java.util.Arrays;
import org.duskloom.engine.effect.Canvas;

/**
 * Where values lie within the range that they have in their own member of a canvas: 0 for the least, just below 1 for
 * the greatest, so that the last pixel of a periodic pattern does not begin the next period. If a member's values are
 * all the same, but for rounding, the share is 0. Owns its memory; for one thread.
 */
final class OwnRange {
    /** A range below this share of the member's size is what rounding leaves of none. */
    private static final double NOTHING = 1e-9;

    private final Canvas canvas;
    /** The greatest distance of each member from the middle of its canvas, along x or y. */
    private final double[] size;

    private final double[] least;
    private final double[] greatest;
    /** 1 / range of each member; 0 where there is none. */
    private final double[] stretch;

    OwnRange(Canvas canvas) {
        this.canvas = canvas;
        size = new double[canvas.memberCount()];
        least = new double[canvas.memberCount()];
        greatest = new double[canvas.memberCount()];
        stretch = new double[canvas.memberCount()];
        int[] memberOf = canvas.memberOf();
        for (int pixel = 0; pixel < canvas.pixelCount(); pixel++) {
            double reach = Math.max(Math.abs(canvas.x()[pixel]), Math.abs(canvas.y()[pixel]));
            size[memberOf[pixel]] = Math.max(size[memberOf[pixel]], reach);
        }
    }

    /** Fills {@code shares} with the place of each value, in [0, 1). */
    void place(double[] values, float[] shares) {
        measure(values);
        int[] memberOf = canvas.memberOf();
        for (int pixel = 0; pixel < values.length; pixel++) {
            int member = memberOf[pixel];
            double share = (values[pixel] - least[member]) * stretch[member];
            shares[pixel] = Math.min(SharePlane.LAST, (float) share);
        }
    }

    private void measure(double[] values) {
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(greatest, Double.NEGATIVE_INFINITY);
        int[] memberOf = canvas.memberOf();
        for (int pixel = 0; pixel < values.length; pixel++) {
            int member = memberOf[pixel];
            least[member] = Math.min(least[member], values[pixel]);
            greatest[member] = Math.max(greatest[member], values[pixel]);
        }
        for (int member = 0; member < stretch.length; member++) {
            double range = greatest[member] - least[member];
            stretch[member] = range > NOTHING * size[member] ? 1 / range : 0;
        }
    }
}
