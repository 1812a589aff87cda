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
 * What helps to read the sheet of a stage from (0, 0) to (1800, 400): letters are 20 mm, so the grid covers -40 to 1840
 * and -40 to 440, and its lines are 200 mm apart, the next round step above a twelfth of 1800.
 */
class StageGuidesTest {
    private static final double LETTERS = 20;

    private static Display stage(String... placings) {
        StringBuilder props = new StringBuilder(
                "{\"name\": \"low\", \"shape\": \"bar\", \"at\": [0, 0]}, {\"name\": \"high\", \"shape\": \"bar\", \"at\": [1700,"
                        + " 400]}");
        for (String placing : placings) {
            props.append(", {").append(placing).append("}");
        }
        String text = """
                {"duskloom": "display/1",
                 "shapes": {"bar": {"build": [{"line": {"from": [0, 0], "to": [100, 0], "count": 3}}]},
                   "lamp": {"build": [{"points": [[0, 0]]}]}},
                 "props": [%s]}
                """.formatted(props);
        Problems problems = new Problems();
        Optional<Display> display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems));
        assertThat(problems.errorCount()).isZero();
        return display.orElseThrow();
    }

    private static List<Stroke.Line> grid(Drawing drawing, boolean upright) {
        return drawing.strokes().stream()
                .filter(Stroke.Line.class::isInstance)
                .map(Stroke.Line.class::cast)
                .filter(line -> line.color() == SheetColors.GRID && (line.fromX() == line.toX()) == upright)
                .toList();
    }

    private static List<Stroke.Text> texts(Drawing drawing, int color) {
        return drawing.strokes().stream()
                .filter(Stroke.Text.class::isInstance)
                .map(Stroke.Text.class::cast)
                .filter(text -> text.color() == color)
                .toList();
    }

    private static Stroke.Text named(Drawing drawing, String beginning) {
        return texts(drawing, SheetColors.INK).stream()
                .filter(text -> text.words().startsWith(beginning))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"FRONT, 1", "BACK, -1"})
    void uprightLinesStandAtRoundX(View view, int sign) {
        Drawing drawing = StageSheet.draw(stage(), view);
        List<Stroke.Line> lines = grid(drawing, true);
        assertThat(lines).hasSize(10);
        for (int i = 0; i < 10; i++) {
            assertThat(lines.get(i).fromX()).isCloseTo(sign * 200.0 * i, within(1e-9));
        }
        assertThat(lines).allSatisfy(line -> {
            assertThat(line.fromY()).isCloseTo(-40, within(1e-9));
            assertThat(line.toY()).isCloseTo(440, within(1e-9));
            assertThat(line.width()).isCloseTo(LETTERS / 16, within(1e-9));
        });
        // Each number has its middle under its line, a letter and a half below the end of it.
        List<Stroke.Text> numbers = texts(drawing, SheetColors.COORDINATE).subList(0, 10);
        for (int i = 0; i < 10; i++) {
            assertThat(numbers.get(i).words()).isEqualTo(String.valueOf(200 * i));
            assertThat(numbers.get(i).area().centreX()).isCloseTo(sign * 200.0 * i, within(1e-9));
            assertThat(numbers.get(i).y()).isCloseTo(-40 - 1.5 * LETTERS, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"FRONT, -40, 1840", "BACK, -1840, 40"})
    void levelLinesLieAtRoundY(View view, double left, double right) {
        Drawing drawing = StageSheet.draw(stage(), view);
        List<Stroke.Line> lines = grid(drawing, false);
        assertThat(lines).extracting(Stroke.Line::fromY).containsExactly(0.0, 200.0, 400.0);
        assertThat(lines).allSatisfy(line -> {
            assertThat(line.toY()).isEqualTo(line.fromY());
            assertThat(line.fromX()).isCloseTo(left, within(1e-9));
            assertThat(line.toX()).isCloseTo(right, within(1e-9));
            assertThat(line.width()).isCloseTo(LETTERS / 16, within(1e-9));
        });
        // Each number ends half a letter to the left of its line and is as much above it as below.
        List<Stroke.Text> numbers = texts(drawing, SheetColors.COORDINATE).subList(10, 13);
        for (int i = 0; i < 3; i++) {
            assertThat(numbers.get(i).words()).isEqualTo(String.valueOf(200 * i));
            assertThat(numbers.get(i).area().right()).isCloseTo(left - LETTERS / 2, within(1e-9));
            assertThat(numbers.get(i).area().centreY()).isCloseTo(200 * i, within(1e-9));
        }
    }

    /**
     * Three digits are 3 · 6/7 letters wide, and end at -50: with half a letter of margin the page begins at -111.4.
     * Below, the numbers stand at -70 with the same margin; two letters under that the words begin, a letter in.
     */
    @Test
    void thePageHoldsTheNumbers() {
        Drawing drawing = StageSheet.draw(stage());
        double left = -50 - 3 * LETTERS * 6 / 7 - LETTERS / 2;
        assertThat(drawing.area().left()).isCloseTo(left, within(1e-9));
        Stroke.Text first = texts(drawing, SheetColors.QUIET).get(0);
        assertThat(first.x()).isCloseTo(left + LETTERS, within(1e-9));
        assertThat(first.y()).isCloseTo(-70 - LETTERS / 2 - 2 * LETTERS, within(1e-9));
        // The foot ends a letter below its last line.
        assertThat(drawing.area().bottom())
                .isCloseTo(texts(drawing, SheetColors.QUIET).get(1).y() - LETTERS, within(1e-9));
    }

    /** A name that reaches over the end of the stage has a letter of paper around it. */
    @Test
    void thePageHoldsTheNames() {
        Drawing drawing = StageSheet.draw(
                stage("\"name\": \"the-long-name-of-a-lamp-at-the-gate\", \"shape\": \"lamp\", \"at\": [1800, 200]"));
        Area name = named(drawing, "the-long-name").area();
        assertThat(name.right()).isGreaterThan(1800 + 3 * LETTERS);
        assertThat(drawing.area().right()).isCloseTo(name.right() + LETTERS, within(1e-6));
    }

    /**
     * Upside down, the arrow of a bar 500 long goes 150 down from its middle, where the name would stand: it stands
     * elsewhere.
     */
    @Test
    void namesKeepClearOfArrows() {
        String bar = "\"name\": \"bar\", \"shape\": \"bar\", \"scale\": 5, ";
        Area free = named(StageSheet.draw(stage(bar + "\"at\": [600, 200]")), "bar, scale 5")
                .area();
        assertThat(free.distanceTo(850, free.centreY())).isZero();
        assertThat(free.bottom()).isBetween(50.0, 200.0);
        Area name = named(StageSheet.draw(stage(bar + "\"at\": [1100, 200], \"turn\": 180")), "bar, scale 5, turn 180")
                .area();
        for (double y = 200; y >= 50; y--) {
            assertThat(name.distanceTo(850, y)).isPositive();
        }
    }

    /** The ring of a lamp that points at the audience is 16 mm in radius; a name begins 15.94 from its pixel. */
    @Test
    void namesKeepClearOfRings() {
        String lamp = "\"name\": \"eye\", \"shape\": \"lamp\", \"at\": [900, 200]";
        assertThat(named(StageSheet.draw(stage(lamp)), "eye").area().distanceTo(900, 200))
                .isCloseTo(15.94, within(1e-6));
        assertThat(named(StageSheet.draw(stage(lamp + ", \"tilt\": 90")), "eye")
                        .area()
                        .distanceTo(900, 200))
                .isGreaterThanOrEqualTo(16 - 1e-9);
    }

    /** Only what is on the sheet is explained. */
    @ParameterizedTest
    @CsvSource({"90, 0, Red arrow", "0, 90, Red ring", "0, -90, Red ring"})
    void theFootExplainsNoMarkThatIsNotThere(double turn, double tilt, String mark) {
        Drawing drawing = StageSheet.draw(stage(
                "\"name\": \"l\", \"shape\": \"lamp\", \"at\": [900, 200], \"turn\": " + turn + ", \"tilt\": " + tilt));
        assertThat(texts(drawing, SheetColors.QUIET))
                .filteredOn(text -> text.words().startsWith("Red"))
                .singleElement()
                .satisfies(text -> assertThat(text.words()).startsWith(mark));
    }

    /** From behind, an arrow that comes toward the audience goes away: a cross of lines a fifth of a letter wide. */
    @ParameterizedTest
    @CsvSource({"FRONT, 90, 0", "FRONT, -90, 2", "BACK, 90, 2", "BACK, -90, 0"})
    void whatComesTowardOneGoesAwayFromTheOther(View view, double tilt, int lines) {
        Drawing drawing = StageSheet.draw(
                stage("\"name\": \"l\", \"shape\": \"lamp\", \"at\": [900, 200], \"tilt\": " + tilt), view);
        assertThat(drawing.strokes().stream()
                        .filter(Stroke.Line.class::isInstance)
                        .map(Stroke.Line.class::cast)
                        .filter(line -> line.color() == SheetColors.LAST))
                .hasSize(lines)
                .allMatch(line -> Math.abs(line.width() - LETTERS / 5) < 1e-9);
    }
}
