package org.duskloom.effects.radiate;

import java.util.Arrays;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Polar;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;

/**
 * How far from the centre each pixel lies: 0 at the centre, just below 1 where the farthest pixel of its member
 * is.
 */
final class Reaches implements SharePlane {
    /** Nearer than this to the centre, in canvas units, a distance is but rounding. */
    private static final double AT_THE_CENTRE = 1e-9;

    /** Shares are rounded to this grid, so that pixels of one ring, which differ by rounding only, light as one. */
    private static final double GRID = 0x1p20;

    private final Canvas canvas;
    private final Dial centreX;
    private final Dial centreY;
    private final double[] distances;
    private final double[] farthest;
    private final float[] shares;
    private double x;
    private double y;

    private Reaches(Canvas canvas, Dial centreX, Dial centreY) {
        this.canvas = canvas;
        this.centreX = centreX;
        this.centreY = centreY;
        distances = new double[canvas.pixelCount()];
        farthest = new double[canvas.memberCount()];
        shares = new float[canvas.pixelCount()];
        measure(centreX.resting(), centreY.resting());
    }

    static Reaches of(Canvas canvas, Settings settings) {
        return new Reaches(canvas, Dial.of(settings, Polar.CENTRE_X), Dial.of(settings, Polar.CENTRE_Y));
    }

    @Override
    public boolean isConstant() {
        return centreX.isConstant() && centreY.isConstant();
    }

    @Override
    public void begin(CueTime time) {
        double newX = centreX.at(time);
        double newY = centreY.at(time);
        if (newX != x || newY != y) {
            measure(newX, newY);
        }
    }

    @Override
    public float[] shares() {
        return shares;
    }

    private void measure(double newX, double newY) {
        x = newX;
        y = newY;
        Arrays.fill(farthest, 0);
        int[] memberOf = canvas.memberOf();
        for (int pixel = 0; pixel < distances.length; pixel++) {
            double right = canvas.x()[pixel] - x;
            double up = canvas.y()[pixel] - y;
            double distance = Math.sqrt(right * right + up * up);
            distances[pixel] = distance > AT_THE_CENTRE ? distance : 0;
            farthest[memberOf[pixel]] = Math.max(farthest[memberOf[pixel]], distances[pixel]);
        }
        for (int pixel = 0; pixel < distances.length; pixel++) {
            double most = farthest[memberOf[pixel]];
            double share = most > 0 ? Math.rint(distances[pixel] / most * GRID) / GRID : 0;
            shares[pixel] = Math.min(LAST, (float) share);
        }
    }
}
