package org.duskloom.engine.locate;

import java.util.List;
import java.util.Objects;

/**
 * What was found in the pictures of a run.
 *
 * @param size of the pictures
 * @param picture which one the places are those of: the lit one, of a film one of those in which all are lit
 * @param seen the pixels that were found, in wiring order
 * @param unseen those that were not, in wiring order
 * @param burnt how many of those found are burnt out in the middle
 * @param spots where the pictures show light
 */
public record Located(
        PictureSize size, int picture, List<Sighting> seen, List<Unseen> unseen, int burnt, LightSpots spots) {
    public Located {
        Objects.requireNonNull(size, "size");
        seen = List.copyOf(seen);
        unseen = List.copyOf(unseen);
        Objects.requireNonNull(spots, "spots");
    }
}
