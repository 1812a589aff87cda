package org.duskloom.cli;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;

/** Addresses on the command line. */
final class TypedAddresses {
    private TypedAddresses() {}

    /**
     * The pixels that they name, by their place in wiring order, rising.
     *
     * @param option where they are typed: {@code "--on"}
     * @throws MisuseException if one names nothing
     */
    static int[] pixels(String option, List<String> addresses, GroupTree groups) {
        Problems problems = new Problems();
        List<TextNode> typed = addresses.stream()
                .map(address -> new TextNode(Location.ofFile(option), address))
                .toList();
        int[] pixels = groups.resolve(typed, problems).stream()
                .flatMap(List::stream)
                .flatMapToInt(member -> Arrays.stream(member.pixels()))
                .distinct()
                .sorted()
                .toArray();
        if (problems.hasErrors()) {
            Problem first = problems.inFileOrder().get(0);
            throw new MisuseException(
                    option + ": " + first.message() + (first.hint().isEmpty() ? "" : "; " + first.hint()));
        }
        return pixels;
    }
}
