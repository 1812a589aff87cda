package org.duskloom.effects.shower;

import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;

/**
 * The drops that are seen at an instant, lane by lane, in the order of their heads, the one that has come least far
 * first. A head beyond all others ends each lane. For one thread.
 */
final class Drops {
    /** Beyond every head and tail. */
    private static final float BEYOND = 9;

    private final Lanes lanes;
    private final DropRule rule;
    private final DrawnDrops drawn;
    /** For each section of each lane, the first head in or after it. */
    private final int[] firstOfSection;

    private final float[] heads;
    private final float[] draws;

    Drops(Canvas canvas, Lanes lanes, DropRule rule) {
        this.lanes = lanes;
        this.rule = rule;
        drawn = new DrawnDrops(canvas, lanes, rule);
        firstOfSection = new int[lanes.mostLanes() * Lanes.SECTIONS];
        heads = new float[lanes.mostLanes() * (rule.mostInSight() + 1)];
        draws = new float[heads.length];
    }

    /** Finds the drops of an instant; the lanes have gone there before. */
    void begin(CueTime time, double tailNow, double varyNow) {
        double passes = rule.passes(time);
        drawn.begin(time, passes, tailNow, varyNow);
        int end = 0;
        for (int lane = 0; lane < lanes.count(); lane++) {
            int first = end;
            for (int drop = drawn.first(lane + 1) - 1; drop >= drawn.first(lane); drop--) {
                double head = drawn.head(drop, passes);
                if (head >= 0 && head <= 1 + tailNow) {
                    insert((float) head, drawn.draw(drop), first, end++);
                }
            }
            draws[end] = 0;
            heads[end++] = BEYOND;
            index(lane, first);
        }
    }

    /** Where to begin in {@link #heads} when looking for the first head not behind a pixel of a section. */
    int[] firstOfSection() {
        return firstOfSection;
    }

    /** How far each drop has come, as a share of the way; its tail follows. */
    float[] heads() {
        return heads;
    }

    /** A number drawn for each drop, in [0, 1). */
    float[] draws() {
        return draws;
    }

    private void insert(float head, float draw, int first, int end) {
        int at = end;
        while (at > first && heads[at - 1] > head) {
            heads[at] = heads[at - 1];
            draws[at] = draws[at - 1];
            at--;
        }
        heads[at] = head;
        draws[at] = draw;
    }

    private void index(int lane, int first) {
        int at = first;
        for (int section = 0; section < Lanes.SECTIONS; section++) {
            while (heads[at] < (float) section / Lanes.SECTIONS) {
                at++;
            }
            firstOfSection[lane * Lanes.SECTIONS + section] = at;
        }
    }
}
