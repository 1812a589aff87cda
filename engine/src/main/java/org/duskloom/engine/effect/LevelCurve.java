package org.duskloom.engine.effect;

import org.duskloom.engine.digest.Fingerprinted;

/** What numbers may follow: a level over the time of the show. Immutable; asking allocates nothing. */
public interface LevelCurve extends Fingerprinted {
    /**
     * The level at a time of the show.
     *
     * @param showSecond seconds from the start of the show; any number
     * @return in [0, 1]
     */
    double at(double showSecond);

    /** Whether it hangs on the beats of the music, and not on its sound. */
    boolean hearsBeats();
}
