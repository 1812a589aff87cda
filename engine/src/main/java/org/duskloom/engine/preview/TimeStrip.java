package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.OptionalInt;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.png.PngWriter;
import org.duskloom.engine.text.Counted;

/**
 * A whole run in one PNG: a row per pixel in wiring order, a column per frame or, for long runs, per n-th frame, each
 * cell in exactly the colour of the frame's bytes. Title, times and names stand round that field, not in it. Holds all
 * frames in memory, which is why its size is limited.
 */
public final class TimeStrip implements FrameSink {
    /** The largest cell that can be asked for. */
    public static final int LARGEST_CELL = 1000;

    private static final int TICK = 5;
    private static final double LABEL_EVERY_DOTS = 72;

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
        int width = (int) layout.width();
        int height = (int) layout.height();
        try (file;
                PngWriter png =
                        new PngWriter(file.stream(), width, height, PngWriter.FAST, PngWriter.Likeness.SIDEWAYS)) {
            byte[] line = new byte[3 * width];
            writeRows(png, head(), line);
            writeField(png, line);
            writeRows(png, new Raster(width, TimeStripLayout.PADDING, Ink.SHEET), line);
            png.finish();
            file.finish();
        }
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

    private static void writeRows(PngWriter png, Raster part, byte[] line) throws IOException {
        for (int y = 0; y < part.height(); y++) {
            part.copyRow(y, line);
            png.row(line, 0);
        }
    }

    /** Every row of cells is as many rows of the picture as a cell is high. */
    private void writeField(PngWriter png, byte[] line) throws IOException {
        Raster names = names();
        new Raster((int) layout.width(), 1, Ink.SHEET).copyRow(0, line);
        for (int pixel = 0; pixel < scene.pixelCount(); pixel++) {
            fillCells(line, pixel);
            for (int row = 0; row < layout.cellSize(); row++) {
                names.copyRow(pixel * layout.cellSize() + row, line);
                png.row(line, 0);
            }
        }
    }

    private void fillCells(byte[] line, int pixel) {
        int to = 3 * layout.fieldLeft();
        int from = 3 * frames * pixel;
        for (int frame = 0; frame < frames; frame++, from += 3) {
            for (int dot = 0; dot < layout.cellSize(); dot++, to += 3) {
                line[to] = field[from];
                line[to + 1] = field[from + 1];
                line[to + 2] = field[from + 2];
            }
        }
    }

    private Raster head() {
        Raster head = new Raster((int) layout.width(), TimeStripLayout.FIELD_TOP, Ink.SHEET);
        String thinned = framesPerColumn == 1 ? "" : ", one in " + framesPerColumn;
        String detail = scene.size() + " · " + Counted.grouped(frames, "frame") + thinned;
        int room = head.width() - 2 * TimeStripLayout.PADDING;
        Heading.draw(head, TimeStripLayout.PADDING, TimeStripLayout.PADDING, room, scene.title(), detail);
        double framesApart = LABEL_EVERY_DOTS / layout.cellSize() * framesPerColumn;
        // Only columns that are there: a tick stands at the first one at or after its time.
        long lastFrame = firstFrame + (frames - 1) * framesPerColumn;
        for (TimeAxis.Tick tick : TimeAxis.ticks(scene.secondsOfFrame(), firstFrame, lastFrame + 1, framesApart)) {
            long column = (tick.frame() - firstFrame + framesPerColumn - 1) / framesPerColumn;
            int x = layout.fieldLeft() + (int) column * layout.cellSize();
            head.rectangle(x, head.height() - TICK - 1, 1, TICK, Ink.QUIET);
            drawTime(head, TimeLabel.of(tick.seconds()), x);
        }
        return head;
    }

    /** A time begins at its tick, unless it would then run off the picture. */
    private static void drawTime(Raster head, String time, int x) {
        int width = PixelFont.standard().width(time);
        int left = Math.min(x, head.width() - TimeStripLayout.PADDING - width);
        head.text(time, left, head.height() - TICK - 4 - PixelFont.CAPITAL_ROWS, 1, Ink.QUIET);
    }

    private Raster names() {
        int height = scene.pixelCount() * layout.cellSize();
        Raster names = new Raster(layout.fieldLeft(), height, Ink.SHEET);
        for (PropSpan prop : scene.props()) {
            if (TimeStripLayout.hasRoom(prop, layout.cellSize())) {
                drawName(names, prop);
            }
        }
        return names;
    }

    private void drawName(Raster names, PropSpan prop) {
        int top = prop.firstPixel() * layout.cellSize();
        int rows = prop.pixelCount() * layout.cellSize();
        String name = PixelFont.standard().fitted(prop.name(), TimeStripLayout.WIDEST_NAME);
        int right = names.width() - TimeStripLayout.NAME_GAP;
        int left = right - PixelFont.standard().width(name);
        names.text(name, left, top + (rows - PixelFont.CAPITAL_ROWS) / 2, 1, Ink.QUIET);
        // A bracket along the prop's rows, open where the next begins.
        names.rectangle(right + 5, top + 1, 2, rows - 2, Ink.RULE);
    }
}
