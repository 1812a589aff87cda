package org.duskloom.engine.problem;

import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used. Holds every problem that was found, not only the first. */
public final class InputException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;
    private final int omitted;

    /**
     * @param problems the problems, in the order in which they are to be shown
     * @param omitted how many more there were
     */
    public InputException(List<Problem> problems, int omitted) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
        this.omitted = omitted;
    }

    /** The problems, in the order in which they are to be shown. */
    public List<Problem> problems() {
        return problems;
    }

    /** How many more problems there were than are listed. */
    public int omitted() {
        return omitted;
    }
}
