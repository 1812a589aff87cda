package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.OptionalInt;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;

/**
 * A whole run in one PNG: a row per pixel in wiring order, a column per frame or, for long runs, per n-th frame, each
 * cell in exactly the colour of the frame's bytes. Title, times and names stand round that field, not in it. Holds all
 * frames in memory, which is why its size is limited.
 */
public final class TimeStrip implements FrameSink {
    /** The largest cell that can be asked for. */
    public static final int LARGEST_CELL = 1000;

    private final StagedFile file;
    private final PreviewScene scene;
    private final long firstFrame;
    private final long framesPerColumn;
    private final TimeStripLayout layout;
    private final byte[] field;
    private final int frames;
    private int arrived;

    /**
     * A strip of every frame.
     *
     * @param file takes the PNG; the strip finishes or abandons it, and does the latter if this constructor throws
     * @param scene the display; its coordinates do not matter here
     * @param firstFrame the first frame that will come
     * @param endFrameExclusive one more than the last; above {@code firstFrame}
     * @param pixelSize width and height of a cell, 1 to {@value #LARGEST_CELL}; when empty, a size that suits a screen
     * @throws OutputRefusedException if the picture would be too large
     * @throws IllegalArgumentException if there are no frames, or cells of such a size
     */
    public TimeStrip(
            StagedFile file, PreviewScene scene, long firstFrame, long endFrameExclusive, OptionalInt pixelSize)
            throws OutputRefusedException {
        this(file, scene, firstFrame, endFrameExclusive, 1, pixelSize);
    }

    /**
     * Makes room for the frames; nothing is written yet.
     *
     * @param file takes the PNG; the strip finishes or abandons it, and does the latter if this constructor throws
     * @param scene the display; its coordinates do not matter here
     * @param firstFrame the first frame that will come
     * @param endFrameExclusive one more than the last; above {@code firstFrame}
     * @param framesPerColumn 1 for a column per frame; n for a column for the first frame and every n-th after it,
     *     while those between are passed over and need not come
     * @param pixelSize width and height of a cell, 1 to {@value #LARGEST_CELL}; when empty, a size that suits a screen
     * @throws OutputRefusedException if the picture would be too large
     * @throws IllegalArgumentException if there are no frames, or cells of such a size
     */
    public TimeStrip(
            StagedFile file,
            PreviewScene scene,
            long firstFrame,
            long endFrameExclusive,
            long framesPerColumn,
            OptionalInt pixelSize)
            throws OutputRefusedException {
        this.file = file;
        this.scene = scene;
        this.firstFrame = firstFrame;
        this.framesPerColumn = framesPerColumn;
        this.layout = layoutOrClose(file, scene, firstFrame, endFrameExclusive, framesPerColumn, pixelSize);
        this.frames = (int) layout.frames();
        this.field = new byte[3 * frames * scene.pixelCount()];
    }

    /** How many columns a strip of a display can have; 0 if there are too many pixels for any. */
    public static long mostColumns(PreviewScene scene) {
        return TimeStripLayout.mostColumns(scene);
    }

    @Override
    public void take(FrameBatch batch) {
        for (int i = 0; i < batch.count(); i++) {
            frame(batch.frame(i), batch.rgb(), batch.offset(i));
        }
    }

    private void frame(long frameNumber, byte[] rgb, int offset) {
        long expected = firstFrame + arrived * framesPerColumn;
        if (arrived > 0 && frameNumber < expected && frameNumber > expected - framesPerColumn) {
            return;
        }
        if (frameNumber != expected || arrived == frames) {
            throw new IllegalArgumentException("frame " + frameNumber + ", expected " + expected + " of " + frames);
        }
        int rowBytes = 3 * frames;
        int to = 3 * arrived;
        for (int from = offset; from < offset + 3 * scene.pixelCount(); from += 3) {
            field[to] = rgb[from];
            field[to + 1] = rgb[from + 1];
            field[to + 2] = rgb[from + 2];
            to += rowBytes;
        }
        arrived++;
    }

    /**
     * {@inheritDoc}
     *
     * @throws IllegalStateException if frames are missing
     */
    @Override
    public void finish() throws IOException {
        if (arrived < frames) {
            long missing = firstFrame + arrived * framesPerColumn;
            throw new IllegalStateException("frame " + missing + " of the strip was not rendered");
        }
        int rowBytes = 3 * frames;
        new TimeStripDrawing(scene, firstFrame, framesPerColumn, layout)
                .write(file, (pixel, cells) -> System.arraycopy(field, rowBytes * pixel, cells, 0, rowBytes));
    }

    @Override
    public void close() {
        file.close();
    }

    private static TimeStripLayout layoutOrClose(
            StagedFile file,
            PreviewScene scene,
            long firstFrame,
            long endFrameExclusive,
            long framesPerColumn,
            OptionalInt pixelSize)
            throws OutputRefusedException {
        try {
            requireSensible(firstFrame, endFrameExclusive, framesPerColumn, pixelSize);
            long columns = (endFrameExclusive - firstFrame - 1) / framesPerColumn + 1;
            return TimeStripLayout.of(scene, firstFrame, columns, framesPerColumn, pixelSize);
        } catch (OutputRefusedException | IllegalArgumentException refused) {
            file.close();
            throw refused;
        }
    }

    private static void requireSensible(
            long firstFrame, long endFrameExclusive, long framesPerColumn, OptionalInt pixelSize) {
        int cell = pixelSize.orElse(1);
        if (endFrameExclusive <= firstFrame || framesPerColumn < 1 || cell < 1 || cell > LARGEST_CELL) {
            throw new IllegalArgumentException("frames " + firstFrame + ".." + endFrameExclusive + ", one in "
                    + framesPerColumn + ", cells of " + cell);
        }
    }
}
