package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Path;

/** An output that is still being written was given up by somebody else, whose reason is the one that counts. */
public final class AbandonedException extends IOException {
    private static final long serialVersionUID = 1L;

    AbandonedException(Path output) {
        super(output + " was abandoned before it was complete");
    }
}
