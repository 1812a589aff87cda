package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.font.PixelFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A head from column 10 on, row 20, on a sheet of 600 by 60 dots; capitals of a title end at row 20 + 3 * 7. */
class HeadingTest {
    private static final int LEFT = 10;
    private static final int TOP = 20;
    private static final int BOTTOM = 41;

    private final Raster sheet = new Raster(600, 60, Ink.SHEET);

    @Test
    void titleAndDetailStandOnOneLine() {
        Heading.draw(sheet, LEFT, TOP, 500, "HAHA", "LILI");
        assertThat(rows(Ink.TEXT)).containsExactly(TOP, BOTTOM - 1);
        assertThat(rows(Ink.QUIET)).containsExactly(BOTTOM - 14, BOTTOM - 1);
        assertThat(columns(Ink.TEXT)).containsExactly(LEFT, LEFT + 3 * width("HAHA") - 1);
        assertThat(columns(Ink.QUIET)[1]).isEqualTo(LEFT + 500 - 1);
    }

    /** Three dots to one do not fit, two do. */
    @Test
    void aLongTitleIsSmallerBeforeItIsCut() {
        String title = "H".repeat(30);
        Heading.draw(sheet, LEFT, TOP, 2 * width(title), title, "");
        assertThat(columns(Ink.TEXT)).containsExactly(LEFT, LEFT + 2 * width(title) - 1);
        assertThat(rows(Ink.TEXT)).containsExactly(BOTTOM - 14, BOTTOM - 1);
    }

    /** 24 dots lie between the two at the least; small letters need half the room of large ones. */
    @Test
    void theDetailGivesWay() {
        int title = 3 * width("HAHA");
        int detail = width("HIHI");
        Heading.draw(sheet, LEFT, TOP, title + 24 + 2 * detail - 1, "HAHA", "HIHI");
        assertThat(rows(Ink.QUIET)).containsExactly(BOTTOM - 7, BOTTOM - 1);
        Raster narrow = new Raster(600, 60, Ink.SHEET);
        Heading.draw(narrow, LEFT, TOP, title + 24 + detail - 1, "HAHA", "HIHI");
        assertThat(columns(narrow, Ink.QUIET)[1]).isNegative();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5, 30, 100, 333})
    void nothingLiesBeyondTheRoom(int room) {
        Heading.draw(
                sheet, LEFT, TOP, room, "An allotment garden on midsummer night, with all its lights", "78 pixels");
        assertThat(Math.max(columns(Ink.TEXT)[1], columns(Ink.QUIET)[1])).isLessThan(LEFT + room);
    }

    private static int width(String text) {
        return PixelFont.standard().width(text);
    }

    private int[] columns(int colour) {
        return columns(sheet, colour);
    }

    /** The first and the last column with a dot of a colour; the last is -1 if there is none. */
    private static int[] columns(Raster raster, int colour) {
        int[] found = {raster.width(), -1};
        for (int x = 0; x < raster.width(); x++) {
            for (int y = 0; y < raster.height(); y++) {
                if (raster.colourAt(x, y) == colour) {
                    found[0] = Math.min(found[0], x);
                    found[1] = x;
                }
            }
        }
        return found;
    }

    private int[] rows(int colour) {
        int[] found = {sheet.height(), -1};
        for (int y = 0; y < sheet.height(); y++) {
            for (int x = 0; x < sheet.width(); x++) {
                if (sheet.colourAt(x, y) == colour) {
                    found[0] = Math.min(found[0], y);
                    found[1] = y;
                }
            }
        }
        return found;
    }
}
