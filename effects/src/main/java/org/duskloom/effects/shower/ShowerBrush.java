package org.duskloom.effects.shower;

import org.duskloom.effects.kit.Levels;
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

    private float perTail;

    ShowerBrush(Lanes lanes, Drops drops, DropRule rule, Ramp ramp, boolean byDrop) {
        this.lanes = lanes;
        this.drops = drops;
        this.rule = rule;
        this.ramp = ramp;
        this.byDrop = byDrop;
    }

    @Override
    public void begin(CueTime time) {
        lanes.begin(time.seconds());
        double tail = rule.tail().at(time.seconds());
        perTail = tail > 0 ? (float) Math.min(STEEPEST, 1 / tail) : STEEPEST;
        drops.begin(time, tail, rule.vary().at(time.seconds()));
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        findHeads(firstPixel, from, to, patch.second);
        tails(patch.second, perTail, from, to, patch.first);
        if (byDrop) {
            findDraws(firstPixel, from, to, patch.third);
        }
        ramp.paint(byDrop ? patch.third : patch.first, patch);
        patch.load(lanes.sides(), firstPixel, patch.second);
        levels(patch.first, from, to, patch.second);
        Levels.apply(patch.second, patch);
    }

    /** How far the first head that is not behind each pixel has gone past it. */
    private void findHeads(int firstPixel, int from, int to, float[] past) {
        int[] sectionOf = lanes.sectionOf();
        float[] along = lanes.along();
        float[] heads = drops.heads();
        int[] firstOfSection = drops.firstOfSection();
        for (int i = from, pixel = firstPixel; i < to; i++, pixel++) {
            int at = firstOfSection[sectionOf[pixel]];
            while (heads[at] < along[pixel]) {
                at++;
            }
            past[i] = heads[at] - along[pixel];
        }
    }

    /** The draw of the drop of that head. */
    private void findDraws(int firstPixel, int from, int to, float[] draw) {
        int[] sectionOf = lanes.sectionOf();
        float[] along = lanes.along();
        float[] heads = drops.heads();
        int[] firstOfSection = drops.firstOfSection();
        for (int i = from, pixel = firstPixel; i < to; i++, pixel++) {
            int at = firstOfSection[sectionOf[pixel]];
            while (heads[at] < along[pixel]) {
                at++;
            }
            draw[i] = drops.draws()[at];
        }
    }

    /** How far along the tail each pixel lies: 0 at the head, 1 at its end and beyond. */
    private static void tails(float[] past, float perTail, int from, int to, float[] along) {
        for (int i = from; i < to; i++) {
            along[i] = Math.min(1f, past[i] * perTail);
        }
    }

    private static void levels(float[] along, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            level[i] *= 1f - along[i];
        }
    }
}
