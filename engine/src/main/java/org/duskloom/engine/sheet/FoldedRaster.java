package org.duskloom.engine.sheet;

import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.preview.Raster;

/** A long and flat picture cut into rows under each other, with what explains it under the last. */
final class FoldedRaster {
    private static final int LETTER_SCALE = 2;

    /** Room for a line of text above each row. */
    private static final int GAP = 3 * LETTER_SCALE * PixelFont.CAPITAL_ROWS;

    /** How much of the neighbouring rows each shows, so that every number is whole in one of them. */
    private static final int OVERLAP = 120;

    private final Raster whole;
    private final int rows;
    private final int bodyRows;
    private final int step;
    private final Raster folded;

    private FoldedRaster(Raster whole, int rows, int bodyRows) {
        this.whole = whole;
        this.rows = rows;
        this.bodyRows = bodyRows;
        this.step = (whole.width() + rows - 1) / rows;
        int height = rows * (bodyRows + GAP) + GAP + whole.height() - bodyRows;
        this.folded = new Raster(step + 2 * OVERLAP, height, SheetColors.PAPER);
    }

    /**
     * Cuts a picture.
     *
     * @param rows how many rows; with 1 it stays as it is
     * @param bodyRows how many rows of dots of it are cut; what is under them stands under the last row
     */
    static Raster of(Raster whole, int rows, int bodyRows) {
        return rows == 1 ? whole : new FoldedRaster(whole, rows, bodyRows).cut();
    }

    private Raster cut() {
        for (int row = 0; row < rows; row++) {
            int top = row * (bodyRows + GAP);
            write((row + 1) + " of " + rows, top);
            copy(Math.max(0, row * step - OVERLAP), 0, bodyRows, top + GAP);
        }
        int foot = rows * (bodyRows + GAP);
        write("In " + rows + " rows, from left to right; the end of each is the start of the next, too.", foot);
        copy(0, bodyRows, whole.height() - bodyRows, foot + GAP);
        return folded;
    }

    private void write(String words, int top) {
        folded.text(words, LETTER_SCALE * PixelFont.CAPITAL_ROWS, top + GAP / 3, LETTER_SCALE, SheetColors.QUIET);
    }

    private void copy(int fromX, int fromY, int count, int toY) {
        for (int y = 0; y < count; y++) {
            for (int x = 0; x < folded.width() && fromX + x < whole.width(); x++) {
                folded.dot(x, toY + y, whole.colourAt(fromX + x, fromY + y));
            }
        }
    }
}
