package org.duskloom.engine.time;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.NearestName;

/** Finds the name of a mark at the start of a text; names may hold hyphens and spaces. */
final class MarkName {
    /** Where the offset probably starts when the name in front of it is not known. */
    private static final Pattern OFFSET_AHEAD = Pattern.compile("(?=[+-][0-9.])");

    private MarkName() {}

    /** The longest of the names that the text starts with and that is followed by an offset or by nothing. */
    static Optional<String> leading(String text, Set<String> names) {
        return names.stream()
                .filter(name -> !name.isEmpty() && text.startsWith(name))
                .filter(name -> text.length() == name.length() || isSign(text.charAt(name.length())))
                .max(Comparator.comparingInt(String::length));
    }

    static String hint(String text, Set<String> names) {
        if (names.isEmpty()) {
            return "there are no marks to start from";
        }
        return NearestName.hint(
                OFFSET_AHEAD.split(text, 2)[0], names.stream().sorted().toList());
    }

    private static boolean isSign(char letter) {
        return letter == '+' || letter == '-';
    }
}
