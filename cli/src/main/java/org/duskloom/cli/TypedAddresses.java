package org.duskloom.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Addresses on the command line. */
final class TypedAddresses {
    /** What a shell takes as it is. */
    private static final Pattern PLAIN = Pattern.compile("[\\w./-]+");

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
            String hint = severalInOne(option, addresses, groups).orElse(first.hint());
            throw new MisuseException(option + ": " + first.message() + (hint.isEmpty() ? "" : "; " + hint));
        }
        return pixels;
    }

    /** How to type addresses that stand in one, with a sign between them that other lists have. */
    private static Optional<String> severalInOne(String option, List<String> addresses, GroupTree groups) {
        return addresses.stream()
                .filter(address -> groups.resolve(
                                List.of(new TextNode(Location.ofFile(option), address)), new Problems())
                        .isEmpty())
                .flatMap(address -> groups.severalIn(address).stream())
                .findFirst()
                .map(pieces -> "type " + option + " before each: "
                        + pieces.stream()
                                .map(piece ->
                                        option + " " + (PLAIN.matcher(piece).matches() ? piece : Quoted.of(piece)))
                                .collect(Collectors.joining(" ")));
    }
}
