package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Tables of inputs, each followed by the problems expected of it, which are indented. */
final class Cases {
    private Cases() {}

    static Stream<Arguments> of(String table) {
        List<Arguments> cases = new ArrayList<>();
        List<String> problems = List.of();
        for (String line : table.split("\n")) {
            if (line.startsWith("    ")) {
                problems.add(line.strip());
            } else {
                problems = new ArrayList<>();
                cases.add(Arguments.of(line, problems));
            }
        }
        return cases.stream();
    }
}
