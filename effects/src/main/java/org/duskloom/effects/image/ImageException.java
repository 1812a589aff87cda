package org.duskloom.effects.image;

import java.util.Objects;

/** A picture file that cannot be used. */
final class ImageException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String hint;

    /**
     * @param message what is wrong, to be read after the file's name: {@code "it ends in the middle of row 3"}
     * @param hint what can be done, or empty
     */
    ImageException(String message, String hint) {
        super(message);
        this.hint = Objects.requireNonNull(hint, "hint");
    }

    /** A file that does not keep to its format. */
    static ImageException damaged(String how) {
        return new ImageException("is damaged: " + how, "open it in a picture editor and save it again as PNG");
    }

    String hint() {
        return hint;
    }
}
