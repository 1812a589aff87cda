package org.duskloom.engine.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * One entry of a part cell: a path and, where the part's order is not the rising one, the pixel's rank in it, from 1; 0
 * where none is written. {@code rim}, {@code petals/1}, {@code top#3}.
 */
record PartCell(List<String> path, int rank) {
    private static final int MAX_DEPTH = 16;

    static List<PartCell> parse(String cell) throws TextFormatException {
        List<PartCell> entries = new ArrayList<>();
        for (String entry : cell.split(";")) {
            if (!entry.isBlank()) {
                entries.add(entry(entry.strip()));
            }
        }
        return entries;
    }

    private static PartCell entry(String entry) throws TextFormatException {
        int mark = entry.indexOf('#');
        String written = mark < 0 ? entry : entry.substring(0, mark);
        List<String> path = List.of(written.split("/", -1));
        for (String name : path) {
            Optional<String> fault = Names.fault(name);
            if (fault.isPresent()) {
                throw new TextFormatException(
                        "a part name of " + Quoted.of(entry) + " " + fault.get(),
                        "parts are separated by ; and nested with /, as in rim;petals/1");
            }
        }
        if (path.size() > MAX_DEPTH) {
            throw new TextFormatException(Quoted.of(entry) + " is nested deeper than " + MAX_DEPTH, "");
        }
        return new PartCell(path, mark < 0 ? 0 : rank(entry, entry.substring(mark + 1)));
    }

    private static int rank(String entry, String digits) throws TextFormatException {
        if (!digits.matches("[1-9][0-9]{0,6}")) {
            throw new TextFormatException(
                    Quoted.of(entry) + " has no rank behind #", "the rank is a whole number from 1, as in top#3");
        }
        return Integer.parseInt(digits);
    }
}
