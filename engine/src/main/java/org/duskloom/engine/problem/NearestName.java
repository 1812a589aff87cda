package org.duskloom.engine.problem;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.text.Quoted;

/**
 * Finds the name that was probably meant. Distance is the restricted edit distance of insertions, deletions,
 * substitutions and swaps of neighbours (F. J. Damerau, Communications of the ACM 7(3), 1964; V. I. Levenshtein, 1966).
 */
public final class NearestName {
    private static final int LONGEST_COMPARED = 80;
    private static final int LONGEST_NOT_GUESSED = 2;
    private static final int MOST_LISTED = 40;

    private NearestName() {}

    /**
     * The allowed name nearest to the wrong one, if one is near enough to be a slip: a third of its letters at most.
     */
    public static Optional<String> of(String wrong, Collection<String> allowed) {
        if (wrong.length() > LONGEST_COMPARED) {
            return Optional.empty();
        }
        String best = null;
        int bestDistance = Math.max(1, wrong.length() / 3) + 1;
        for (String name : allowed) {
            int distance = slips(wrong.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
            if (distance < bestDistance) {
                best = name;
                bestDistance = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    /** A hint: {@code did you mean "x"?}, else {@code allowed: a, b, c}, else nothing. */
    public static String hint(String wrong, Collection<String> allowed) {
        Optional<String> nearest = of(wrong, allowed);
        if (nearest.isPresent()) {
            return "did you mean " + Quoted.of(nearest.get()) + "?";
        }
        return allowed.isEmpty() || allowed.size() > MOST_LISTED ? "" : "allowed: " + Quoted.choices(allowed);
    }

    /**
     * The same among names that people choose freely: to a name of one or two letters any other such is near, so that
     * nothing is guessed but the case, and some are listed.
     */
    public static String hintOfFree(String wrong, Collection<String> allowed) {
        if (wrong.length() > LONGEST_NOT_GUESSED || allowed.isEmpty()) {
            return hint(wrong, allowed);
        }
        Optional<String> sameLetters =
                allowed.stream().filter(wrong::equalsIgnoreCase).findFirst();
        if (sameLetters.isPresent()) {
            return "did you mean " + Quoted.of(sameLetters.get()) + "?";
        }
        int more = allowed.size() - MOST_LISTED;
        return "allowed: " + Quoted.choices(allowed.stream().limit(MOST_LISTED).toList())
                + (more > 0 ? " and " + more + " more" : "");
    }

    /** The distance, where {@code daisys} is one slip from {@code daisies}. */
    private static int slips(String wrong, String name) {
        int plain = distance(wrong, name);
        return wrong.endsWith("ys")
                ? Math.min(plain, 1 + distance(wrong.substring(0, wrong.length() - 2) + "ies", name))
                : plain;
    }

    static int distance(String a, String b) {
        if (Math.abs(a.length() - b.length()) > LONGEST_COMPARED) {
            return Integer.MAX_VALUE;
        }
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, cost, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int cheapest(String a, String b, int[][] cost, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int best = Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1);
        best = Math.min(best, cost[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
