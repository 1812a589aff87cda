package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Path;

/**
 * An output that is not begun, because of what was asked for: it would replace a file, an input or a folder, or be too
 * large. Nothing has been changed; another name or size helps, trying again does not.
 */
public final class OutputRefusedException extends IOException {
    private static final long serialVersionUID = 1L;

    private final boolean replaceable;

    /** @param message what was refused, why, and what would be taken instead */
    public OutputRefusedException(String message) {
        this(message, false);
    }

    private OutputRefusedException(String message, boolean replaceable) {
        super(message);
        this.replaceable = replaceable;
    }

    /** A file stands there already. */
    public static OutputRefusedException ofExisting(Path file) {
        return new OutputRefusedException(file + " exists already", true);
    }

    /** Whether asking to replace what stands there would help. */
    public boolean isReplaceable() {
        return replaceable;
    }
}
