package org.duskloom.effects.kit.area;

import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** How the lights of one member see a picture at an instant. For one thread. */
final class Sight {
    private final Reel reel;
    private final Placing placing;
    private final AreaKernel.Style style;
    private final LightField field;
    private final Pose pose = new Pose();
    private final Mapping mapping = new Mapping();
    private final AreaMean mean;
    private final float[] light = new float[LightImage.CHANNELS];

    Sight(Reel reel, Placing placing, AreaKernel.Style style, LightField field) {
        this.reel = reel;
        this.placing = placing;
        this.style = style;
        this.field = field;
        mean = new AreaMean(reel.width(), reel.height(), style);
    }

    /** Goes to an instant. */
    void begin(CueTime time) {
        placing.pose(time, field, pose);
        mapping.set(placing, field, pose);
        mean.begin(Footprint.cellWidth(reel, placing, field, pose), Footprint.cellHeight(reel, placing, field, pose));
    }

    /**
     * Paints cells of a patch with what the lights at some places see, and leaves in the plane {@code first} where in
     * the picture that is, as a share of its width in [0, 1].
     *
     * @param x of all pixels of the canvas
     * @param pixel the one in the first cell
     */
    void paint(SummedLight picture, double[] x, double[] y, int pixel, int from, int to, Patch patch) {
        for (int cell = from; cell < to; cell++) {
            double right = x[pixel - from + cell] - field.centreX();
            double up = y[pixel - from + cell] - field.centreY();
            double shareX = mapping.shareX(right, up);
            mean.light(picture, shareX, mapping.shareY(right, up), light);
            patch.red[cell] = light[0];
            patch.green[cell] = light[1];
            patch.blue[cell] = light[2];
            patch.alpha[cell] = light[3];
            patch.first[cell] = (float) (style.repeats() ? Motion.fraction(shareX) : Math.min(1, Math.max(0, shareX)));
        }
    }
}
