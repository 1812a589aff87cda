package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Tables of inputs, each followed by the problems expected of it, which are indented. */
public final class Cases {
    private Cases() {}

    /** One list of arguments for each input: the input, and the lines expected. */
    public static Stream<Object[]> of(String table) {
        List<Object[]> cases = new ArrayList<>();
        List<String> problems = List.of();
        for (String line : table.split("\n")) {
            if (line.startsWith("    ")) {
                problems.add(line.strip());
            } else {
                problems = new ArrayList<>();
                cases.add(new Object[] {line, problems});
            }
        }
        return cases.stream();
    }
}
