package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Marks on the sheet of a shape with letters of 8 mm and holes of 12 mm, so that rims are 1.6 mm: worked out on paper.
 */
class ShapeMarksTest {
    private static final double LETTERS = 8;

    private static final double[] X = {0, 100, 100, 100, 100};
    private static final double[] Y = {0, 0, 50, 68, 84};

    private static ShapeDrawing drawing(double[] x, double[] y) {
        Shape shape =
                new Shape("s", new Positions(x, y, new double[x.length]), List.of(), List.of(), Location.ofFile("d"));
        ScaledShape scaled = new ScaledShape(shape, 1, List.of("p"), false);
        return ShapeDrawing.of(Outline.of(scaled, 1, View.FRONT, new SheetOptions(12)), LETTERS);
    }

    private static <T extends Stroke> List<T> all(Drawing drawing, Class<T> kind) {
        return drawing.strokes().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void theWireGoesFromHoleToHole() {
        List<Stroke.Line> wire =
                all(drawing(X, Y).finished(), Stroke.Line.class).subList(0, 4);
        for (int i = 0; i < 4; i++) {
            assertThat(wire.get(i))
                    .isEqualTo(new Stroke.Line(X[i], Y[i], X[i + 1], Y[i + 1], LETTERS / 8, SheetColors.WIRE));
        }
    }

    /**
     * In the middle of a step that is longer than a hole and half a letter, here 16 mm, as large as 0.8 letters but no
     * more than a third of the step: the steps are 100, 50, 18 and 16.
     */
    @Test
    void arrowsPointAlongTheWire() {
        assertThat(all(drawing(X, Y).finished(), Stroke.Arrow.class))
                .containsExactly(
                        new Stroke.Arrow(50, 0, 1, 0, 6.4, SheetColors.QUIET),
                        new Stroke.Arrow(100, 25, 0, 1, 6.4, SheetColors.QUIET),
                        new Stroke.Arrow(100, 59, 0, 1, 6, SheetColors.QUIET));
    }

    /** On the slope of 60 and 80, which is 100 long, an arrow leans as the wire does. */
    @Test
    void arrowsLeanAsTheWireDoes() {
        assertThat(all(drawing(new double[] {10, 70}, new double[] {100, 20}).finished(), Stroke.Arrow.class))
                .containsExactly(new Stroke.Arrow(40, 60, 0.6, -0.8, 6.4, SheetColors.QUIET));
    }

    /**
     * Paper, the rim to saw along, and a dot for the drill; the first and the last have a ring twice as wide around the
     * rim.
     */
    @Test
    void holesHaveRims() {
        List<Stroke.Circle> circles = all(drawing(X, Y).finished(), Stroke.Circle.class);
        assertThat(circles).hasSize(17);
        for (int i = 0; i < 5; i++) {
            assertCircle(circles.get(3 * i), i, 6, 0, SheetColors.PAPER);
            assertCircle(circles.get(3 * i + 1), i, 6, 1.6, SheetColors.INK);
            assertCircle(circles.get(3 * i + 2), i, 0.8, 0, SheetColors.INK);
        }
        assertCircle(circles.get(15), 4, 9.2, 3.2, SheetColors.LAST);
        assertCircle(circles.get(16), 0, 9.2, 3.2, SheetColors.FIRST);
    }

    private static void assertCircle(Stroke.Circle circle, int pixel, double radius, double width, int color) {
        assertThat(circle.x()).isEqualTo(X[pixel]);
        assertThat(circle.y()).isEqualTo(Y[pixel]);
        assertThat(circle.radius()).isCloseTo(radius, within(1e-9));
        assertThat(circle.width()).isCloseTo(width, within(1e-9));
        assertThat(circle.color()).isEqualTo(color);
    }

    /** A quarter of a letter from the rim; from the ring, which reaches 10.8, where the data comes in. */
    @Test
    void numbersStandByTheirHoles() {
        Drawing sheet = drawing(X, Y).finished();
        assertNumber(sheet, "1 IN", 0, 12.8, SheetColors.FIRST);
        assertNumber(sheet, "2", 1, 8, SheetColors.INK);
        assertNumber(sheet, "3", 2, 8, SheetColors.INK);
        assertNumber(sheet, "5 OUT", 4, 12.8, SheetColors.LAST);
    }

    private static void assertNumber(Drawing sheet, String words, int pixel, double away, int color) {
        assertThat(all(sheet, Stroke.Text.class))
                .filteredOn(text -> text.words().equals(words))
                .singleElement()
                .satisfies(text -> {
                    assertThat(text.area().distanceTo(X[pixel], Y[pixel])).isCloseTo(away, within(1e-6));
                    assertThat(text.color()).isEqualTo(color);
                    assertThat(text.height()).isEqualTo(LETTERS);
                    assertThat(sheet.area().holds(text.area().grown(LETTERS - 1e-6)))
                            .isTrue();
                });
    }

    @Test
    void aSinglePixelIsTheFirst() {
        Drawing sheet = drawing(new double[1], new double[1]).finished();
        assertThat(all(sheet, Stroke.Text.class))
                .extracting(Stroke.Text::words)
                .contains("1 IN")
                .noneMatch(words -> words.contains("OUT"));
    }

    /** At most 400 numbers and the last: all, else every fifth, tenth, twentieth. */
    @ParameterizedTest
    @CsvSource({"400, 400", "401, 82", "2004, 402", "2005, 202", "4009, 402", "4010, 202"})
    void ofManyPixelsSomeAreNumbered(int pixels, int numbers) {
        double[] x = IntStream.range(0, pixels).mapToDouble(i -> 50.0 * i).toArray();
        assertThat(drawing(x, new double[pixels]).numbers()).isEqualTo(numbers);
    }
}
