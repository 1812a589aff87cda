package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.font.PixelFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fences and gutters: pictures that are so flat that a screen shows nothing of them if they are in one piece. */
class FoldedRasterTest {
    private static final int SCALE = 2;

    @TempDir
    private Path folder;

    private static SheetPicture fence(int count, double lengthMm) {
        ScaledShape shape = SheetShapes.built(
                "{\"line\": {\"from\": [0, 0], \"to\": [" + lengthMm + ", 0], \"count\": " + count + "}}", 1);
        return ShapeSheet.picture(shape, 1, View.FRONT, new SheetOptions(12));
    }

    /** 150 lights, 72 mm apart. */
    @Test
    void everyNumberIsWholeInOneOfTheRowsInLargeLetters() throws IOException {
        SheetPicture picture = fence(150, 10_728);
        assertThat(picture.rows()).isGreaterThan(1);
        DrawnSheet sheet = DrawnSheet.of(folder, picture);
        assertThat(sheet.width()).isLessThan(2000);
        assertThat(sheet.width()).isLessThan(8 * sheet.height());
        List<String> missing = new ArrayList<>();
        for (int number = 2; number < 150; number++) {
            if (!isWritten(sheet, String.valueOf(number), SheetColors.INK)) {
                missing.add(String.valueOf(number));
            }
        }
        assertThat(missing).isEmpty();
        assertThat(isWritten(sheet, "1 IN", SheetColors.FIRST)).isTrue();
        assertThat(isWritten(sheet, "150 OUT", SheetColors.LAST)).isTrue();
        for (int row = 1; row <= picture.rows(); row++) {
            assertThat(isWritten(sheet, row + " of " + picture.rows(), SheetColors.QUIET))
                    .as("row %d", row)
                    .isTrue();
        }
    }

    /** What stands under the shape explains all of its rows, and stands there once. */
    @Test
    void theFootStandsUnderTheLastRow() throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, fence(150, 10_728));
        List<Integer> tops = tops(sheet, "a, scale 1, from the front", SheetColors.INK);
        assertThat(tops).hasSize(1);
        assertThat(tops.get(0))
                .isGreaterThan(tops(sheet, "150 OUT", SheetColors.LAST).get(0));
        assertThat(tops(sheet, "100 mm", SheetColors.INK)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 20, 60})
    void aShapeThatCanBeReadInOnePieceStaysInOne(int count) throws IOException {
        SheetPicture picture = fence(count, 1200);
        assertThat(picture.rows()).isEqualTo(1);
        DrawnSheet sheet = DrawnSheet.of(folder, picture);
        assertThat(sheet.width()).isEqualTo((int) Math.ceil(picture.drawing().widthMm() * picture.dotsPerMm()));
    }

    private static boolean isWritten(DrawnSheet sheet, String words, int color) {
        return !tops(sheet, words, color).isEmpty();
    }

    /** Where the words stand, in dots from the top: every dot of theirs has the colour, and none round them. */
    private static List<Integer> tops(DrawnSheet sheet, String words, int color) {
        List<int[]> dots = new ArrayList<>();
        PixelFont.standard().draw(words, (column, row) -> dots.add(new int[] {column, row}));
        int width = dots.stream().mapToInt(dot -> dot[0]).max().orElseThrow() + 1;
        boolean[][] set = new boolean[20][width + 2];
        dots.forEach(dot -> set[dot[1] + 1][dot[0] + 1] = true);
        int lowest = dots.stream().mapToInt(dot -> dot[1]).max().orElseThrow();
        int highest = dots.stream().mapToInt(dot -> dot[1]).min().orElseThrow();
        List<Integer> tops = new ArrayList<>();
        for (int top = 0; top + (lowest + 1) * SCALE <= sheet.height(); top++) {
            for (int left = 0; left + width * SCALE <= sheet.width(); left++) {
                int x = left + dots.get(0)[0] * SCALE;
                int y = top + dots.get(0)[1] * SCALE;
                // A dot of the font is as many of the picture as its scale squared: the first of them counts.
                boolean isFirst = x > 0 && y > 0 && sheet.dot(x - 1, y) != color && sheet.dot(x, y - 1) != color;
                if (sheet.dot(x, y) == color && isFirst && stands(sheet, set, left, top, highest, lowest, color)) {
                    tops.add(top);
                }
            }
        }
        return tops;
    }

    private static boolean stands(
            DrawnSheet sheet, boolean[][] set, int left, int top, int highest, int lowest, int color) {
        for (int row = highest; row <= lowest; row++) {
            for (int column = -1; column < set[0].length - 1; column++) {
                int x = left + column * SCALE;
                if (x >= 0 && x < sheet.width()) {
                    boolean isInk = sheet.dot(x, top + row * SCALE) == color;
                    if (isInk != set[row + 1][column + 1]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
