package org.duskloom.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.frame.ChosenPixels;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import picocli.CommandLine.Option;

/** {@code --on}: which pixels are seen. */
final class PixelChoice {
    @Option(
            names = "--on",
            paramLabel = "ADDRESS",
            description = "Only this prop, part or group is seen, as large as the picture; may be given several times.")
    private List<String> addresses = List.of();

    /**
     * The pixels that are asked for, of every frame.
     *
     * @throws MisuseException if an address names nothing
     */
    FrameSource of(FrameSource all, GroupTree groups) {
        return addresses.isEmpty() ? all : new ChosenPixels(all, pixels(groups));
    }

    /**
     * Their places in wiring order, from 0, rising; all where none is asked for.
     *
     * @throws MisuseException if an address names nothing
     */
    int[] pixels(GroupTree groups) {
        if (addresses.isEmpty()) {
            return IntStream.range(0, groups.map().pixelCount()).toArray();
        }
        Problems problems = new Problems();
        List<TextNode> typed = addresses.stream()
                .map(address -> new TextNode(Location.ofFile("--on"), address))
                .toList();
        int[] pixels = groups.resolve(typed, problems)
                .map(members -> members.stream()
                        .flatMapToInt(member -> Arrays.stream(member.pixels()))
                        .distinct()
                        .sorted()
                        .toArray())
                .orElse(new int[0]);
        if (problems.hasErrors()) {
            Problem first = problems.inFileOrder().get(0);
            throw new MisuseException("--on: " + first.message() + (first.hint().isEmpty() ? "" : "; " + first.hint()));
        }
        return pixels;
    }
}
