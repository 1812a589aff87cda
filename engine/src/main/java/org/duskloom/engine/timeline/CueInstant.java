package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.time.ExactTime;

/**
 * The start or the end of a cue: what times of others may count from.
 *
 * @param cue whose
 * @param end whether it is the end of its last play, else the start of its first
 */
record CueInstant(OpenCue cue, boolean end) {
    /** What is put behind the name of a cue where its end is meant. */
    static final String END = ".end";

    /** Nothing as long as it is not known. */
    Optional<ExactTime> time() {
        return end ? cue.end() : cue.start();
    }

    /** In messages. */
    String shown() {
        return (end ? "the end of " : "the start of ") + cue.shown();
    }
}
