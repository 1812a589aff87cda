package org.duskloom.effects.kit;

import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Settings;

/**
 * How each pixel lies about a centre that may move: its distance in canvas units, and its angle counter-clockwise from
 * the right, in turns. A pixel at the centre has the angle 0. Owns its memory; for one thread.
 */
public final class Polar {
    /** How far right of the middle of the canvas the centre is. */
    public static final NumberSetting CENTRE_X = NumberSetting.of(
            "x",
            "canvas units",
            -100_000,
            100_000,
            0,
            "how far right of the middle the centre is; 1 is half the longer side");

    /** How far above the middle of the canvas the centre is. */
    public static final NumberSetting CENTRE_Y = NumberSetting.of(
            "y",
            "canvas units",
            -100_000,
            100_000,
            0,
            "how far above the middle the centre is; 1 is half the longer side");

    /** Nearer than this to the centre, an angle is but rounding. */
    private static final double AT_THE_CENTRE = 1e-9;

    private static final double TURN = 2 * Math.PI;

    private final Canvas canvas;
    private final OwnRange range;
    private final Dial centreX;
    private final Dial centreY;
    private final double[] angles;
    private final double[] radii;
    private double x;
    private double y;
    private boolean exact;

    private Polar(Canvas canvas, Dial centreX, Dial centreY) {
        this.canvas = canvas;
        this.centreX = centreX;
        this.centreY = centreY;
        range = new OwnRange(canvas);
        angles = new double[canvas.pixelCount()];
        radii = new double[canvas.pixelCount()];
        measure(centreX.resting(), centreY.resting());
    }

    /** The polar places of a canvas about the centre that the settings say, as at the start of the cue. */
    public static Polar of(Canvas canvas, Settings settings) {
        return new Polar(canvas, Dial.of(settings, CENTRE_X), Dial.of(settings, CENTRE_Y));
    }

    /** Where each pixel's distance from the middle of the canvas lies in the range of its member, in [0, 1]. */
    public static float[] radiiFromTheMiddle(Canvas canvas) {
        double[] radii = new double[canvas.pixelCount()];
        for (int pixel = 0; pixel < radii.length; pixel++) {
            radii[pixel] = length(canvas.x()[pixel], canvas.y()[pixel]);
        }
        float[] shares = new float[radii.length];
        new OwnRange(canvas).place(radii, shares);
        return shares;
    }

    /** Whether the centre stays where it is. */
    public boolean isConstant() {
        return centreX.isConstant() && centreY.isConstant();
    }

    /** Goes to an instant. Where the centre has moved angles are near ones, see {@link #angleError}. */
    public void begin(CueTime time) {
        double newX = centreX.at(time);
        double newY = centreY.at(time);
        if (newX != x || newY != y) {
            measureNear(newX, newY);
        }
    }

    /** The angle of each pixel, in [0, 1] turns, as near as {@link #angleError} says; not to be written to. */
    public double[] angleTurns() {
        return angles;
    }

    /**
     * How far the angles may be from the exact ones, in turns; 0 if they are these. An arc tangent for each pixel in
     * each frame would cost some 34 times a sweep, as it must be that of StrictMath for frames to be the same
     * everywhere; near ones cost 10 times a sweep, with all the rest.
     */
    public double angleError() {
        return exact ? 0 : NearAngle.ERROR;
    }

    /** The exact angle of a pixel, in [0, 1) turns. */
    public double exactAngleTurns(int pixel) {
        double right = canvas.x()[pixel] - x;
        double up = canvas.y()[pixel] - y;
        return radii[pixel] > AT_THE_CENTRE ? Motion.fraction(StrictMath.atan2(up, right) / TURN) : 0;
    }

    /** The distance of each pixel, in canvas units; not to be written to. */
    public double[] radii() {
        return radii;
    }

    /** Fills in where each pixel's distance lies in the range of its member: 0 the nearest, 1 the farthest. */
    public void placeRadii(float[] shares) {
        range.place(radii, shares);
    }

    private void measure(double newX, double newY) {
        measureNear(newX, newY);
        for (int pixel = 0; pixel < angles.length; pixel++) {
            angles[pixel] = exactAngleTurns(pixel);
        }
        exact = true;
    }

    private void measureNear(double newX, double newY) {
        x = newX;
        y = newY;
        exact = false;
        for (int pixel = 0; pixel < angles.length; pixel++) {
            double right = canvas.x()[pixel] - newX;
            double up = canvas.y()[pixel] - newY;
            radii[pixel] = length(right, up);
            angles[pixel] = radii[pixel] > AT_THE_CENTRE ? NearAngle.turns(right, up) : 0;
        }
    }

    private static double length(double right, double up) {
        return Math.sqrt(right * right + up * up);
    }
}
