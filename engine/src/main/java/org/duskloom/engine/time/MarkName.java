package org.duskloom.engine.time;

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
        for (int end = text.length(); end > 0; end--) {
            if ((end == text.length() || isSign(text.charAt(end))) && names.contains(text.substring(0, end))) {
                return Optional.of(text.substring(0, end));
            }
        }
        return Optional.empty();
    }

    static String hint(String text, Set<String> names) {
        if (names.isEmpty()) {
            return "no cue has a name, and there are no markers";
        }
        return NearestName.hintOfFree(
                OFFSET_AHEAD.split(text, 2)[0], names.stream().sorted().toList());
    }

    private static boolean isSign(char letter) {
        return letter == '+' || letter == '-';
    }
}
