package org.duskloom.effects.bench;

import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Counts pixels times frames; JMH shows them per second. */
@State(Scope.Thread)
@AuxCounters(AuxCounters.Type.OPERATIONS)
public class PixelFrames {
    /** How many so far in this iteration. */
    public long pixelFrames;

    /** Begins an iteration. */
    @Setup(Level.Iteration)
    public void reset() {
        pixelFrames = 0;
    }
}
