package org.duskloom.engine.group;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.NearestName;

/** Addresses that were written as one, with signs between them that other lists have. */
final class SeveralNames {
    private static final Pattern BETWEEN = Pattern.compile("[,;\\s]+");

    /** No name holds one of these, so that slips in what stands between them may be looked for. */
    private static final Pattern SURELY_BETWEEN = Pattern.compile("\\s*[,;]\\s*");

    private SeveralNames() {}

    /**
     * The addresses that were meant, two at least; nothing if the text is no list of them.
     *
     * @param names those of props and groups
     */
    static Optional<List<String>> in(String text, Collection<String> names) {
        List<String> exact = pieces(BETWEEN, text);
        if (exact.size() > 1 && exact.stream().allMatch(piece -> isKnown(head(piece), names))) {
            return Optional.of(exact);
        }
        List<String> meant = pieces(SURELY_BETWEEN, text).stream()
                .flatMap(piece -> meant(piece, names).stream())
                .toList();
        return meant.size() > 1 && meant.size() == pieces(SURELY_BETWEEN, text).size()
                ? Optional.of(meant)
                : Optional.empty();
    }

    private static List<String> pieces(Pattern between, String text) {
        return between.splitAsStream(text.strip())
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    private static Optional<String> meant(String piece, Collection<String> names) {
        String head = head(piece);
        return isKnown(head, names)
                ? Optional.of(piece)
                : NearestName.of(head, names).map(near -> near + piece.substring(head.length()));
    }

    private static String head(String piece) {
        int slash = piece.indexOf('/');
        return slash < 0 ? piece : piece.substring(0, slash);
    }

    private static boolean isKnown(String head, Collection<String> names) {
        return Glob.isPattern(head) ? names.stream().anyMatch(name -> Glob.matches(head, name)) : names.contains(head);
    }
}
