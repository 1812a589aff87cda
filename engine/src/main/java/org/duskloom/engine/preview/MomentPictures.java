package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;

/** Moments of a show as pictures in memory, for a page that holds them. */
public final class MomentPictures {
    private static final int PANEL_DOTS = 320;

    private MomentPictures() {}

    /**
     * Draws moments of a show; while one is drawn, those before are compressed.
     *
     * @param frames numbers of the frames; those beyond the last are those of a show that has started over
     * @return a PNG for each
     * @throws IOException if the frames cannot be had, or a picture would be too large
     */
    public static List<byte[]> pngs(FrameSource source, long[] frames) throws IOException {
        RunInfo run = source.info();
        PreviewScene scene = PreviewScene.of(run, run.rate()::secondsOf, Optional.of(frame -> ""));
        StripOptions options = new StripOptions(OptionalInt.of(1), OptionalInt.of(PANEL_DOTS), false);
        List<CompletableFuture<byte[]>> pictures = new ArrayList<>();
        byte[] rgb = new byte[run.frameBytes()];
        try (FrameReader reader = source.reader()) {
            StripPanels panel = null;
            for (long frame : frames) {
                panel = panel == null ? new StripPanels(scene, 1, options) : panel.another();
                reader.read(frame % run.showFrames(), rgb, 0);
                panel.draw(frame, rgb, 0);
                pictures.add(CompletableFuture.supplyAsync(panel.complete()::png));
            }
        }
        return pictures.stream().map(CompletableFuture::join).toList();
    }
}
