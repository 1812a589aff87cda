package org.duskloom.effects.shower;

import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.random.StableHash;

/** The drops that can be seen at an instant, lane by lane. For one thread. */
final class Drops {
    /** A drop's hash gives four numbers in [0, 1): two of 21 bits and two of 11. */
    private static final int FINE_MASK = (1 << 21) - 1;

    private static final int COARSE_MASK = (1 << 11) - 1;

    private final Canvas canvas;
    private final Lanes lanes;
    private final DropRule rule;
    private final int[] firstOfLane;
    private final float[] heads;
    private final float[] draws;
    private int count;

    Drops(Canvas canvas, Lanes lanes, DropRule rule) {
        this.canvas = canvas;
        this.lanes = lanes;
        this.rule = rule;
        firstOfLane = new int[lanes.mostLanes() + 1];
        heads = new float[lanes.mostLanes() * rule.mostInSight()];
        draws = new float[heads.length];
    }

    /** Finds the drops of an instant; the lanes have gone there before. */
    void begin(CueTime time, double tailNow, double varyNow) {
        double passes = rule.passes(time);
        long lastSlot = (long) Math.floor(passes * rule.slotsPerPass());
        long firstSlot = lastSlot - rule.slotsInSight(tailNow, varyNow) + 1;
        count = 0;
        for (int lane = 0; lane < lanes.count(); lane++) {
            firstOfLane[lane] = count;
            long key = StableHash.combine(canvas.memberKey(lanes.memberOf(lane)), lanes.numberOf(lane));
            for (long slot = firstSlot; slot <= lastSlot; slot++) {
                addIfSeen(StableHash.combine(key, slot), slot, passes, tailNow, varyNow, time);
            }
        }
        firstOfLane[lanes.count()] = count;
    }

    private void addIfSeen(long bits, long slot, double passes, double tailNow, double varyNow, CueTime time) {
        double start = (slot + (bits >>> 43) * 0x1p-21) / rule.slotsPerPass();
        double speed = 1 / (1 + varyNow * (bits >>> 11 & COARSE_MASK) * 0x1p-11);
        double head = speed * (passes - start);
        if (head < 0 || head > 1 + tailNow) {
            return;
        }
        if ((bits >>> 22 & FINE_MASK) * 0x1p-21 < rule.chance(start, time)) {
            heads[count] = (float) head;
            draws[count] = (bits & COARSE_MASK) * 0x1p-11f;
            count++;
        }
    }

    /** The first drop of a lane; the drops of the lane end where those of the next begin. */
    int first(int lane) {
        return firstOfLane[lane];
    }

    /** How far each drop has come, as a share of the way; its tail follows. */
    float[] heads() {
        return heads;
    }

    /** A number drawn for each drop, in [0, 1). */
    float[] draws() {
        return draws;
    }
}
