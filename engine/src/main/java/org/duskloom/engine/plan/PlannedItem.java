package org.duskloom.engine.plan;

/** What a layer runs: a cue, or all plays of a cue that differ in nothing but their starts. */
public sealed interface PlannedItem permits PlannedCue, PlannedPlays {
    /** The first frame in which something of it is seen, if anything is. */
    long firstFrame();

    /** The frame after the last in which something of it is seen. */
    long endFrameExclusive();
}
