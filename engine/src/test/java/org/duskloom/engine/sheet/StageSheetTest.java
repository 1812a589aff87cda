package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The stage sheet is held against where the pixels hang. */
class StageSheetTest {
    /**
     * Pixel 1 in the middle of an upright line, pixel 2 at its upper end: from one to the other is the shape's own up.
     */
    private static final String STEM = "{\"points\": [[0, 0], [0, 100], [0, -100], [40, 60], [-10, 20]]}";

    private static Display display(String steps, String props) {
        String text = """
                {"duskloom": "display/1", "shapes": {"a": {"build": [%s]}}, "props": [%s]}
                """.formatted(steps, props);
        Problems problems = new Problems();
        Optional<Display> display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems));
        assertThat(problems.errorCount()).isZero();
        return display.orElseThrow();
    }

    private static Display placed(String placing) {
        return display(STEM, "{\"name\": \"stem\", \"shape\": \"a\", \"at\": [300, 50]" + placing + "}");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', nullValues = "-", textBlock = """
            "turn": 90
            "turn": -30
            "mirror": "y"
            "mirror": "y", "turn": 30
            "mirror": "x", "turn": 30
            "mirror": "y", "scale": 2.5, "turn": 120
            "tilt": -72
            "tilt": 120
            "turn": 40, "tilt": 30, "yaw": -50
            "mirror": "y", "turn": 40, "tilt": 30, "yaw": 200, "scale": 0.5
            """)
    void theArrowPointsWhereTheShapesOwnUpGoes(String placing) {
        Display display = placed(", " + placing);
        Positions stage = display.map().stage();
        double upX = stage.x(1) - stage.x(0);
        double upY = stage.y(1) - stage.y(0);
        double length = Math.hypot(upX, upY);
        for (Drawing drawing :
                List.of(StageSheet.draw(display), StageSheet.picture(display).drawing())) {
            assertThat(arrows(drawing)).singleElement().satisfies(arrow -> {
                assertThat(arrow.directionX()).isCloseTo(upX / length, within(1e-9));
                assertThat(arrow.directionY()).isCloseTo(upY / length, within(1e-9));
            });
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ", \"mirror\": \"x\"",
                ", \"yaw\": 70",
                ", \"scale\": 3",
                ", \"turn\": 180, \"mirror\": \"y\"",
                ", \"turn\": 360"
            })
    void whatStandsUprightHasNoArrow(String placing) {
        assertThat(arrows(StageSheet.draw(placed(placing)))).isEmpty();
        assertThat(texts(StageSheet.draw(placed(placing))))
                .noneMatch(text -> text.words().contains("Red"));
    }

    /**
     * Own up along the audience's eye: a ring with the tip of an arrow, a disc, or with its feathers, a cross of two
     * lines.
     */
    @ParameterizedTest
    @CsvSource({"90, 1, 0", "-90, 0, 2"})
    void whatPointsAtTheAudienceOrAwayIsARing(double tilt, int discs, int lines) {
        Display display = placed(", \"tilt\": " + tilt);
        // Tilt brings what is on top toward the audience: z grows.
        assertThat(Math.signum(display.map().stage().z(1))).isEqualTo(Math.signum(tilt));
        Drawing drawing = StageSheet.draw(display);
        assertThat(arrows(drawing)).isEmpty();
        List<Stroke.Circle> red = drawing.strokes().stream()
                .filter(stroke -> stroke instanceof Stroke.Circle circle && circle.color() == SheetColors.LAST)
                .map(Stroke.Circle.class::cast)
                .toList();
        assertThat(red.stream().filter(circle -> circle.width() > 0)).hasSize(1);
        assertThat(red.stream().filter(circle -> circle.width() == 0)).hasSize(discs);
        assertThat(drawing.strokes().stream()
                        .filter(stroke -> stroke instanceof Stroke.Line line && line.color() == SheetColors.LAST))
                .hasSize(lines);
    }

    /**
     * From behind, what stands at the right hangs at the left, and so do the coordinates and what an arrow points at.
     */
    @Test
    void fromBehindLeftAndRightChangePlaces() {
        Display display = display(STEM, """
                {"name": "left", "shape": "a", "at": [-2000, 0]},
                {"name": "turned", "shape": "a", "at": [1000, 0], "turn": -90}
                """);
        Drawing front = StageSheet.draw(display, View.FRONT);
        Drawing back = StageSheet.draw(display, View.BACK);
        assertThat(texts(front)).extracting(Stroke.Text::words).contains("From the front. Green: first pixel.");
        assertThat(texts(back))
                .extracting(Stroke.Text::words)
                .contains("From behind: left and right change places. Green: first pixel.");
        assertThat(centreX(front, "-1000")).isCloseTo(-1000, within(1e-6));
        assertThat(centreX(back, "-1000")).isCloseTo(1000, within(1e-6));
        assertThat(arrows(front))
                .singleElement()
                .satisfies(arrow -> assertThat(arrow.directionX()).isPositive());
        assertThat(arrows(back))
                .singleElement()
                .satisfies(arrow -> assertThat(arrow.directionX()).isNegative());
    }

    @Test
    void aGridInTheUnitOfTheDisplayLiesUnderEverything() {
        Drawing drawing = StageSheet.draw(display(STEM, "{\"name\": \"p\", \"shape\": \"a\", \"at\": [0, 0]}"));
        assertThat(drawing.strokes().get(0))
                .isInstanceOfSatisfying(
                        Stroke.Line.class, line -> assertThat(line.color()).isEqualTo(SheetColors.GRID));
        assertThat(texts(drawing))
                .extracting(Stroke.Text::words)
                .anyMatch(words -> words.matches("Grid: every [125]0* mm; .*"));
        texts(drawing)
                .forEach(text -> assertThat(drawing.area().holds(text.area())).isTrue());
    }

    private static double centreX(Drawing drawing, String words) {
        return texts(drawing).stream()
                .filter(text -> text.words().equals(words))
                .mapToDouble(text -> text.area().centreX())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void namesSayHowPropsAreMounted() {
        Display display = display(STEM, """
                {"name": "plain", "shape": "a", "at": [0, 0]},
                {"name": "lying", "shape": "a", "at": [1000, 0], "tilt": -72},
                {"name": "all", "shape": "a", "at": [2000, 0], "mirror": "y", "scale": 1.5, "turn": 22.5, "tilt": 10,
                 "yaw": -5, "reverse": true}
                """);
        assertThat(texts(StageSheet.draw(display)))
                .extracting(Stroke.Text::words)
                .contains("plain", "lying, tilt -72", "all, mirror y, scale 1.5, turn 22.5, tilt 10, yaw -5, reverse");
    }

    /** An arch, a crowd in rows, and props in each other, as tight as labels get. */
    @ParameterizedTest
    @CsvSource({"14, 3300, 0.3", "14, 2000, 0", "40, 2500, 0.5", "6, 200, 0"})
    void namesStandByTheirOwnProps(int count, double radius, double wave) {
        StringBuilder props = new StringBuilder();
        for (int i = 0; i < count; i++) {
            double angle = Math.PI * i / (count - 1);
            double x = -radius * Math.cos(angle);
            double y = radius * Math.sin(angle) + wave * 300 * (i % 3);
            props.append(i == 0 ? "" : ", ")
                    .append("{\"name\": \"daisy-" + (i + 1) + "\", \"shape\": \"a\", \"at\": [" + x + ", " + y
                            + "], \"turn\": " + 45 * (i % 3) + "}");
        }
        Display display = display(
                "{\"ring\": {\"count\": 24, \"radius\": 160}}, {\"spokes\": {\"count\": 8, \"pixels\": 3, \"from\":"
                        + " 200, \"to\": 290}}",
                props.toString());
        assertNamed(display, StageSheet.draw(display));
        assertNamed(display, StageSheet.picture(display).drawing());
    }

    /** A figure of the grid in the middle under a prop: the tails of its label's letters reach below their line. */
    @Test
    void namesKeepOffTheFiguresOfTheGrid() {
        Drawing drawing = StageSheet.picture(display("{\"ring\": {\"count\": 40, \"radius\": 1400}}", """
                        {"name": "left", "shape": "a", "at": [-4000, 3000]}, {"name": "pond", "shape": "a", "at": [0, 0], "yaw": 20},
                        {"name": "right", "shape": "a", "at": [4000, 3000]}
                        """))
                .drawing();
        Area figure = texts(drawing).stream()
                .filter(text -> text.words().equals("0"))
                .findFirst()
                .orElseThrow()
                .area();
        Stroke.Text name = texts(drawing).stream()
                .filter(text -> text.words().equals("pond, yaw 20"))
                .findFirst()
                .orElseThrow();
        assertThat(name.area().grown(name.height() * 4 / PixelFont.CAPITAL_ROWS).meets(figure))
                .isFalse();
    }

    private static void assertNamed(Display display, Drawing drawing) {
        List<Stroke.Text> texts = texts(drawing);
        List<Stroke.Circle> pixels = drawing.strokes().stream()
                .filter(stroke -> stroke instanceof Stroke.Circle circle && circle.color() != SheetColors.LAST)
                .map(Stroke.Circle.class::cast)
                .toList();
        for (PlacedProp prop : display.props()) {
            String name = prop.prop().name();
            Stroke.Text text = texts.stream()
                    .filter(candidate ->
                            candidate.words().equals(name) || candidate.words().startsWith(name + ","))
                    .findFirst()
                    .orElseThrow();
            Area area = text.area();
            assertThat(texts).noneMatch(other -> other != text && other.area().meets(area));
            assertThat(pixels).noneMatch(pixel -> area.distanceTo(pixel.x(), pixel.y()) < pixel.radius());
            int first = prop.prop().firstPixel();
            int end = first + prop.prop().pixelCount();
            double own = distance(area, pixels.subList(first, end));
            double others = Math.min(
                    distance(area, pixels.subList(0, first)), distance(area, pixels.subList(end, pixels.size())));
            boolean led = drawing.strokes().stream()
                    .anyMatch(stroke -> stroke instanceof Stroke.Line line
                            && area.distanceTo(line.fromX(), line.fromY()) < text.height()
                            && pixels.subList(first, end).stream()
                                    .anyMatch(pixel -> Math.hypot(line.toX() - pixel.x(), line.toY() - pixel.y())
                                            < 2 * pixel.radius()));
            assertThat(own < others || led).as(text.words()).isTrue();
        }
    }

    private static double distance(Area area, List<Stroke.Circle> pixels) {
        return pixels.stream()
                .mapToDouble(pixel -> area.distanceTo(pixel.x(), pixel.y()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static List<Stroke.Arrow> arrows(Drawing drawing) {
        return drawing.strokes().stream()
                .filter(Stroke.Arrow.class::isInstance)
                .map(Stroke.Arrow.class::cast)
                .toList();
    }

    private static List<Stroke.Text> texts(Drawing drawing) {
        return drawing.strokes().stream()
                .filter(Stroke.Text.class::isInstance)
                .map(Stroke.Text.class::cast)
                .toList();
    }
}
