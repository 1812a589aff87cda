package org.duskloom.engine.locate;

import java.util.Objects;

/** Pictures of which nothing can be read with confidence; says which one it is about, what is wrong and what to do. */
public final class PicturesRefusedException extends Exception {
    private static final long serialVersionUID = 1;

    private final String picture;
    private final String hint;

    /**
     * @param picture the name of the picture that it is about; empty if it is about all of them
     * @param message what is wrong
     * @param hint what to do
     */
    public PicturesRefusedException(String picture, String message, String hint) {
        super(message);
        this.picture = Objects.requireNonNull(picture, "picture");
        this.hint = Objects.requireNonNull(hint, "hint");
    }

    /** The name of the picture that it is about; empty if it is about all of them. */
    public String picture() {
        return picture;
    }

    /** What to do about it. */
    public String hint() {
        return hint;
    }
}
