package org.duskloom.engine.problem;

import java.util.Objects;
import org.duskloom.engine.text.Quoted;

/**
 * One thing that is wrong or doubtful in an input. Texts of the input may stand in it anywhere: what cannot be seen,
 * line ends and control characters above all, is escaped, so that a problem is one line and can do nothing to a
 * terminal.
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
        message = Quoted.plain(message);
        hint = Quoted.plain(hint);
    }

    /** {@code file:line:column: error: message; hint} on one line. */
    @Override
    public String toString() {
        String text = location + ": " + severity.word() + ": " + message;
        return hint.isEmpty() ? text : text + "; " + hint;
    }
}
