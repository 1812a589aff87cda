package org.duskloom.engine.timeline;

import java.util.Objects;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.ExactTime;

/**
 * The sound that a show is played to.
 *
 * @param file as written, relative to the timeline
 * @param starts at which time of the show it starts; below zero if it has been running when the show starts
 */
public record SoundSource(TextNode file, ExactTime starts) {
    public SoundSource {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(starts, "starts");
    }
}
