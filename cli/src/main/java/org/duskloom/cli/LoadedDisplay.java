package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.InputFile;
import org.duskloom.engine.show.ShowReader;

/**
 * A display that was read without errors.
 *
 * @param file as the user named it
 * @param display as read
 * @param inputs the files it was read from
 */
record LoadedDisplay(Path file, Display display, List<InputFile> inputs) {
    /** Reads it; nothing if an error was added to the problems. */
    static Optional<LoadedDisplay> load(Path file, Problems problems) {
        return ShowReader.readDisplay(file, problems)
                .map(read -> new LoadedDisplay(file, read.display(), read.inputs()));
    }

    GroupTree groups() {
        return display.groups();
    }

    PixelMap map() {
        return display.map();
    }

    /** Refuses an output that would replace a file of the display. */
    void refuseAsOutput(Path target) throws IOException {
        InputNames.refuseAsOutput(target, inputs);
    }

    /** What frames of it are made from. */
    Origin origin() throws IOException {
        return InputNames.origin(file, inputs);
    }
}
