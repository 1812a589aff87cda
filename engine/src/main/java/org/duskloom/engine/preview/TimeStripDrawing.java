package org.duskloom.engine.preview;

import java.io.IOException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.png.PngWriter;
import org.duskloom.engine.text.Counted;

/**
 * Draws a time strip from the top down, row by row: title, times and names stand round the field, each cell of which is
 * in exactly the colour of the frame's bytes.
 *
 * @param scene whose pixels are the rows
 * @param firstFrame of the first column
 * @param framesPerColumn how far columns are from each other
 * @param layout where things stand
 */
record TimeStripDrawing(PreviewScene scene, long firstFrame, long framesPerColumn, TimeStripLayout layout) {
    private static final int TICK = 5;
    private static final double LABEL_EVERY_DOTS = 72;

    /** Has the colours of the cells. */
    @FunctionalInterface
    interface Field {
        /** Gives red, green and blue of all columns of a pixel. Asked for each of them once, in their order. */
        void row(int pixel, byte[] cells) throws IOException;
    }

    /**
     * Writes the picture and finishes the file.
     *
     * @throws IOException if that fails; the file is then abandoned
     */
    void write(StagedFile file, Field field) throws IOException {
        int width = (int) layout.width();
        int height = (int) layout.height();
        try (file;
                PngWriter png =
                        new PngWriter(file.stream(), width, height, PngWriter.FAST, PngWriter.Likeness.SIDEWAYS)) {
            byte[] line = new byte[3 * width];
            writeRows(png, head(), line);
            writeField(png, field, line);
            writeRows(png, new Raster(width, TimeStripLayout.PADDING, Ink.SHEET), line);
            png.finish();
            file.finish();
        }
    }

    private static void writeRows(PngWriter png, Raster part, byte[] line) throws IOException {
        for (int y = 0; y < part.height(); y++) {
            part.copyRow(y, line);
            png.row(line, 0);
        }
    }

    /** Every row of cells is as many rows of the picture as a cell is high. */
    private void writeField(PngWriter png, Field field, byte[] line) throws IOException {
        Raster names = names();
        byte[] cells = new byte[(int) (3 * layout.frames())];
        new Raster((int) layout.width(), 1, Ink.SHEET).copyRow(0, line);
        for (int pixel = 0; pixel < scene.pixelCount(); pixel++) {
            field.row(pixel, cells);
            fillCells(line, cells);
            for (int row = 0; row < layout.cellSize(); row++) {
                names.copyRow(pixel * layout.cellSize() + row, line);
                png.row(line, 0);
            }
        }
    }

    private void fillCells(byte[] line, byte[] cells) {
        int to = 3 * layout.fieldLeft();
        if (layout.cellSize() == 1) {
            System.arraycopy(cells, 0, line, to, cells.length);
            return;
        }
        for (int from = 0; from < cells.length; from += 3) {
            for (int dot = 0; dot < layout.cellSize(); dot++, to += 3) {
                line[to] = cells[from];
                line[to + 1] = cells[from + 1];
                line[to + 2] = cells[from + 2];
            }
        }
    }

    private Raster head() {
        Raster head = new Raster((int) layout.width(), TimeStripLayout.FIELD_TOP, Ink.SHEET);
        String thinned = framesPerColumn == 1 ? "" : ", one in " + framesPerColumn;
        String detail = scene.size() + " · " + Counted.grouped(layout.frames(), "frame") + thinned;
        int room = head.width() - 2 * TimeStripLayout.PADDING;
        Heading.draw(head, TimeStripLayout.PADDING, TimeStripLayout.PADDING, room, scene.title(), detail);
        double framesApart = LABEL_EVERY_DOTS / layout.cellSize() * framesPerColumn;
        // Only columns that are there: a tick stands at the first one at or after its time.
        long lastFrame = firstFrame + (layout.frames() - 1) * framesPerColumn;
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
