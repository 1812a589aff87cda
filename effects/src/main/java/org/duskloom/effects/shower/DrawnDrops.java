package org.duskloom.effects.shower;

import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.random.StableHash;

/**
 * The drops of the slots that an instant looks back on, lane by lane. They are drawn again when a slot begins, so this
 * is a cache of values that depend on lane and slot alone. For one thread.
 */
final class DrawnDrops {
    /** A drop's hash gives four numbers in [0, 1): two of 21 bits and two of 11. */
    private static final int FINE_MASK = (1 << 21) - 1;

    private static final int COARSE_MASK = (1 << 11) - 1;

    private final Canvas canvas;
    private final Lanes lanes;
    private final DropRule rule;
    private final int[] firstOfLane;
    private final double[] starts;
    private final double[] speeds;
    private final float[] draws;
    private int count;

    private boolean drawn;
    private long lastSlot;
    private int slots;

    DrawnDrops(Canvas canvas, Lanes lanes, DropRule rule) {
        this.canvas = canvas;
        this.lanes = lanes;
        this.rule = rule;
        firstOfLane = new int[lanes.mostLanes() + 1];
        starts = new double[lanes.mostLanes() * rule.mostInSight()];
        speeds = new double[starts.length];
        draws = new float[starts.length];
    }

    /** Goes to an instant; the lanes have gone there before. */
    void begin(CueTime time, double passes, double tailNow, double varyNow) {
        long slotNow = (long) Math.floor(passes * rule.slotsPerPass());
        int slotsNow = rule.slotsInSight(tailNow, varyNow);
        boolean lasting = drawn && lanes.isConstant() && rule.isLasting();
        if (!lasting || slotNow != lastSlot || slotsNow != slots) {
            drawn = true;
            lastSlot = slotNow;
            slots = slotsNow;
            draw(time, varyNow);
        }
    }

    /** The first drop of a lane; the drops of the lane end where those of the next begin. */
    int first(int lane) {
        return firstOfLane[lane];
    }

    /** How far a drop has come when so many passes have gone by, as a share of the way; below 0 before it starts. */
    double head(int drop, double passes) {
        return speeds[drop] * (passes - starts[drop]);
    }

    /** A number drawn for the drop, in [0, 1). */
    float draw(int drop) {
        return draws[drop];
    }

    private void draw(CueTime time, double varyNow) {
        count = 0;
        for (int lane = 0; lane < lanes.count(); lane++) {
            firstOfLane[lane] = count;
            long key = StableHash.combine(canvas.memberKey(lanes.memberOf(lane)), lanes.numberOf(lane));
            for (long slot = lastSlot - slots + 1; slot <= lastSlot; slot++) {
                addIfThere(StableHash.combine(key, slot), slot, varyNow, time);
            }
        }
        firstOfLane[lanes.count()] = count;
    }

    private void addIfThere(long bits, long slot, double varyNow, CueTime time) {
        double start = (slot + (bits >>> 43) * 0x1p-21) / rule.slotsPerPass();
        if ((bits >>> 22 & FINE_MASK) * 0x1p-21 < rule.chance(start, time)) {
            starts[count] = start;
            speeds[count] = 1 / (1 + varyNow * (bits >>> 11 & COARSE_MASK) * 0x1p-11);
            draws[count] = (bits & COARSE_MASK) * 0x1p-11f;
            count++;
        }
    }
}
