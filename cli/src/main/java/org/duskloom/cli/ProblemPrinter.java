package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.Severity;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/** Lists problems, one to a line, and how many there are. */
final class ProblemPrinter {
    private static final String RED = "\u001b[1;31m";
    private static final String YELLOW = "\u001b[1;33m";
    private static final String PLAIN = "\u001b[0m";

    private ProblemPrinter() {}

    /** Writes all problems as {@code file:line:column: error: message; hint}; nothing if there are none. */
    static void print(Problems problems, Streams streams) {
        List<Problem> listed = problems.inFileOrder();
        if (listed.isEmpty()) {
            return;
        }
        StringBuilder text = new StringBuilder();
        for (Problem problem : listed) {
            text.append(line(problem, streams.traits().errColored())).append(System.lineSeparator());
        }
        more(problems).ifPresent(line -> text.append(line).append(System.lineSeparator()));
        streams.tellPainted(text.append(count(listed, problems)).toString());
    }

    private static String line(Problem problem, boolean colored) {
        if (!colored) {
            return problem.toString();
        }
        String hint = problem.hint().isEmpty() ? "" : "; " + problem.hint();
        String color = problem.severity() == Severity.ERROR ? RED : YELLOW;
        return problem.location() + ": " + color + problem.severity().word() + PLAIN + ": " + problem.message() + hint;
    }

    private static Optional<String> more(Problems problems) {
        List<String> parts = new ArrayList<>();
        if (problems.omittedErrors() > 0) {
            parts.add(Counted.of(problems.omittedErrors(), "more error"));
        }
        if (problems.omittedWarnings() > 0) {
            parts.add(Counted.of(problems.omittedWarnings(), "more warning"));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of("and " + String.join(" and ", parts));
    }

    /** Repeats are not listed, so they are not counted either. */
    private static String count(List<Problem> listed, Problems problems) {
        long listedErrors =
                listed.stream().filter(p -> p.severity() == Severity.ERROR).count();
        long errors = listedErrors + problems.omittedErrors();
        long warnings = listed.size() - listedErrors + problems.omittedWarnings();
        String counted = Counted.of(warnings, "warning");
        if (errors == 0) {
            return counted;
        }
        String found = Counted.of(errors, "error") + (warnings == 0 ? "" : ", " + counted);
        return problems.lastRead().isEmpty() ? found : (errors > 1 ? "the first " : "") + found + unread(problems);
    }

    private static String unread(Problems problems) {
        return "; "
                + String.join(
                        ", ",
                        problems.lastRead().stream()
                                .map(place -> Quoted.plain(place.file()) + " was read up to line " + place.line()
                                        + " and no further")
                                .toList());
    }
}
