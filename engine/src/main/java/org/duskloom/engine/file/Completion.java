package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Path;

/** What becomes of the bytes of a file when it is complete, or given up. */
interface Completion {
    /** The file's name as it was asked for. */
    Path asked();

    /** All bytes are written. */
    void finished() throws IOException;

    /** The bytes are not wanted any more. Does nothing to what is final. */
    void abandon();

    boolean isAbandoned();

    default IOException abandonedEarly() {
        return new AbandonedException(asked());
    }
}
