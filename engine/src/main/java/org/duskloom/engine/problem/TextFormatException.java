package org.duskloom.engine.problem;

import java.util.Objects;

/**
 * A short text such as a colour, a time or an easing cannot be read. The parser that throws it does not know where the
 * text stands; the reader that does turns it into a {@link Problem}.
 */
public final class TextFormatException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String hint;
    private final boolean toldElsewhere;

    /**
     * @param message what is wrong, with the value, as one sentence without a full stop
     * @param hint what is allowed or the nearest name; empty where there is nothing to add
     */
    public TextFormatException(String message, String hint) {
        this(message, hint, false);
    }

    private TextFormatException(String message, String hint, boolean toldElsewhere) {
        super(Objects.requireNonNull(message, "message"));
        this.hint = Objects.requireNonNull(hint, "hint");
        this.toldElsewhere = toldElsewhere;
    }

    /** The same, which only comes of a fault that is a problem already, where it stands. */
    public TextFormatException toldElsewhere() {
        return new TextFormatException(getMessage(), hint, true);
    }

    /** Whether it only comes of a fault that is a problem already; a reader adds none then. */
    public boolean isToldElsewhere() {
        return toldElsewhere;
    }

    /** What is allowed or the nearest name; empty where there is nothing to add. */
    public String hint() {
        return hint;
    }

    /** The same as a problem at the place where the text stands. */
    public Problem at(Location location) {
        return new Problem(Severity.ERROR, location, getMessage(), hint);
    }
}
