package org.duskloom.cli;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.ChosenPixels;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.group.GroupTree;
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
        return TypedAddresses.pixels("--on", addresses, groups);
    }
}
