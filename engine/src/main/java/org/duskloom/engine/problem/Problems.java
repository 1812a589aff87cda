package org.duskloom.engine.problem;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The problems of one run, collected while reading goes on. Not safe for use by several threads. Keeps each problem
 * once, and at most {@link #LIMIT} of them, so that a file of a million bad rows stays readable; the rest is counted.
 * Where there are more, warnings make room for errors, whichever came first: no number of warnings hides what stops the
 * run.
 */
public final class Problems {
    /** How many problems are kept word for word. */
    public static final int LIMIT = 200;

    private final Kept errors = new Kept();
    private final Kept warnings = new Kept();
    private final Set<Location> unread = new LinkedHashSet<>();

    /** An empty list. */
    public Problems() {}

    /** Adds an error without a hint. */
    public void error(Location location, String message) {
        error(location, message, "");
    }

    /** Adds an error with what is allowed or the nearest name. */
    public void error(Location location, String message, String hint) {
        errors.add(new Problem(Severity.ERROR, location, message, hint));
    }

    /** Adds a warning with what could be done about it. */
    public void warn(Location location, String message, String hint) {
        warnings.add(new Problem(Severity.WARNING, location, message, hint));
    }

    /** Counts an error once more that is kept already in words of another place of the same slip. */
    public void countAgain() {
        errors.count++;
    }

    /** Notes that a file was not read beyond a place, since there were so many errors. */
    public void stopReading(Location last) {
        unread.add(last);
    }

    /** Up to where files were read that had too many errors. */
    public List<Location> lastRead() {
        return List.copyOf(unread);
    }

    /** How many errors were added, kept or not, repeats too. */
    public int errorCount() {
        return errors.count;
    }

    /** How many warnings were added, kept or not, repeats too. */
    public int warningCount() {
        return warnings.count;
    }

    /** Whether anything was added that stops the run. */
    public boolean hasErrors() {
        return errors.count > 0;
    }

    /** How many errors are not in {@link #inFileOrder()}, because the limit was reached. */
    public int omittedErrors() {
        return errors.omitted;
    }

    /**
     * How many warnings are not in {@link #inFileOrder()}, because the limit was reached or errors took their place.
     */
    public int omittedWarnings() {
        return warnings.omitted + warnings.problems.size() - warningsShown();
    }

    /** The problems kept, by file, line and column; of the warnings those that came first. */
    public List<Problem> inFileOrder() {
        return Stream.concat(
                        errors.problems.stream(), warnings.problems.stream().limit(warningsShown()))
                .sorted(Comparator.comparing(Problem::location))
                .toList();
    }

    private int warningsShown() {
        return Math.min(warnings.problems.size(), LIMIT - errors.problems.size());
    }

    /** Problems of one severity, each once, up to the limit. */
    private static final class Kept {
        private final Set<Problem> problems = new LinkedHashSet<>();
        private int count;
        private int omitted;

        private void add(Problem problem) {
            count++;
            if (problems.size() < LIMIT) {
                problems.add(problem);
            } else if (!problems.contains(problem)) {
                omitted++;
            }
        }
    }
}
