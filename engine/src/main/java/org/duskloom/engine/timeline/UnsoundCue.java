package org.duskloom.engine.timeline;

import java.util.Objects;

/**
 * What could be read of a cue that has errors, so that its addresses, its effect and its settings can be checked in the
 * same run. It is never played.
 *
 * @param standIn the cue; what could not be read is as if it were not written, and its times mean nothing
 * @param namesEffect whether its effect could be read; the stand-in's is empty if not
 * @param canBePrepared whether all that its effect is prepared from could be read, so that what the effect says is true
 */
public record UnsoundCue(Cue standIn, boolean namesEffect, boolean canBePrepared) {
    public UnsoundCue {
        Objects.requireNonNull(standIn, "standIn");
    }
}
