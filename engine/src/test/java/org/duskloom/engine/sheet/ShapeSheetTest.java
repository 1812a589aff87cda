package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.display.svg.SvgPixels;
import org.duskloom.engine.display.svg.SvgReader;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Sheets are measured as a person would: with a ruler on the SVG, and by looking for what lies over what. */
class ShapeSheetTest {
    private static final SheetOptions HOLES = new SheetOptions(12);

    private static ScaledShape shape(String step) {
        return shape(step, 1);
    }

    private static ScaledShape shape(String step, double scale) {
        return new ScaledShape(display(step).shapes().get(0), scale, List.of("a-1"), false);
    }

    private static Display display(String step) {
        String text = """
                {"duskloom": "display/1", "shapes": {"a": {"build": [%s]}},
                 "props": [{"name": "a-1", "shape": "a", "at": [0, 0]}]}
                """.formatted(step);
        Problems problems = new Problems();
        Display display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems))
                .orElse(null);
        assertThat(problems.inFileOrder()).isEmpty();
        return display;
    }

    private static Document parsed(Drawing drawing) throws Exception {
        byte[] svg = SvgSheet.of(drawing, "a & b").getBytes(StandardCharsets.UTF_8);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /**
     * Two units of a centimetre apart are 20 mm on paper: SVG 1.1 (W3C) makes a unit of the view box a millimetre here.
     */
    @Test
    void svgIsTrueToScale() throws Exception {
        ScaledShape line = shape("{\"line\": {\"from\": [0, 0], \"to\": [8, 6], \"count\": 6}}");
        Document svg = parsed(ShapeSheet.draw(line, 10, View.FRONT, new SheetOptions(9)));

        Element root = svg.getDocumentElement();
        String[] box = root.getAttribute("viewBox").split(" ");
        assertThat(root.getAttribute("width")).isEqualTo(box[2] + "mm");
        assertThat(root.getAttribute("height")).isEqualTo(box[3] + "mm");
        List<Element> holes = holes(svg, 4.5);
        assertThat(holes).hasSizeGreaterThanOrEqualTo(6);
        Element first = holes.get(0);
        Element last = holes.get(5);
        // From (0, 0) to (80, 60) mm: a right triangle of 60, 80 and 100.
        assertThat(number(last, "cx") - number(first, "cx")).isCloseTo(80, within(1e-3));
        assertThat(number(first, "cy") - number(last, "cy")).isCloseTo(60, within(1e-3));
    }

    /**
     * At scale 0.9 in centimetres, (0, 0) and (80, 60) are 720 mm across and 540 mm up; holes and the bar stay as they
     * are.
     */
    @Test
    void svgIsTrueToTheScaleOfTheProp() throws Exception {
        ScaledShape line = shape("{\"line\": {\"from\": [0, 0], \"to\": [80, 60], \"count\": 6}}", 0.9);
        Drawing drawing = ShapeSheet.draw(line, 10, View.FRONT, HOLES);
        List<Element> holes = holes(parsed(drawing), 6);
        assertThat(number(holes.get(5), "cx") - number(holes.get(0), "cx")).isCloseTo(720, within(1e-3));
        assertThat(number(holes.get(0), "cy") - number(holes.get(5), "cy")).isCloseTo(540, within(1e-3));
        assertThat(texts(drawing))
                .extracting(Stroke.Text::words)
                .contains("a, scale 0.9, from the front", "6 pixels, 720 x 540 mm, holes 12.0 mm", "100 mm");
    }

    @Test
    void saysForWhichPropsASizeIs() {
        String step = "{\"line\": {\"from\": [0, 0], \"to\": [80, 60], \"count\": 6}}";
        String others = "; other props have it at another scale";
        for (int props : new int[] {1, 5, 6, 14}) {
            List<String> names =
                    IntStream.rangeClosed(1, props).mapToObj(i -> "p" + i).toList();
            ScaledShape of = new ScaledShape(shape(step).shape(), 1, names, true);
            String said = props <= 5
                    ? "for " + String.join(", ", names) + others
                    : "for p1, p2, p3, p4 and " + (props - 4) + " more" + others;
            for (View view : View.values()) {
                assertThat(texts(ShapeSheet.picture(of, 1, view, HOLES).drawing()))
                        .extracting(Stroke.Text::words)
                        .contains(said);
            }
        }
        assertThat(texts(ShapeSheet.draw(shape(step), 1, View.FRONT, HOLES)))
                .extracting(Stroke.Text::words)
                .contains("a, scale 1, from the front")
                .noneMatch(words -> words.contains("for "));
    }

    /** The outlines of the holes, in the order of the wire. */
    private static List<Element> holes(Document svg, double radius) {
        List<Element> holes = new ArrayList<>();
        NodeList circles = svg.getElementsByTagName("circle");
        for (int i = 0; i < circles.getLength(); i++) {
            Element circle = (Element) circles.item(i);
            if (number(circle, "r") == radius && circle.getAttribute("fill").equals("none")) {
                holes.add(circle);
            }
        }
        return holes;
    }

    /** Three decimals of a millimetre stand on a sheet, twice in each place. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {"ring": {"count": 24, "radius": 15, "centre": [40, -7]}}, {"points": [[1, 2]]}  ~ 10   ~ 1
            {"line": {"from": [-300, 20], "to": [80, 60], "count": 7}}                        ~ 1    ~ 0.9
            {"spokes": {"count": 5, "pixels": 3, "from": 2, "to": 9}}                         ~ 25.4 ~ 1
            """)
    void sheetsReadBackToTheSamePlaces(String steps, double millimetres, double scale) {
        ScaledShape shape = shape(steps, scale);
        String svg = SvgSheet.of(ShapeSheet.draw(shape, millimetres, View.FRONT, HOLES), "a");
        Problems problems = new Problems();
        SvgPixels read = SourceText.of(svg.getBytes(StandardCharsets.UTF_8), "a.svg", problems)
                .flatMap(source -> SvgReader.read(source, Optional.empty(), problems))
                .orElseThrow();
        Positions pixels = shape.shape().pixels();
        assertThat(read.count()).isEqualTo(pixels.size());
        for (int i = 0; i < read.count(); i++) {
            assertThat(read.x()[i]).isCloseTo(pixels.x(i) * scale * millimetres, within(0.002));
            assertThat(read.y()[i]).isCloseTo(pixels.y(i) * scale * millimetres, within(0.002));
        }
        assertThat(problems.inFileOrder()).isEmpty();
        assertThat(read.parts()).isEmpty();
    }

    @Test
    void scaleBarIsAHundredMillimetresLong() throws Exception {
        ScaledShape ring = shape("{\"ring\": {\"count\": 24, \"radius\": 150}}");
        NodeList lines = parsed(ShapeSheet.draw(ring, 1, View.FRONT, HOLES)).getElementsByTagName("line");
        assertThat(java.util.stream.IntStream.range(0, lines.getLength()).mapToObj(i -> (Element) lines.item(i)))
                .anyMatch(line -> Math.abs(number(line, "x2") - number(line, "x1") - 100) < 1e-9
                        && line.getAttribute("y1").equals(line.getAttribute("y2")));
    }

    @Test
    void theBackIsTheMirroredFront() {
        ScaledShape line = shape("{\"line\": {\"from\": [0, 0], \"to\": [80, 60], \"count\": 6}}");
        List<Stroke.Circle> front = circles(ShapeSheet.draw(line, 1, View.FRONT, HOLES));
        List<Stroke.Circle> back = circles(ShapeSheet.draw(line, 1, View.BACK, HOLES));
        assertThat(back).hasSameSizeAs(front);
        for (int i = 0; i < front.size(); i++) {
            assertThat(back.get(i).x()).isEqualTo(-front.get(i).x());
            assertThat(back.get(i).y()).isEqualTo(front.get(i).y());
        }
    }

    private static List<Stroke.Circle> circles(Drawing drawing) {
        return drawing.strokes().stream()
                .filter(stroke -> stroke instanceof Stroke.Circle circle && circle.radius() >= 6)
                .map(Stroke.Circle.class::cast)
                .toList();
    }

    /**
     * Roomy shapes, and those in which numbers have little room: hubs with spokes, straight grids, rings with a centre.
     */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            24;  {"ring": {"count": 24, "radius": 160}}
            60;  {"ring": {"count": 60, "radius": 400}}
            150; {"ring": {"count": 150, "radius": 1000}}
            150; {"line": {"from": [0, 0], "to": [5960, 0], "count": 150}}
            150; {"grid": {"rows": 10, "columns": 15, "spacing": [50, 50]}}
            96;  {"spokes": {"count": 12, "pixels": 8, "from": 80, "to": 400}}
            24;  {"ring": {"count": 24, "radius": 30}}
            25;  {"points": [[0, 0]]}, {"spokes": {"count": 12, "pixels": 2, "from": 50, "to": 80}}
            61;  {"points": [[0, 0]]}, {"spokes": {"count": 12, "pixels": 5, "from": 50, "to": 160}}
            61;  {"points": [[0, 0]]}, {"spokes": {"count": 12, "pixels": 5, "from": 40, "to": 120}}
            150; {"spokes": {"count": 15, "pixels": 10, "from": 90, "to": 400}}
            150; {"spokes": {"count": 15, "pixels": 10, "from": 70, "to": 250}}
            24;  {"grid": {"rows": 4, "columns": 6, "spacing": [20, 20], "path": "straight"}}
            150; {"grid": {"rows": 10, "columns": 15, "spacing": [20, 20], "path": "straight"}}
            150; {"grid": {"rows": 10, "columns": 15, "spacing": [14, 14], "path": "straight"}}
            25;  {"ring": {"count": 12, "radius": 60}}, {"ring": {"count": 8, "radius": 40}}, {"ring": {"count": 4, "radius": 20}}, {"points": [[0, 0]]}
            49;  {"ring": {"count": 24, "radius": 100}}, {"ring": {"count": 16, "radius": 65}}, {"ring": {"count": 8, "radius": 35}}, {"points": [[0, 0]]}
            145; {"ring": {"count": 72, "radius": 300}}, {"ring": {"count": 48, "radius": 200}}, {"ring": {"count": 24, "radius": 100}}, {"points": [[0, 0]]}
            """)
    void everyPixelIsNumberedAndNothingOverlaps(int pixels, String step) {
        ScaledShape shape = shape(step);
        for (View view : View.values()) {
            assertNumbered(pixels, ShapeSheet.draw(shape, 1, view, HOLES));
            SheetPicture picture = ShapeSheet.picture(shape, 1, view, HOLES);
            assertNumbered(pixels, picture.drawing());
            double longer =
                    Math.max(picture.drawing().widthMm(), picture.drawing().heightMm());
            assertThat(longer * picture.dotsPerMm()).isBetween(100.0, 4500.0);
            // Letters are drawn in whole dots of the font, whose capitals are seven high.
            assertThat(numbers(picture.drawing()))
                    .allMatch(text -> Math.abs(text.height() * picture.dotsPerMm() % 7) < 1e-6
                            || Math.abs(text.height() * picture.dotsPerMm() % 7 - 7) < 1e-6);
        }
    }

    private static void assertNumbered(int pixels, Drawing drawing) {
        List<Stroke.Text> texts = texts(drawing);
        List<Stroke.Text> numbers = numbers(drawing);
        List<Stroke.Circle> holes = holes(drawing);
        assertThat(holes).hasSize(pixels);
        assertThat(numbers.stream().map(text -> Integer.parseInt(text.words().split(" ")[0])))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, pixels).boxed().toList());
        assertThat(texts).extracting(Stroke.Text::words).contains("1 IN", pixels + " OUT");
        for (Stroke.Text number : numbers) {
            Area area = number.area();
            assertThat(texts).noneMatch(other -> other != number && other.area().meets(area));
            assertThat(holes).noneMatch(hole -> area.distanceTo(hole.x(), hole.y()) < hole.radius());
            assertThat(drawing.area().with(area)).isEqualTo(drawing.area());
            Stroke.Circle own = holes.get(Integer.parseInt(number.words().split(" ")[0]) - 1);
            assertThat(isNearest(own, area, holes) || hasLeader(own, area, drawing))
                    .as(number.words())
                    .isTrue();
            assertThat(number.height()).isGreaterThan(0.5);
        }
    }

    private static List<Stroke.Text> texts(Drawing drawing) {
        return drawing.strokes().stream()
                .filter(Stroke.Text.class::isInstance)
                .map(Stroke.Text.class::cast)
                .toList();
    }

    private static List<Stroke.Text> numbers(Drawing drawing) {
        return texts(drawing).stream()
                .filter(text -> text.words().matches("\\d+( IN| OUT)?"))
                .toList();
    }

    /** The holes in the order of the wire: white discs. */
    private static List<Stroke.Circle> holes(Drawing drawing) {
        return circles(drawing).stream()
                .filter(circle -> circle.radius() == 6 && circle.width() == 0 && circle.color() == SheetColors.PAPER)
                .toList();
    }

    private static boolean isNearest(Stroke.Circle own, Area area, List<Stroke.Circle> holes) {
        return holes.stream()
                .allMatch(other -> other == own
                        || area.distanceTo(own.x(), own.y()) < area.distanceTo(other.x(), other.y())
                                && Math.hypot(area.centreX() - own.x(), area.centreY() - own.y())
                                        < Math.hypot(area.centreX() - other.x(), area.centreY() - other.y()));
    }

    /** A line from beside the label to the rim of its own hole. */
    private static boolean hasLeader(Stroke.Circle own, Area area, Drawing drawing) {
        return drawing.strokes().stream()
                .anyMatch(stroke -> stroke instanceof Stroke.Line line
                        && area.distanceTo(line.fromX(), line.fromY()) < area.height()
                        && Math.hypot(line.toX() - own.x(), line.toY() - own.y()) < own.radius() + 1e-6);
    }

    /** Numbers are 1, 2, ... as they were wired: where they were all, they would be all that one sees. */
    @Test
    void ofThousandsEveryTenthIsNumbered() {
        ScaledShape pole = shape("{\"helix\": {\"count\": 2400, \"radius\": 240, \"height\": 6000, \"turns\": 60}}");
        assertThat(numbers(ShapeSheet.draw(pole, 1, View.FRONT, HOLES)))
                .extracting(Stroke.Text::words)
                .hasSize(241)
                .contains("1 IN", "10", "20", "2390", "2400 OUT")
                .doesNotContain("2", "15", "2400");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void drawsTheSmallestShapes(int pixels) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < pixels; i++) {
            points.append(String.format(Locale.ROOT, "%s[%d, 0]", i == 0 ? "" : ", ", 50 * i));
        }
        ScaledShape shape = shape("{\"points\": [" + points + "]}");
        assertThat(circles(ShapeSheet.draw(shape, 1, View.FRONT, HOLES))).hasSizeGreaterThanOrEqualTo(pixels);
    }

    @Test
    void writesRangesAsADisplayDoes() {
        assertThat(PixelRangeText.of(new int[] {0, 1, 2, 5, 9, 8, 7})).isEqualTo("1-3, 6, 10-8");
        assertThat(PixelRangeText.of(new int[] {3})).isEqualTo("4");
        assertThat(PixelRangeText.of(new int[] {39, 42, 45})).isEqualTo("40, 43, 46");
    }
}
