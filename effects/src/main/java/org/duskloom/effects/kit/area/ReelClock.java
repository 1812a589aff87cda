package org.duskloom.effects.kit.area;

import org.duskloom.engine.effect.CueTime;

/** Which picture of a reel is seen. */
@FunctionalInterface
public interface ReelClock {
    /** The index of the picture at an instant; depends on the time alone. */
    int imageAt(CueTime time);
}
