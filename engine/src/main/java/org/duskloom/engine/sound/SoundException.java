package org.duskloom.engine.sound;

/** A sound cannot be used; says why in the words of a problem. */
final class SoundException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String hint;

    /**
     * @param message what is wrong, as one sentence without a full stop
     * @param hint what to do about it; may be empty
     */
    SoundException(String message, String hint) {
        super(message);
        this.hint = hint;
    }

    /** At a place counted in bytes from 0. */
    SoundException(long atByte, String message, String hint) {
        this("at byte " + atByte + ": " + message, hint);
    }

    String hint() {
        return hint;
    }
}
