package org.duskloom.engine.locate;

import java.util.Objects;

/**
 * A pixel that was not found.
 *
 * @param pixel by wiring order, from 0
 * @param reason why it seems so
 * @param beside the pixel that it is melted into; -1 for other reasons
 */
public record Unseen(int pixel, Reason reason, int beside) {
    /** Why a pixel seems not to be found. */
    public enum Reason {
        /** No light is where it should be, or it is not known where that is. */
        DARK,
        /** Only what seems to be its reflection was seen. */
        MIRRORED,
        /** Its light and that of another are one spot. */
        MELTED,
        /** There is light, but its bits could not be read for sure. */
        UNSURE,
        /** It should be beyond the edge of the picture. */
        OUTSIDE
    }

    public Unseen {
        Objects.requireNonNull(reason, "reason");
    }
}
