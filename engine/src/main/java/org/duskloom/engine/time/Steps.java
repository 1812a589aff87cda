package org.duskloom.engine.time;

import org.duskloom.engine.digest.FingerprintWriter;

/**
 * A staircase (W3C CSS Easing Functions Level 1, "Step Easing Functions").
 *
 * @param count how many intervals the progress is cut into, above 0; above 1 for {@link Jump#NONE}
 * @param jump where the output jumps
 */
record Steps(int count, Jump jump) implements Easing {
    /** Where a staircase jumps: at the start of each interval, at its end, at neither or both ends of the whole. */
    enum Jump {
        START(0, 1),
        END(0, 0),
        NONE(-1, 0),
        BOTH(1, 1);

        private final int jumpsMoreThanIntervals;
        private final int jumpsBeforeStart;

        Jump(int jumpsMoreThanIntervals, int jumpsBeforeStart) {
            this.jumpsMoreThanIntervals = jumpsMoreThanIntervals;
            this.jumpsBeforeStart = jumpsBeforeStart;
        }
    }

    Steps {
        if (count < 1 || count + jump.jumpsMoreThanIntervals < 1) {
            throw new IllegalArgumentException("too few steps: " + count);
        }
    }

    @Override
    public double at(double progress) {
        int jumps = count + jump.jumpsMoreThanIntervals;
        double current = Math.floor(Easing.clamped(progress) * count) + jump.jumpsBeforeStart;
        return Math.min(current, jumps) / jumps;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text("steps").whole(count).text(jump.name());
    }
}
