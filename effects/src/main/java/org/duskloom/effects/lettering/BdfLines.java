package org.duskloom.effects.lettering;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** The lines of a BDF file, one after the other: a keyword and its values. Comments and empty lines are passed over. */
final class BdfLines {
    private final List<String> lines;
    private final String shownName;
    private final Problems problems;
    /** The number of the line, from 1; 0 before the first. */
    private int number;

    private String keyword = "";
    private String rest = "";

    BdfLines(byte[] file, String shownName, Problems problems) {
        // The letters matter as numbers only; old files have comments in any encoding.
        lines = new String(file, StandardCharsets.ISO_8859_1).lines().toList();
        this.shownName = shownName;
        this.problems = problems;
    }

    /** Goes to the next line; false behind the last. */
    boolean next() {
        while (number < lines.size()) {
            String line = lines.get(number++).strip();
            String[] words = line.split("\\s+", 2);
            if (!line.isEmpty() && !words[0].equals("COMMENT")) {
                keyword = words[0];
                rest = words.length > 1 ? words[1] : "";
                return true;
            }
        }
        keyword = "";
        rest = "";
        return false;
    }

    String keyword() {
        return keyword;
    }

    boolean is(String word) {
        return keyword.equals(word);
    }

    /** The first of these values as whole numbers; an error if there are fewer, or other ones. */
    Optional<int[]> numbers(int count, String meaning) {
        String[] words = rest.isEmpty() ? new String[0] : rest.split("\\s+");
        try {
            if (words.length >= count) {
                return Optional.of(Arrays.stream(words, 0, count)
                        .mapToInt(Integer::parseInt)
                        .toArray());
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        error(keyword + " has " + Quoted.of(rest), "it needs " + meaning);
        return Optional.empty();
    }

    /** An error in this line. */
    void error(String message, String hint) {
        problems.error(new Location(shownName, Math.max(1, number), 0), message, hint);
    }
}
