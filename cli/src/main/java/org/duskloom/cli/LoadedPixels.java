package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.InputFile;
import org.duskloom.engine.show.ShowReader;
import org.duskloom.engine.time.FrameRate;

/**
 * The pixels of a display or a bare map, read without errors.
 *
 * @param file as the user named it
 * @param groups the addresses of the pixels
 * @param display the display; nothing for a bare map
 * @param inputs the files they were read from
 */
record LoadedPixels(Path file, GroupTree groups, Optional<Display> display, List<InputFile> inputs) {
    /** Reads a map where the name ends in {@code .csv}, else a display; nothing if an error was added. */
    static Optional<LoadedPixels> load(Path file, Problems problems) {
        if (file.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            return ShowReader.readMap(file, problems)
                    .map(read -> new LoadedPixels(file, read.groups(), Optional.empty(), read.inputs()));
        }
        return ShowReader.readDisplay(file, problems)
                .map(read ->
                        new LoadedPixels(file, read.display().groups(), Optional.of(read.display()), read.inputs()));
    }

    PixelMap map() {
        return groups.map();
    }

    /**
     * What hangs on which port.
     *
     * @param rate of the frames that go there
     */
    WiredPixels wired(FrameRate rate) {
        return WiredPixels.of(display, Location.ofFile(file.toString()), rate);
    }

    /** Who sends packets to them that are no show's: always the same for the same input files and title. */
    StreamSource streamSource(String title) {
        String identity = InputNames.identity(inputs) + "\n" + title;
        return new StreamSource(StreamSource.cidOf(identity), title, StreamSource.USUAL_PRIORITY, 0);
    }

    /** Refuses an output that would replace a file that was read. */
    void refuseAsOutput(Path target) throws IOException {
        InputNames.refuseAsOutput(target, inputs);
    }

    /** What frames of them are made from. */
    Origin origin() throws IOException {
        return InputNames.origin(file, inputs);
    }
}
