package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.label.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Strokes are measured where they were drawn: areas and centroids of plane figures are those of any handbook of
 * geometry.
 */
class PngSheetTest {
    private static final Area PAGE = new Area(-20, 10, 80, 70);
    private static final int BLACK = 0;
    private static final double DOTS = 4;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"2, 200, 120", "0.5, 50, 30", "0.333, 34, 20"})
    void thePictureHoldsTheWholeDrawing(double dotsPerMm, int width, int height) throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, dotsPerMm, PAGE);
        assertThat(sheet.width()).isEqualTo(width);
        assertThat(sheet.height()).isEqualTo(height);
        assertThat(sheet.ink().squareMm()).isZero();
    }

    /** Area of a disc: pi r^2. */
    @ParameterizedTest
    @CsvSource({"10, 30, 8", "55.3, 60.7, 5", "0, 40, 0.9"})
    void discs(double x, double y, double radius) throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, DOTS, PAGE, new Stroke.Circle(x, y, radius, 0, BLACK));
        DrawnSheet.Ink ink = sheet.ink();
        assertThat(ink.squareMm()).isCloseTo(Math.PI * radius * radius, within(0.01 * radius * radius + 0.03));
        assertThat(ink.x()).isCloseTo(x, within(0.02));
        assertThat(ink.y()).isCloseTo(y, within(0.02));
        assertThat(sheet.at(x, y)).isEqualTo(BLACK);
        for (double reach : new double[] {-1, 1}) {
            assertThat(sheet.at(x + reach * (radius - 0.4), y)).isEqualTo(BLACK);
            assertThat(sheet.at(x, y + reach * (radius + 0.4))).isEqualTo(SheetColors.PAPER);
        }
    }

    /** Area of a ring: pi (R^2 - r^2); its width lies half inside and half outside its radius. */
    @Test
    void rings() throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, DOTS, PAGE, new Stroke.Circle(20, 35, 10, 4, BLACK));
        DrawnSheet.Ink ink = sheet.ink();
        assertThat(ink.squareMm()).isCloseTo(Math.PI * (12 * 12 - 8 * 8), within(1.0));
        assertThat(ink.x()).isCloseTo(20, within(0.02));
        assertThat(ink.y()).isCloseTo(35, within(0.02));
        assertThat(sheet.at(20, 35)).isEqualTo(SheetColors.PAPER);
        assertThat(sheet.at(20 + 7.5, 35)).isEqualTo(SheetColors.PAPER);
        assertThat(sheet.at(20 - 8.5, 35)).isEqualTo(BLACK);
        assertThat(sheet.at(20, 35 + 11.5)).isEqualTo(BLACK);
        assertThat(sheet.at(20, 35 - 12.5)).isEqualTo(SheetColors.PAPER);
    }

    /** A line is a rectangle with half a disc at either end. */
    @ParameterizedTest
    @CsvSource({
        "0, 30, 50, 30, 3",
        "50, 30, 0, 30, 3",
        "10, 20, 10, 60, 2",
        "10, 20, 70, 65, 1.5",
        "10, 65, 70, 20, 1.5",
        "30, 40, 30, 40, 4"
    })
    void lines(double fromX, double fromY, double toX, double toY, double width) throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, DOTS, PAGE, new Stroke.Line(fromX, fromY, toX, toY, width, BLACK));
        double length = Math.hypot(toX - fromX, toY - fromY);
        DrawnSheet.Ink ink = sheet.ink();
        double wanted = length * width + Math.PI * width * width / 4;
        assertThat(ink.squareMm()).isCloseTo(wanted, within(0.01 * wanted));
        assertThat(ink.x()).isCloseTo((fromX + toX) / 2, within(0.02));
        assertThat(ink.y()).isCloseTo((fromY + toY) / 2, within(0.02));
        for (double share : new double[] {0, 0.3, 0.8, 1}) {
            assertThat(sheet.at(fromX + share * (toX - fromX), fromY + share * (toY - fromY)))
                    .isEqualTo(BLACK);
        }
        double beyond = length == 0 ? 0 : (width / 2 + 0.5) / length;
        if (beyond > 0) {
            assertThat(sheet.at(toX + beyond * (toX - fromX), toY + beyond * (toY - fromY)))
                    .isEqualTo(SheetColors.PAPER);
            assertThat(sheet.at(fromX - beyond * (toX - fromX), fromY - beyond * (toY - fromY)))
                    .isEqualTo(SheetColors.PAPER);
        }
    }

    @Test
    void hairlinesAreADotWide() throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, DOTS, PAGE, new Stroke.Line(0, 30, 40, 30, 0.01, BLACK));
        assertThat(sheet.ink().squareMm()).isCloseTo(40 / DOTS, within(0.5));
    }

    /**
     * Half of its width over each of two rows of dots: half covered, so half of the light of paper and half of its own.
     */
    @Test
    void whatIsHalfCoveredIsHalfMixed() throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, 1, PAGE, new Stroke.Line(0, 40, 50, 40, 1, 0x2040A1));
        for (int row : new int[] {29, 30}) {
            assertThat(sheet.dot(40, row)).isEqualTo(0x90A0D0);
        }
        assertThat(sheet.dot(40, 28)).isEqualTo(SheetColors.PAPER);
        assertThat(sheet.dot(40, 31)).isEqualTo(SheetColors.PAPER);
    }

    /**
     * A triangle as long as its size and two thirds as wide: of size^2 / 3, its centroid a third of its length from its
     * foot.
     */
    @ParameterizedTest
    @CsvSource({"1, 0", "-1, 0", "0, 1", "0, -1", "0.6, 0.8", "-0.6, 0.8", "0.8, -0.6", "-0.8, -0.6"})
    void arrowsPointWhereTheyShould(double directionX, double directionY) throws IOException {
        double size = 18;
        DrawnSheet sheet =
                DrawnSheet.of(folder, DOTS, PAGE, new Stroke.Arrow(30, 40, directionX, directionY, size, BLACK));
        DrawnSheet.Ink ink = sheet.ink();
        assertThat(ink.squareMm()).isCloseTo(size * size / 3, within(0.005 * size * size));
        assertThat(ink.x()).isCloseTo(30 - directionX * size / 6, within(0.1));
        assertThat(ink.y()).isCloseTo(40 - directionY * size / 6, within(0.1));
        assertThat(sheet.at(30 + 0.4 * size * directionX, 40 + 0.4 * size * directionY))
                .isEqualTo(BLACK);
        assertThat(sheet.at(30 + 0.55 * size * directionX, 40 + 0.55 * size * directionY))
                .isEqualTo(SheetColors.PAPER);
        assertThat(sheet.at(30 - 0.55 * size * directionX, 40 - 0.55 * size * directionY))
                .isEqualTo(SheetColors.PAPER);
        for (double side : new double[] {-1, 1}) {
            double x = 30 - 0.45 * size * directionX - side * directionY * size;
            double y = 40 - 0.45 * size * directionY + side * directionX * size;
            assertThat(sheet.at(30 + (x - 30) * 0.45, 40 + (y - 40) * 0.45)).isEqualTo(SheetColors.PAPER);
            double nearX = 30 - 0.4 * size * directionX - side * directionY * size * 0.25;
            double nearY = 40 - 0.4 * size * directionY + side * directionX * size * 0.25;
            assertThat(sheet.at(nearX, nearY)).isEqualTo(BLACK);
        }
    }

    /** Letters stand on the foot of the text and begin at its left end, each dot of the font a block of whole dots. */
    @ParameterizedTest
    @CsvSource({"7, 2, 2", "3.5, 2, 1", "7, 4, 4", "1, 2, 1"})
    void lettersStandOnTheirFoot(double height, double dotsPerMm, int scale) throws IOException {
        String words = "128 IN";
        DrawnSheet sheet = DrawnSheet.of(folder, dotsPerMm, PAGE, new Stroke.Text(words, 5, 30, height, 0x1A1A1A));
        boolean[][] ink = new boolean[sheet.height()][sheet.width()];
        int left = (int) (25 * dotsPerMm);
        int foot = (int) (40 * dotsPerMm);
        int top = foot - (PixelFont.CAPITAL_ROW + PixelFont.CAPITAL_ROWS) * scale;
        PixelFont.standard().draw(words, (column, row) -> {
            for (int k = 0; k < scale * scale; k++) {
                ink[top + row * scale + k / scale][left + column * scale + k % scale] = true;
            }
        });
        for (int row = 0; row < sheet.height(); row++) {
            for (int column = 0; column < sheet.width(); column++) {
                assertThat(sheet.dot(column, row)).isEqualTo(ink[row][column] ? 0x1A1A1A : SheetColors.PAPER);
            }
        }
    }

    @Test
    void laterStrokesLieOverEarlierOnes() throws IOException {
        DrawnSheet sheet = DrawnSheet.of(
                folder,
                DOTS,
                PAGE,
                new Stroke.Circle(30, 40, 10, 0, 0xC01818),
                new Stroke.Circle(30, 40, 5, 0, SheetColors.PAPER),
                new Stroke.Line(0, 47, 60, 47, 1, 0x0A8A2A));
        assertThat(sheet.at(30, 40)).isEqualTo(SheetColors.PAPER);
        assertThat(sheet.at(37, 40)).isEqualTo(0xC01818);
        assertThat(sheet.at(30, 47)).isEqualTo(0x0A8A2A);
    }

    /** A disc round a corner of the page: a quarter of it is seen. */
    @ParameterizedTest
    @CsvSource({"-20, 10", "80, 10", "-20, 70", "80, 70"})
    void whatLiesOutsideIsCutOff(double x, double y) throws IOException {
        DrawnSheet sheet = DrawnSheet.of(folder, DOTS, PAGE, new Stroke.Circle(x, y, 12, 0, BLACK));
        assertThat(sheet.ink().squareMm()).isCloseTo(Math.PI * 12 * 12 / 4, within(1.0));
    }
}
