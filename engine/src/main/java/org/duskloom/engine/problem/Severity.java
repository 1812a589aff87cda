package org.duskloom.engine.problem;

/** Whether a problem stops the run. */
public enum Severity {
    /** Nothing is rendered. */
    ERROR("error"),
    /** Reported, but the run goes on. */
    WARNING("warning");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The word that stands in the message. */
    public String word() {
        return word;
    }
}
