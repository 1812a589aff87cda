package org.duskloom.effects.drift;

import java.util.Arrays;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Projection;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.geometry.Degrees;

/**
 * Where each pixel lies in the noise when no pass has gone by, in cells of the first octave: by their numbers, or where
 * they move, in an order in which near ones follow each other. Can be shared by threads if nothing in it moves.
 */
final class NoisePlaces {
    private final double[] canvasX;
    private final double[] canvasY;
    private final Dial scale;
    private final Dial wind;
    private final Dial toward;
    private final double[] x;
    private final double[] y;
    private final double[] z;
    /** All pixels, near ones after each other, if the places move, else null. */
    private final int[] nearOrder;

    private NoisePlaces(Canvas canvas, Dial scale, Dial wind, Dial toward) {
        this.scale = scale;
        this.wind = wind;
        this.toward = toward;
        x = new double[canvas.pixelCount()];
        y = new double[canvas.pixelCount()];
        z = new double[canvas.pixelCount()];
        nearOrder = isConstant() ? null : NearOrder.of(canvas);
        canvasX = inOrder(canvas.x());
        canvasY = inOrder(canvas.y());
        measure(new CueTime());
    }

    private double[] inOrder(double[] coordinates) {
        return nearOrder == null
                ? coordinates
                : Arrays.stream(nearOrder)
                        .mapToDouble(pixel -> coordinates[pixel])
                        .toArray();
    }

    static NoisePlaces of(Canvas canvas, Settings settings) {
        return new NoisePlaces(
                canvas,
                Dial.of(settings, Drift.SCALE),
                Dial.of(settings, Drift.WIND),
                Dial.of(settings, Projection.TOWARD));
    }

    boolean isConstant() {
        return scale.isConstant() && wind.isConstant() && toward.isConstant();
    }

    /** Goes to an instant; not to be called of shared places. */
    void measure(CueTime time) {
        double cosine = Degrees.cosine(toward.at(time));
        double sine = Degrees.sine(toward.at(time));
        double sliding = wind.at(time);
        double changing = Math.sqrt(1 - sliding * sliding);
        double cellsPerUnit = scale.at(time) / 2;
        for (int pixel = 0; pixel < x.length; pixel++) {
            double right = canvasX[pixel] * cellsPerUnit;
            double up = canvasY[pixel] * cellsPerUnit;
            double along = right * cosine + up * sine;
            x[pixel] = along * changing;
            y[pixel] = up * cosine - right * sine;
            z[pixel] = -along * sliding;
        }
    }

    /** Of all pixels. */
    double[] x() {
        return x;
    }

    /** Of all pixels. */
    double[] y() {
        return y;
    }

    /** Of all pixels. */
    double[] z() {
        return z;
    }

    double x(int pixel) {
        return x[pixel];
    }

    double y(int pixel) {
        return y[pixel];
    }

    double z(int pixel) {
        return z[pixel];
    }

    /** The pixels in the order of places that move. */
    int[] nearOrder() {
        return nearOrder;
    }

    int pixelCount() {
        return x.length;
    }
}
