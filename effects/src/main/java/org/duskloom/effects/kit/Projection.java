package org.duskloom.effects.kit;

import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.geometry.Degrees;

/**
 * Where each pixel lies along a direction, as a share of the range that the pixels of its member have in that
 * direction: 0 for the first, 1 for the last, 0 for all if they lie side by side. The depth z does not count.
 * Immutable.
 */
public final class Projection {
    /** The direction, counter-clockwise from the right as the audience sees it. */
    public static final NumberSetting TOWARD = NumberSetting.of(
            "toward", "degrees", -36_000, 36_000, 0, "direction: 0 is right, 90 up, 180 left, 270 down");

    private final Canvas canvas;
    private final Dial toward;
    private final double turnedDegrees;
    /** The shares if the direction does not move, else null. */
    private final float[] steady;

    private Projection(Canvas canvas, Dial toward, double turnedDegrees) {
        this.canvas = canvas;
        this.toward = toward;
        this.turnedDegrees = turnedDegrees;
        steady = toward.isConstant() ? shares(canvas, toward.resting() + turnedDegrees) : null;
    }

    /** The projection of a canvas on a direction in degrees, which may move. */
    public static Projection of(Canvas canvas, Dial towardDegrees) {
        return new Projection(canvas, towardDegrees, 0);
    }

    /** The projection across a direction: on what lies a quarter turn counter-clockwise from it. */
    public static Projection across(Canvas canvas, Dial towardDegrees) {
        return new Projection(canvas, towardDegrees, 90);
    }

    /** The shares in a direction that does not move. */
    public static float[] shares(Canvas canvas, double towardDegrees) {
        Projector projector = new Projector(canvas);
        projector.project(towardDegrees);
        return projector.shares;
    }

    /** A view for one thread; it owns memory only if the direction moves. */
    public View open() {
        return new View();
    }

    /** The projection at an instant. */
    public final class View implements SharePlane {
        private final Projector projector = steady == null ? new Projector(canvas) : null;

        private View() {}

        @Override
        public boolean isConstant() {
            return projector == null;
        }

        @Override
        public void begin(CueTime time) {
            if (projector != null) {
                projector.project(toward.at(time) + turnedDegrees);
            }
        }

        @Override
        public float[] shares() {
            return projector == null ? steady : projector.shares;
        }
    }

    /** Projects a canvas again and again without allocating. */
    private static final class Projector {
        private final Canvas canvas;
        private final OwnRange range;
        private final double[] along;
        private final float[] shares;

        Projector(Canvas canvas) {
            this.canvas = canvas;
            range = new OwnRange(canvas);
            along = new double[canvas.pixelCount()];
            shares = new float[canvas.pixelCount()];
        }

        void project(double towardDegrees) {
            double[] x = canvas.x();
            double[] y = canvas.y();
            double towardX = Degrees.cosine(towardDegrees);
            double towardY = Degrees.sine(towardDegrees);
            for (int pixel = 0; pixel < along.length; pixel++) {
                along[pixel] = x[pixel] * towardX + y[pixel] * towardY;
            }
            range.place(along, shares);
        }
    }
}
