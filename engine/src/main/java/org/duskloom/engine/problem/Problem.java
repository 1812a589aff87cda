package org.duskloom.engine.problem;

import java.util.Objects;

/**
 * One thing that is wrong or doubtful in an input.
 *
 * @param severity whether it stops the run
 * @param location where it stands
 * @param message what is wrong, with the value, as one sentence without a full stop
 * @param hint what is allowed or the nearest name; empty where there is nothing to add
 */
public record Problem(Severity severity, Location location, String message, String hint) {
    public Problem {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(location, "location");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(hint, "hint");
    }

    /** {@code file:line:column: error: message; hint} on one line. */
    @Override
    public String toString() {
        String text = location + ": " + severity.word() + ": " + message;
        return hint.isEmpty() ? text : text + "; " + hint;
    }
}
