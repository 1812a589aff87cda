package org.duskloom.engine.preview;

import java.util.Objects;

/**
 * A frame that a picture shows.
 *
 * @param frame its number in the show
 * @param caption what stands under it beside its time
 */
public record ShownMoment(long frame, String caption) {
    public ShownMoment {
        Objects.requireNonNull(caption, "caption");
    }
}
