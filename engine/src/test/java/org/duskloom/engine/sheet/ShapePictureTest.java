package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.label.Area;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The dots of the picture of a shape, looked at as a person would who has the shape before them. */
class ShapePictureTest {
    /** A wire that goes up, to the right, down on a slant, and far to the left. */
    private static final double[][] PLACES = {{0, 0}, {0, 90}, {80, 90}, {140, 10}, {50, -40}};

    private static final int NUMBER_SCALE = 2;

    @TempDir
    private Path folder;

    private DrawnSheet sheet;
    private double dotsPerMm;
    private Area area;

    @BeforeEach
    void draw() throws IOException {
        ScaledShape shape = SheetShapes.built("{\"points\": [[0, 0], [0, 90], [80, 90], [140, 10], [50, -40]]}", 1);
        SheetPicture picture = ShapeSheet.picture(shape, 1, View.FRONT, new SheetOptions(12));
        sheet = DrawnSheet.of(folder, picture);
        dotsPerMm = picture.dotsPerMm();
        area = picture.drawing().area();
    }

    /** Wherever the dots of a number stand in the picture, the middle of it is nearest to its own hole. */
    @Test
    void numbersStandByTheirPixels() {
        String[] words = {"1 IN", "2", "3", "4", "5 OUT"};
        int[] colors = {
            SheetColors.FIRST, SheetColors.INK, SheetColors.INK, SheetColors.INK, SheetColors.LAST,
        };
        for (int pixel = 0; pixel < PLACES.length; pixel++) {
            List<double[]> found = found(words[pixel], colors[pixel]);
            assertThat(found).as(words[pixel]).hasSize(1);
            double own = distance(found.get(0), PLACES[pixel]);
            assertThat(own).isLessThan(30);
            for (double[] other : PLACES) {
                assertThat(distance(found.get(0), other)).isGreaterThanOrEqualTo(own);
            }
        }
    }

    /**
     * Places, in millimetres, of the middles of words of which every dot is there in the colour, and paper round it.
     */
    private List<double[]> found(String words, int color) {
        List<int[]> ink = new ArrayList<>();
        PixelFont.standard().draw(words, (column, row) -> ink.add(new int[] {column, row}));
        int columns = PixelFont.standard().width(words) * NUMBER_SCALE;
        int rows = PixelFont.ROWS * NUMBER_SCALE;
        List<double[]> found = new ArrayList<>();
        int above = (int) ((area.top() + 60) * dotsPerMm);
        for (int top = 0; top + rows < Math.min(above, sheet.height()); top++) {
            for (int left = 0; left + columns < sheet.width(); left++) {
                if (stands(ink, left, top, color, columns)) {
                    double x = area.left() + (left + columns / 2.0) / dotsPerMm;
                    double row = top + (PixelFont.CAPITAL_ROW + PixelFont.CAPITAL_ROWS / 2.0) * NUMBER_SCALE;
                    found.add(new double[] {x, area.top() - row / dotsPerMm});
                }
            }
        }
        return found;
    }

    private boolean stands(List<int[]> ink, int left, int top, int color, int columns) {
        for (int[] dot : ink) {
            int x = left + dot[0] * NUMBER_SCALE;
            int y = top + dot[1] * NUMBER_SCALE;
            if (sheet.dot(x, y) != color || sheet.dot(x + 1, y + 1) != color) {
                return false;
            }
        }
        int dots = 0;
        int capitals = top + PixelFont.CAPITAL_ROW * NUMBER_SCALE;
        for (int y = capitals; y < capitals + PixelFont.CAPITAL_ROWS * NUMBER_SCALE; y++) {
            for (int x = left; x < left + columns; x++) {
                dots += sheet.dot(x, y) == color ? 1 : 0;
            }
        }
        return dots == ink.size() * NUMBER_SCALE * NUMBER_SCALE;
    }

    /**
     * Between two holes a grey triangle on the wire, its foot toward the pixel before: there is more of it on that
     * side.
     */
    @Test
    void arrowsPointAlongTheWire() {
        for (int i = 1; i < PLACES.length; i++) {
            double length = distance(PLACES[i - 1], PLACES[i]);
            double alongX = (PLACES[i][0] - PLACES[i - 1][0]) / length;
            double alongY = (PLACES[i][1] - PLACES[i - 1][1]) / length;
            double middleX = (PLACES[i][0] + PLACES[i - 1][0]) / 2;
            double middleY = (PLACES[i][1] + PLACES[i - 1][1]) / 2;
            double[] centre = centreOfGrey(middleX, middleY);
            double along = (centre[0] - middleX) * alongX + (centre[1] - middleY) * alongY;
            double across = (centre[1] - middleY) * alongX - (centre[0] - middleX) * alongY;
            // The centroid of a triangle of 0.8 letters lies a sixth of that behind its middle; of its whole dots,
            // more.
            double size = 0.8 * PixelFont.CAPITAL_ROWS * NUMBER_SCALE / dotsPerMm;
            assertThat(along).isBetween(-0.35 * size, -0.1 * size);
            assertThat(across).isCloseTo(0, within(0.35));
            assertThat(sheet.at(middleX - 0.4 * length * alongX, middleY - 0.4 * length * alongY))
                    .isNotEqualTo(SheetColors.PAPER);
        }
    }

    private double[] centreOfGrey(double x, double y) {
        double sumX = 0;
        double sumY = 0;
        int dots = 0;
        for (double dx = -7; dx <= 7; dx += 0.5 / dotsPerMm) {
            for (double dy = -7; dy <= 7; dy += 0.5 / dotsPerMm) {
                if (sheet.at(x + dx, y + dy) == SheetColors.QUIET) {
                    sumX += x + dx;
                    sumY += y + dy;
                    dots++;
                }
            }
        }
        assertThat(dots).isPositive();
        return new double[] {sumX / dots, sumY / dots};
    }

    /** The longest run of ink in any row of dots is the bar of 100 mm. */
    @Test
    void theScaleBarIsTrue() {
        int longest = 0;
        for (int row = 0; row < sheet.height(); row++) {
            int run = 0;
            for (int column = 0; column < sheet.width(); column++) {
                run = sheet.dot(column, row) == SheetColors.INK ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        double barWidth = PixelFont.CAPITAL_ROWS * NUMBER_SCALE / dotsPerMm / 6;
        assertThat(longest / dotsPerMm).isCloseTo(100 + barWidth, within(1.5 / dotsPerMm));
    }

    /**
     * Holes are white with a dot in the middle to set the drill on, and a rim 6 mm from it; first and last have a ring
     * more.
     */
    @Test
    void holesAreWhereTheyAreDrilled() {
        for (int i = 0; i < PLACES.length; i++) {
            double x = PLACES[i][0];
            double y = PLACES[i][1];
            assertThat(sheet.at(x, y)).isNotEqualTo(SheetColors.PAPER);
            for (double[] side : new double[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                assertThat(sheet.at(x + 3 * side[0], y + 3 * side[1])).isEqualTo(SheetColors.PAPER);
                assertThat(sheet.at(x + 6 * side[0], y + 6 * side[1])).isEqualTo(SheetColors.INK);
            }
        }
        assertThat(sheet.at(-8, 0)).isEqualTo(SheetColors.FIRST);
        assertThat(sheet.at(50, -48)).isEqualTo(SheetColors.LAST);
        assertThat(sheet.at(88.5, 90)).isEqualTo(SheetColors.PAPER);
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }
}
