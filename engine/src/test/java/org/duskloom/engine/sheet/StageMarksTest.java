package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The marks on the sheet of a stage, worked out on paper: a stem of 2 m with a leaf, in centimetres, its middle at
 * (300, 50).
 */
class StageMarksTest {
    /** The longer side of 2000 mm is 90 letters. */
    private static final double LETTERS = 2000 / 90.0;

    private static final double DOT = 2000 * 0.0022;

    private static Display stage(String... placings) {
        StringBuilder props = new StringBuilder();
        for (int i = 0; i < placings.length; i++) {
            props.append(i == 0 ? "" : ", ")
                    .append("{\"name\": \"stem-" + (i + 1) + "\", \"shape\": \"stem\", \"at\": [300, 50]" + placings[i]
                            + "}");
        }
        String text = "{\"duskloom\": \"display/1\", \"units\": \"cm\", \"shapes\": {\"stem\": {\"build\":"
                + " [{\"points\": [[0, 0], [0, 100], [0, -100], [40, 60], [-10, 20]]}]}}, \"props\": [" + props + "]}";
        Problems problems = new Problems();
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems))
                .orElseThrow();
    }

    private static <T> List<T> all(Drawing drawing, Class<T> kind) {
        return drawing.strokes().stream()
                .filter(stroke -> !isOfGrid(stroke))
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** The grid lies under all that is looked at here. */
    private static boolean isOfGrid(Stroke stroke) {
        return stroke instanceof Stroke.Line line && line.color() == SheetColors.GRID
                || stroke instanceof Stroke.Text text && text.color() == SheetColors.COORDINATE;
    }

    private static Stream<Stroke.Circle> circles(Drawing drawing, int color) {
        return all(drawing, Stroke.Circle.class).stream().filter(circle -> circle.color() == color);
    }

    /** Every pixel is a disc where it hangs, in millimetres; the first is green and half as large again. */
    @Test
    void pixelsAreDots() {
        Drawing drawing = StageSheet.draw(stage(""));
        assertThat(circles(drawing, SheetColors.FIRST))
                .singleElement()
                .satisfies(first -> assertCircle(first, 3000, 500, 1.5 * DOT));
        List<Stroke.Circle> others = circles(drawing, SheetColors.WIRE).toList();
        double[][] places = {{3000, 1500}, {3000, -500}, {3400, 1100}, {2900, 700}};
        assertThat(others).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertCircle(others.get(i), places[i][0], places[i][1], DOT);
        }
        assertThat(all(drawing, Stroke.Line.class)).isEmpty();
    }

    private static void assertCircle(Stroke.Circle circle, double x, double y, double radius) {
        assertThat(circle.x()).isCloseTo(x, within(1e-9));
        assertThat(circle.y()).isCloseTo(y, within(1e-9));
        assertThat(circle.radius()).isCloseTo(radius, within(1e-9));
        assertThat(circle.width()).isZero();
    }

    /**
     * Lying, the stem has its root (3000, 500) in the middle under its box: there the name stands, half a letter and
     * the largest dot below it. The leaf at (2800, 400) is further aside than the name is wide.
     */
    @Test
    void theNameStandsUnderItsProp() {
        Drawing drawing = StageSheet.draw(stage(", \"turn\": 90"));
        Stroke.Text name = all(drawing, Stroke.Text.class).get(0);
        assertThat(name.words()).isEqualTo("stem-1, turn 90");
        assertThat(name.height()).isCloseTo(LETTERS, within(1e-9));
        assertThat(name.area().centreX()).isCloseTo(3000, within(1e-6));
        assertThat(name.y() + LETTERS).isCloseTo(500 - 1.5 * DOT - LETTERS / 2, within(1e-6));
    }

    /**
     * A quarter turn counter-clockwise lays the stem to the left; the arrow is 3/10 of its length, from the box's
     * middle.
     */
    @Test
    void theArrowBeginsInTheMiddle() {
        Drawing drawing = StageSheet.draw(stage(", \"turn\": 90"));
        Stroke.Line shaft = all(drawing, Stroke.Line.class).get(0);
        assertThat(shaft.fromX()).isCloseTo(3000, within(1e-6));
        assertThat(shaft.fromY()).isCloseTo(650, within(1e-6));
        assertThat(shaft.toX()).isCloseTo(3000 - 600, within(1e-6));
        assertThat(shaft.toY()).isCloseTo(650, within(1e-6));
        assertThat(shaft.width()).isCloseTo(LETTERS / 5, within(1e-9));
        assertThat(all(drawing, Stroke.Arrow.class)).singleElement().satisfies(tip -> {
            assertThat(tip.x()).isCloseTo(2400, within(1e-6));
            assertThat(tip.y()).isCloseTo(650, within(1e-6));
            assertThat(tip.size()).isCloseTo(1.2 * LETTERS, within(1e-9));
        });
    }

    /** Of an arrow less than 15 in 100 is seen beyond 81.4 degrees of tilt: then it is a ring. */
    @ParameterizedTest
    @CsvSource({"81, true", "82, false", "-81, true", "-82, false", "98, false", "99, true"})
    void anArrowIsDrawnWhileItIsSeen(double tilt, boolean arrow) {
        Drawing drawing = StageSheet.draw(stage(", \"tilt\": " + tilt));
        assertThat(all(drawing, Stroke.Arrow.class)).hasSize(arrow ? 1 : 0);
        assertThat(circles(drawing, SheetColors.LAST).findAny().isEmpty()).isEqualTo(arrow);
        assertThat(words(drawing))
                .contains(
                        arrow
                                ? "Red arrow: own up of a prop that does not stand upright."
                                : "Red ring with a dot: own up comes toward you; with a cross: it goes away from you.");
    }

    private static List<String> words(Drawing drawing) {
        return all(drawing, Stroke.Text.class).stream().map(Stroke.Text::words).toList();
    }

    /**
     * The ring is 0.8 letters in radius; the tip in it a third of that; the feathers reach 0.7 of it along x and along
     * y.
     */
    @Test
    void aRingHasATipOrFeathers() {
        Drawing toward = StageSheet.draw(stage("", ", \"tilt\": 90"));
        List<Stroke.Circle> ring = circles(toward, SheetColors.LAST).toList();
        assertThat(ring).hasSize(2);
        double radius = ring.get(0).radius();
        assertThat(radius).isCloseTo(0.8 * LETTERS, within(1e-9));
        assertThat(ring.get(0).width()).isCloseTo(LETTERS / 5, within(1e-9));
        assertThat(ring.get(1).radius()).isCloseTo(radius / 3, within(1e-9));
        // Laid toward the audience, all of the stem is at its own height.
        assertThat(ring).allSatisfy(circle -> {
            assertThat(circle.x()).isCloseTo(3150, within(1e-6));
            assertThat(circle.y()).isCloseTo(500, within(1e-6));
        });
        Drawing away = StageSheet.draw(stage("", ", \"tilt\": -90"));
        double half = 0.7 * radius;
        assertThat(all(away, Stroke.Line.class).stream().filter(line -> line.color() == SheetColors.LAST))
                .hasSize(2)
                .allSatisfy(line -> {
                    assertThat((line.fromX() + line.toX()) / 2).isCloseTo(3150, within(1e-6));
                    assertThat((line.fromY() + line.toY()) / 2).isCloseTo(500, within(1e-6));
                    assertThat(line.toX() - line.fromX()).isCloseTo(2 * half, within(1e-6));
                    assertThat(Math.abs(line.toY() - line.fromY())).isCloseTo(2 * half, within(1e-6));
                })
                .anyMatch(line -> line.toY() > line.fromY())
                .anyMatch(line -> line.toY() < line.fromY());
    }

    /** Under everything, line by line, and all of it on the page. */
    @Test
    void theFootExplainsWhatIsThere() {
        Drawing drawing = StageSheet.draw(stage("", ", \"turn\": 90", ", \"tilt\": 90"));
        List<Stroke.Text> foot = all(drawing, Stroke.Text.class).stream()
                .filter(text -> text.color() == SheetColors.QUIET)
                .toList();
        assertThat(foot)
                .extracting(Stroke.Text::words)
                .containsExactly(
                        "From the front. Green: first pixel.",
                        "Grid: every 20 cm; x to the audience's right, y up.",
                        "Red arrow: own up of a prop that does not stand upright.",
                        "Red ring with a dot: own up comes toward you; with a cross: it goes away from you.");
        double letters = foot.get(0).height();
        for (Stroke.Text line : foot) {
            assertThat(drawing.area().holds(line.area())).isTrue();
            assertThat(line.x()).isEqualTo(foot.get(0).x());
        }
        assertThat(foot.get(0).y() - foot.get(1).y()).isCloseTo(2 * letters, within(1e-9));
        assertThat(foot.get(1).y() - foot.get(2).y()).isCloseTo(2 * letters, within(1e-9));
        assertThat(circles(drawing, SheetColors.WIRE))
                .allMatch(pixel -> pixel.y() - pixel.radius() > foot.get(0).y() + letters);
        assertThat(words(StageSheet.draw(stage(""))))
                .containsExactly(
                        "stem-1",
                        "From the front. Green: first pixel.",
                        "Grid: every 20 cm; x to the audience's right, y up.");
    }

    /** Two metres at 2 dots a millimetre would be 4000 dots: 2800 are enough, and letters have 14 of them. */
    @Test
    void picturesOfAStage() {
        SheetPicture picture = StageSheet.picture(stage(""));
        assertThat(picture.dotsPerMm()).isCloseTo(1.4, within(1e-12));
        assertThat(all(picture.drawing(), Stroke.Text.class))
                .allSatisfy(text -> assertThat(text.height() * 1.4).isCloseTo(14, within(1e-9)));
        Area page = picture.drawing().area();
        assertThat(page.left()).isLessThan(2900);
        assertThat(page.right()).isGreaterThan(3400);
        SheetPicture small = StageSheet.picture(stage(", \"scale\": 0.1"));
        assertThat(small.dotsPerMm()).isEqualTo(2);
    }
}
