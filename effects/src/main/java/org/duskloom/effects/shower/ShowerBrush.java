package org.duskloom.effects.shower;

import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the drops of {@link Shower}. */
final class ShowerBrush implements Brush {
    private static final float STEEPEST = 1e30f;

    private final Lanes lanes;
    private final Drops drops;
    private final DropRule rule;
    private final Ramp ramp;
    private final boolean byDrop;

    /** Of each pixel: where in the palette. */
    private final float[] places;
    /** Of each pixel: how bright. */
    private final float[] levels;

    ShowerBrush(Lanes lanes, Drops drops, DropRule rule, Ramp ramp, boolean byDrop) {
        this.lanes = lanes;
        this.drops = drops;
        this.rule = rule;
        this.ramp = ramp;
        this.byDrop = byDrop;
        places = new float[lanes.sectionOf().length];
        levels = new float[places.length];
    }

    @Override
    public void begin(CueTime time) {
        ramp.begin(time.seconds());
        lanes.begin(time);
        double tail = rule.tail().at(time);
        drops.begin(time, tail, rule.vary().at(time));
        light(tail > 0 ? (float) Math.min(STEEPEST, 1 / tail) : STEEPEST);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(places, firstPixel, patch.first);
        ramp.paint(patch.first, patch);
        patch.load(levels, firstPixel, patch.second);
        patch.dimBy(patch.second);
    }

    private void light(float perTail) {
        int[] sectionOf = lanes.sectionOf();
        int[] firstOfSection = drops.firstOfSection();
        float[] along = lanes.along();
        float[] sides = lanes.sides();
        float[] heads = drops.heads();
        float[] draws = drops.draws();
        for (int pixel = 0; pixel < places.length; pixel++) {
            int drop = firstOfSection[sectionOf[pixel]];
            while (heads[drop] < along[pixel]) {
                drop++;
            }
            float inTail = Math.min(1f, (heads[drop] - along[pixel]) * perTail);
            places[pixel] = byDrop ? draws[drop] : inTail;
            levels[pixel] = sides[pixel] * (1f - inTail);
        }
    }
}
