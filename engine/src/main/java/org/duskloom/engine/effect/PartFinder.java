package org.duskloom.engine.effect;

import java.util.List;
import java.util.Optional;

/** Finds named pixels within a canvas. */
public interface PartFinder {
    /**
     * The pixels of a part.
     *
     * @param member the number of the member; the whole canvas is member 0 where there is one canvas for all
     * @param address a part's path within the member, or an address among the cue's members
     * @return canvas pixel numbers in the part's own order; empty if the canvas has no such part
     */
    Optional<int[]> find(int member, String address);

    /** The name of a member; empty for the whole canvas. */
    String memberName(int member);

    /** What could be written instead, for hints. */
    List<String> known(int member);
}
