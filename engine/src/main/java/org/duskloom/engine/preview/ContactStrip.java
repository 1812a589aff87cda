package org.duskloom.engine.preview;

import java.io.IOException;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;

/**
 * Chosen moments side by side in one PNG: every pixel a glowing dot where it hangs, seen from the front, each moment
 * with its time under it. A pixel without light is a faint dot, so the shape is always seen; a brighter one has exactly
 * its colour in the middle, unless another hangs over it. Holds one picture in memory, no frames.
 */
public final class ContactStrip implements FrameSink {
    private final StagedFile file;
    private final StripPanels panels;
    private final PickedMoments moments;
    private final int frameBytes;

    /**
     * Lays out the sheet; nothing is written yet.
     *
     * @param file takes the PNG; the strip finishes or abandons it, and does the latter if this constructor throws
     * @param scene the display
     * @param frames numbers of the frames to show, rising, at least one
     * @param options how to lay them out
     * @throws OutputRefusedException if the picture would be too large
     * @throws IllegalArgumentException if there are no frames or they do not rise
     */
    public ContactStrip(StagedFile file, PreviewScene scene, long[] frames, StripOptions options)
            throws OutputRefusedException {
        this(file, scene, ShownFrames.eachAlone(frames), options);
    }

    /**
     * The same with a choice for each panel.
     *
     * @param candidates for each panel the frames of which it shows the one that looks least like the panels before it
     */
    ContactStrip(StagedFile file, PreviewScene scene, long[][] candidates, StripOptions options)
            throws OutputRefusedException {
        this.file = file;
        try {
            this.moments = new PickedMoments(candidates, this::draw);
            this.frameBytes = 3 * scene.pixelCount();
            this.panels = new StripPanels(scene, candidates.length, options);
        } catch (OutputRefusedException | IllegalArgumentException refused) {
            file.close();
            throw refused;
        }
    }

    /**
     * {@inheritDoc}
     *
     * <p>Frames that are not among the chosen ones are passed over.
     */
    @Override
    public void take(FrameBatch batch) {
        for (int i = 0; i < batch.count(); i++) {
            moments.frame(batch.frame(i), batch.rgb(), batch.offset(i), frameBytes);
        }
    }

    private void draw(long frame, byte[] rgb, int offset) {
        panels.draw(frame, rgb, offset);
    }

    /**
     * {@inheritDoc}
     *
     * @throws IllegalStateException if chosen frames did not come
     */
    @Override
    public void finish() throws IOException {
        moments.requireComplete();
        panels.complete().writePng(file);
    }

    @Override
    public void close() {
        file.close();
    }
}
