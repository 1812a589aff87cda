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
            throw new MisuseException(typed.stream()
                    .flatMap(address -> wrong(option, address, groups).stream())
                    .distinct()
                    .collect(Collectors.joining("; ")));
        }
        return pixels;
    }

    /** What is wrong with an address; nothing if it names something. */
    private static Optional<String> wrong(String option, TextNode address, GroupTree groups) {
        Problems problems = new Problems();
        groups.resolve(List.of(address), problems);
        if (!problems.hasErrors()) {
            return Optional.empty();
        }
        Problem first = problems.inFileOrder().get(0);
        String hint = severalInOne(option, address.value(), groups).orElse(first.hint());
        return Optional.of(option + ": " + first.message() + (hint.isEmpty() ? "" : "; " + hint));
    }

    /** How to type addresses that stand in one, with a sign between them that other lists have. */
    private static Optional<String> severalInOne(String option, String address, GroupTree groups) {
        return groups.severalIn(address)
                .map(pieces -> "type " + option + " before each: "
                        + pieces.stream()
                                .map(piece ->
                                        option + " " + (PLAIN.matcher(piece).matches() ? piece : Quoted.of(piece)))
                                .collect(Collectors.joining(" ")));
    }
}
