package org.duskloom.engine.show;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.timeline.Timeline;

/**
 * A timeline with the pixels it plays on, as read.
 *
 * @param timeline the timeline as written
 * @param groups the addresses that it may use, and the pixels behind them
 * @param display the display that they come from; nothing where they come from a bare map
 * @param files finds files named in settings
 */
public record Show(Timeline timeline, GroupTree groups, Optional<Display> display, ShowFiles files) {
    public Show {
        Objects.requireNonNull(timeline, "timeline");
        Objects.requireNonNull(groups, "groups");
        Objects.requireNonNull(display, "display");
        Objects.requireNonNull(files, "files");
    }

    /**
     * The files read so far, the timeline first; those that effects read come in when the plan is compiled, each once.
     */
    public List<InputFile> inputs() {
        return files.inputs();
    }

    /** The pixels in wiring order. */
    public PixelMap map() {
        return groups.map();
    }
}
