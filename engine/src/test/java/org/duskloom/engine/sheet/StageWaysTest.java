package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
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
 * The ways of data on the sheet of a stage 1800 mm wide, so that letters are 20 mm and dots 3.96 mm in radius: on
 * paper.
 */
class StageWaysTest {
    private static final double LETTERS = 20;
    private static final double DOT = 1800 * 0.0022;

    /** Bars of 100 mm to the right; a runs from (0, 100), b from (400, 500), c from (1700, 0). */
    private static final String BARS =
            prop("a", "bar", 0, 100) + ", " + prop("b", "bar", 400, 500) + ", " + prop("c", "bar", 1700, 0);

    private static String prop(String name, String shape, double x, double y) {
        return "{\"name\": \"" + name + "\", \"shape\": \"" + shape + "\", \"at\": [" + x + ", " + y + "]}";
    }

    private static Display display(String props, String ports) {
        String text = """
                {"duskloom": "display/1",
                 "shapes": {"bar": {"build": [{"line": {"from": [0, 0], "to": [100, 0], "count": 3}}]},
                   "there-and-back": {"build": [{"points": [[0, 0], [100, 0], [50, 0]]}]},
                   "lamp": {"build": [{"points": [[0, 0]]}]}},
                 "props": [%s]%s}
                """.formatted(props, ports.isEmpty() ? "" : ", \"ports\": [" + ports + "]");
        Problems problems = new Problems();
        Optional<Display> display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems));
        assertThat(problems.errorCount()).isZero();
        return display.orElseThrow();
    }

    private static String port(String name, String chain) {
        return "{\"name\": \"" + name + "\", \"chain\": [" + chain + "]}";
    }

    private static <T extends Stroke> List<T> all(Drawing drawing, Class<T> kind) {
        return drawing.strokes().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static List<Stroke.Line> lines(Drawing drawing, int color) {
        return all(drawing, Stroke.Line.class).stream()
                .filter(line -> line.color() == color)
                .toList();
    }

    private static List<Stroke.Circle> rings(Drawing drawing) {
        return all(drawing, Stroke.Circle.class).stream()
                .filter(circle -> circle.width() > 0)
                .toList();
    }

    private static Stroke.Text text(Drawing drawing, String beginning) {
        return all(drawing, Stroke.Text.class).stream()
                .filter(text -> text.words().startsWith(beginning))
                .findFirst()
                .orElseThrow();
    }

    /**
     * From the end of a, (100, 100), to the beginning of b, (400, 500): 300 and 400, so 500 long, middle (250, 300).
     */
    @ParameterizedTest
    @CsvSource({"FRONT, 1", "BACK, -1"})
    void aHopIsALineWithAnArrowInItsMiddle(View view, int sign) {
        Drawing drawing = StageSheet.draw(display(BARS, port("left", "\"a\", \"b\"")), view);
        Stroke.Line hop = lines(drawing, SheetColors.part(0)).get(0);
        assertThat(hop.fromX()).isCloseTo(sign * 100, within(1e-9));
        assertThat(hop.fromY()).isCloseTo(100, within(1e-9));
        assertThat(hop.toX()).isCloseTo(sign * 400, within(1e-9));
        assertThat(hop.toY()).isCloseTo(500, within(1e-9));
        assertThat(hop.width()).isCloseTo(LETTERS / 7, within(1e-9));
        assertThat(all(drawing, Stroke.Arrow.class)).singleElement().satisfies(arrow -> {
            assertThat(arrow.x()).isCloseTo(sign * 250, within(1e-9));
            assertThat(arrow.y()).isCloseTo(300, within(1e-9));
            assertThat(arrow.directionX()).isCloseTo(sign * 0.6, within(1e-12));
            assertThat(arrow.directionY()).isCloseTo(0.8, within(1e-12));
            assertThat(arrow.size()).isCloseTo(18, within(1e-9));
            assertThat(arrow.color()).isEqualTo(SheetColors.part(0));
        });
    }

    /** Where the data enters: three dots in radius, in the colour of the port. */
    @Test
    void aRingIsRoundTheFirstPixelOfEachPort() {
        Drawing drawing = StageSheet.draw(
                display(BARS, port("left", "{\"skip\": 2}, \"b\", \"a\"") + ", " + port("right", "\"c\"")));
        List<Stroke.Circle> rings = rings(drawing);
        assertThat(rings).hasSize(2).allSatisfy(ring -> {
            assertThat(ring.radius()).isCloseTo(3 * DOT, within(1e-9));
            assertThat(ring.width()).isCloseTo(LETTERS / 7, within(1e-9));
        });
        assertThat(rings).extracting(Stroke.Circle::x, Stroke.Circle::color).satisfies(found -> {
            assertThat(found.get(0).toList()).containsExactly(400.0, SheetColors.part(0));
            assertThat(found.get(1).toList()).containsExactly(1700.0, SheetColors.part(1));
        });
        assertThat(rings).extracting(Stroke.Circle::y).containsExactly(500.0, 0.0);
    }

    /** A port of dark pixels alone has neither a ring nor a line on the stage, but stands in the foot. */
    @Test
    void darkPixelsHaveNoPlace() {
        Drawing drawing = StageSheet.draw(display(BARS, port("spare", "{\"skip\": 5}") + ", " + port("l", "\"a\"")));
        assertThat(rings(drawing))
                .singleElement()
                .satisfies(ring -> assertThat(ring.color()).isEqualTo(SheetColors.part(1)));
        assertThat(text(drawing, "port spare: 5 pixels").words()).endsWith("5 dark");
        assertThat(lines(drawing, SheetColors.part(0))).hasSize(1);
    }

    /** On a hop as short as a letter an arrow would hide both its ends; the line is there all the same. */
    @ParameterizedTest
    @CsvSource({"20, 0", "20.1, 1", "19, 0"})
    void aShortHopHasNoArrow(double gap, int arrows) {
        String props =
                prop("a", "bar", 0, 0) + ", " + prop("b", "bar", 100 + gap, 0) + ", " + prop("c", "bar", 1700, 0);
        Drawing drawing = StageSheet.draw(display(props, port("left", "\"a\", \"b\"")));
        assertThat(all(drawing, Stroke.Arrow.class)).hasSize(arrows);
        assertThat(lines(drawing, SheetColors.part(0)).get(0).toX()).isCloseTo(100 + gap, within(1e-9));
    }

    /**
     * For each port a piece of line two letters long in its colour, at half the height of its first line of words,
     * which begin three letters in; a line of words every two letters, those of the second port below those of the
     * first.
     */
    @Test
    void theFootTellsThePortsByTheirColours() {
        Drawing drawing = StageSheet.draw(display(
                BARS, port("left", "{\"skip\": 1}, ".repeat(12) + "\"a\", \"b\"") + ", " + port("right", "\"c\"")));
        Stroke.Text legend = text(drawing, "Lines of a colour: the way of a port's data");
        Stroke.Text left = text(drawing, "port left: 18 pixels");
        Stroke.Text more = text(drawing, "    ");
        Stroke.Text right = text(drawing, "port right: 3 pixels");
        List<Stroke.Text> words = List.of(left, more, right);
        for (int i = 0; i < 3; i++) {
            assertThat(words.get(i).x()).isCloseTo(legend.x() + 3 * LETTERS, within(1e-9));
            assertThat(words.get(i).y()).isCloseTo(legend.y() - 2 * (i + 1) * LETTERS, within(1e-9));
            assertThat(words.get(i).color()).isEqualTo(SheetColors.INK);
        }
        assertSample(lines(drawing, SheetColors.part(0)).get(1), legend.x(), left.y());
        assertSample(lines(drawing, SheetColors.part(1)).get(0), legend.x(), right.y());
        assertThat(all(drawing, Stroke.Text.class))
                .allSatisfy(text -> assertThat(drawing.area().holds(text.area().grown(-1e-6)))
                        .isTrue());
    }

    private static void assertSample(Stroke.Line sample, double left, double baseline) {
        assertThat(sample.fromX()).isCloseTo(left, within(1e-9));
        assertThat(sample.toX()).isCloseTo(left + 2 * LETTERS, within(1e-9));
        assertThat(sample.fromY()).isCloseTo(baseline + LETTERS / 2, within(1e-9));
        assertThat(sample.toY()).isCloseTo(baseline + LETTERS / 2, within(1e-9));
        assertThat(sample.width()).isCloseTo(LETTERS / 3, within(1e-9));
    }

    /** Without ports nothing is said of them. */
    @Test
    void aDisplayWithoutPortsHasNoWays() {
        Drawing drawing = StageSheet.draw(display(BARS, ""));
        assertThat(rings(drawing)).isEmpty();
        assertThat(all(drawing, Stroke.Arrow.class)).isEmpty();
        assertThat(all(drawing, Stroke.Text.class))
                .noneMatch(text -> text.words().contains("port"));
    }

    /** The wire leaves a by its middle, straight down, where the name would stand: it stands elsewhere. */
    @Test
    void namesKeepClearOfLines() {
        String props = prop("arch", "there-and-back", 0, 0) + ", " + prop("lamp", "lamp", 50, -300) + ", "
                + prop("c", "bar", 1700, 0);
        Area free = text(StageSheet.draw(display(props, "")), "arch").area();
        assertThat(free.distanceTo(50, free.centreY())).isZero();
        Area wired = text(StageSheet.draw(display(props, port("left", "\"arch\", \"lamp\""))), "arch")
                .area();
        assertThat(wired.left() > 50 || wired.right() < 50 || wired.bottom() > 0 || wired.top() < -300)
                .isTrue();
    }

    /**
     * On a picture of a stage 2800 mm wide, letters are 14 mm and dots 6.16: a name begins 16.24 from its pixel, and a
     * ring reaches 18.48.
     */
    @Test
    void namesKeepClearOfRings() {
        String props = prop("lamp", "lamp", 0, 0) + ", " + prop("c", "lamp", 2800, 0);
        Area free =
                text(StageSheet.picture(display(props, "")).drawing(), "lamp").area();
        assertThat(free.distanceTo(0, 0)).isCloseTo(16.24, within(1e-6));
        Area wired = text(
                        StageSheet.picture(display(props, port("left", "\"lamp\"")))
                                .drawing(),
                        "lamp")
                .area();
        assertThat(wired.distanceTo(0, 0)).isGreaterThanOrEqualTo(18.48 - 1e-6);
    }
}
