package org.duskloom.engine.problem;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The problems of one run, collected while reading goes on. Not safe for use by several threads. Keeps each problem once,
 * and at most {@link #LIMIT} of them; the rest is counted, so that a file of a million bad rows stays readable.
 */
public final class Problems {
    /** How many problems are kept word for word. */
    public static final int LIMIT = 200;

    private final Set<Problem> kept = new LinkedHashSet<>();
    private int errors;
    private int warnings;
    private int omitted;

    /** An empty list. */
    public Problems() {}

    /** Adds an error without a hint. */
    public void error(Location location, String message) {
        error(location, message, "");
    }

    /** Adds an error with what is allowed or the nearest name. */
    public void error(Location location, String message, String hint) {
        add(new Problem(Severity.ERROR, location, message, hint));
    }

    /** Adds a warning with what could be done about it. */
    public void warn(Location location, String message, String hint) {
        add(new Problem(Severity.WARNING, location, message, hint));
    }

    /** How many errors were added, kept or not, repeats too. */
    public int errorCount() {
        return errors;
    }

    /** How many warnings were added, kept or not, repeats too. */
    public int warningCount() {
        return warnings;
    }

    /** Whether anything was added that stops the run. */
    public boolean hasErrors() {
        return errors > 0;
    }

    /** How many problems are not in {@link #inFileOrder()}, because the limit was reached. */
    public int omitted() {
        return omitted;
    }

    /** The problems kept, by file, line and column. */
    public List<Problem> inFileOrder() {
        return kept.stream().sorted(Comparator.comparing(Problem::location)).toList();
    }

    /**
     * Ends the reading if there were errors.
     *
     * @throws InputException with every problem so far, if at least one is an error
     */
    public void throwIfErrors() throws InputException {
        if (hasErrors()) {
            throw new InputException(inFileOrder(), omitted());
        }
    }

    private void add(Problem problem) {
        if (problem.severity() == Severity.ERROR) {
            errors++;
        } else {
            warnings++;
        }
        if (kept.size() < LIMIT) {
            kept.add(problem);
        } else if (!kept.contains(problem)) {
            omitted++;
        }
    }
}
