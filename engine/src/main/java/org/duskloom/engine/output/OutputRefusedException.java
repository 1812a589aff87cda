package org.duskloom.engine.output;

import java.io.IOException;

/**
 * An output that is not begun, because of what was asked for: it would replace a file, an input or a folder, or be too
 * large. Nothing has been changed; another name or size helps, trying again does not.
 */
public final class OutputRefusedException extends IOException {
    private static final long serialVersionUID = 1L;

    /** @param message what was refused, why, and what would be taken instead */
    public OutputRefusedException(String message) {
        super(message);
    }
}
