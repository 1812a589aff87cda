package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;

/** A contact strip in memory, for a page that holds it. */
public final class MomentsPicture {
    private static final int PANEL_DOTS = 220;
    private static final int MOST_COLUMNS = 4;

    private MomentsPicture() {}

    /**
     * Draws moments of a show.
     *
     * @param frames numbers of the frames, rising, at least one; those beyond the last are those of a show that has
     *     started over
     * @return a PNG
     * @throws IOException if the frames cannot be had, or the picture would be too large
     */
    public static byte[] png(FrameSource source, long[] frames) throws IOException {
        RunInfo run = source.info();
        StripOptions options = new StripOptions(
                OptionalInt.of(Math.min(MOST_COLUMNS, frames.length)), OptionalInt.of(PANEL_DOTS), false);
        StripPanels panels =
                new StripPanels(PreviewScene.of(run, run.rate()::secondsOf, Optional.of(frame -> "")), frames, options);
        byte[] rgb = new byte[run.frameBytes()];
        try (FrameReader reader = source.reader()) {
            for (long frame : frames) {
                reader.read(frame % run.showFrames(), rgb, 0);
                panels.frame(frame, rgb, 0);
            }
        }
        return panels.complete().png();
    }
}
