package org.duskloom.engine.preview;

import java.util.Locale;
import java.util.OptionalInt;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.text.Counted;

/**
 * Where things stand on a time strip, in dots of the picture: a head with title and times, names at the left, and the
 * field with a column of cells per frame and a row of cells per pixel.
 *
 * @param frames columns of the field
 * @param pixels rows of the field
 * @param cellSize width and height of a cell
 * @param fieldLeft where the field begins
 */
record TimeStripLayout(long frames, int pixels, int cellSize, int fieldLeft) {
    static final int PADDING = 24;

    /** The lower edge of the title. */
    static final int TITLE_BOTTOM = PADDING + StripLayout.TITLE_SCALE * PixelFont.CAPITAL_ROWS;

    static final int FIELD_TOP = TITLE_BOTTOM + 36;

    /** Shorter blocks of rows have no room for a name. */
    static final int NAME_ROWS = PixelFont.CAPITAL_ROWS + 3;

    /** Widest name at the left; longer ones are shortened. */
    static final int WIDEST_NAME = 150;

    static final int NAME_GAP = 12;

    private static final int NARROWEST_FIELD = 240;
    private static final int COMFORTABLE_WIDTH = 1600;
    private static final int COMFORTABLE_HEIGHT = 900;
    private static final int LARGEST_CHOSEN_CELL = 8;

    /**
     * @param pixelSize size of a cell; when empty, one that suits a screen
     * @throws OutputRefusedException if the picture would be too large; says how many frames would do
     */
    static TimeStripLayout of(
            PreviewScene scene, long firstFrame, long frames, long framesPerColumn, OptionalInt pixelSize)
            throws OutputRefusedException {
        TimeStripLayout layout = chosen(scene, frames, pixelSize);
        SheetSize.refuseTooLarge(
                "a time strip of " + Counted.grouped(frames, "frame"),
                layout.width(),
                layout.height(),
                layout.advice(firstFrame, framesPerColumn));
        return layout;
    }

    /** The same, however large the picture would be. */
    static TimeStripLayout chosen(PreviewScene scene, long frames, OptionalInt pixelSize) {
        int pixels = scene.pixelCount();
        int cellSize = pixelSize.orElse(chosenCell(frames, pixels));
        return new TimeStripLayout(frames, pixels, cellSize, PADDING + nameColumn(scene, cellSize));
    }

    long width() {
        return fieldLeft + Math.max(NARROWEST_FIELD, frames * cellSize) + PADDING;
    }

    long height() {
        return FIELD_TOP + (long) pixels * cellSize + PADDING;
    }

    /** How many columns of cells of one dot fit; 0 if there are too many pixels. */
    static long mostColumns(PreviewScene scene) {
        TimeStripLayout narrowest = new TimeStripLayout(1, scene.pixelCount(), 1, PADDING + nameColumn(scene, 1));
        long columns = narrowest.fittingDots();
        return columns < NARROWEST_FIELD ? 0 : columns;
    }

    private long fittingDots() {
        return SheetSize.LARGEST_DOTS / height() - fieldLeft - PADDING;
    }

    private String advice(long firstFrame, long framesPerColumn) {
        long columns = fittingDots();
        long fitting = columns / cellSize;
        if (columns < NARROWEST_FIELD || fitting < 1) {
            return cellSize > 1 ? "choose smaller cells" : "there are too many pixels";
        }
        long end = firstFrame + fitting * framesPerColumn;
        String range = String.format(Locale.ROOT, "at most %d frames fit, such as %d..%d", fitting, firstFrame, end);
        return cellSize > 1 ? range + ", or choose smaller cells" : range;
    }

    private static int chosenCell(long frames, int pixels) {
        long fitting = Math.min(COMFORTABLE_WIDTH / Math.max(1, frames), COMFORTABLE_HEIGHT / pixels);
        return (int) Math.max(1, Math.min(LARGEST_CHOSEN_CELL, fitting));
    }

    private static int nameColumn(PreviewScene scene, int cellSize) {
        int widest = scene.props().stream()
                .filter(prop -> hasRoom(prop, cellSize))
                .mapToInt(prop -> PixelFont.standard().width(prop.name()))
                .max()
                .orElse(0);
        return widest == 0 ? 0 : Math.min(WIDEST_NAME, widest) + NAME_GAP;
    }

    static boolean hasRoom(PropSpan prop, int cellSize) {
        return (long) prop.pixelCount() * cellSize >= NAME_ROWS;
    }
}
