package org.duskloom.engine.preview;

import org.duskloom.engine.font.PixelFont;

/** The line at the top of a sheet: a title, and at the right, where there is room, what is read second. */
final class Heading {
    private static final int BETWEEN = 24;

    private Heading() {}

    /** Draws it from a corner on, not wider than the room there is. */
    static void draw(Raster sheet, int left, int top, int room, String title, String detail) {
        PixelFont font = PixelFont.standard();
        int scale = StripLayout.TITLE_SCALE;
        while (scale > 1 && font.width(title) * scale > room) {
            scale--;
        }
        String fitted = font.fitted(title, room / scale);
        int bottom = top + StripLayout.TITLE_SCALE * PixelFont.CAPITAL_ROWS;
        sheet.text(fitted, left, bottom - scale * PixelFont.CAPITAL_ROWS, scale, Ink.TEXT);
        int titleWidth = font.width(fitted) * scale;
        int detailScale = titleWidth + BETWEEN + 2 * font.width(detail) <= room ? 2 : 1;
        int detailWidth = font.width(detail) * detailScale;
        if (titleWidth + BETWEEN + detailWidth <= room) {
            int detailTop = bottom - detailScale * PixelFont.CAPITAL_ROWS;
            sheet.text(detail, left + room - detailWidth, detailTop, detailScale, Ink.QUIET);
        }
    }
}
