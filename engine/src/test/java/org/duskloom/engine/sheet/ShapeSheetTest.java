package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
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

    private static Shape shape(String step) {
        return display(step).shapes().get(0);
    }

    private static Display display(String step) {
        String text = """
                {"duskloom": "display/1", "shapes": {"a": {"build": [%s]}},
                 "props": [{"name": "a-1", "shape": "a", "at": [0, 0]},
                           {"name": "a-2", "shape": "a", "at": [2000, 0], "turn": 90, "reverse": true}]}
                """.formatted(step);
        Problems problems = new Problems();
        Display display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> java.util.Optional.empty(), problems))
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

    /** Two units of a centimetre apart are 20 mm on paper: SVG 1.1 (W3C) makes a unit of the view box a millimetre here. */
    @Test
    void svgIsTrueToScale() throws Exception {
        Shape line = shape("{\"line\": {\"from\": [0, 0], \"to\": [8, 6], \"count\": 6}}");
        Document svg = parsed(ShapeSheet.draw(line, 10, View.FRONT, new SheetOptions(9), 0));

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

    @Test
    void scaleBarIsAHundredMillimetresLong() throws Exception {
        Shape ring = shape("{\"ring\": {\"count\": 24, \"radius\": 150}}");
        NodeList lines = parsed(ShapeSheet.draw(ring, 1, View.FRONT, HOLES, 0)).getElementsByTagName("line");
        assertThat(java.util.stream.IntStream.range(0, lines.getLength()).mapToObj(i -> (Element) lines.item(i)))
                .anyMatch(line -> Math.abs(number(line, "x2") - number(line, "x1") - 100) < 1e-9
                        && line.getAttribute("y1").equals(line.getAttribute("y2")));
    }

    @Test
    void theBackIsTheMirroredFront() {
        Shape line = shape("{\"line\": {\"from\": [0, 0], \"to\": [80, 60], \"count\": 6}}");
        List<Stroke.Circle> front = circles(ShapeSheet.draw(line, 1, View.FRONT, HOLES, 0));
        List<Stroke.Circle> back = circles(ShapeSheet.draw(line, 1, View.BACK, HOLES, 0));
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

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            24;  {"ring": {"count": 24, "radius": 160}}
            60;  {"ring": {"count": 60, "radius": 400}}
            150; {"ring": {"count": 150, "radius": 1000}}
            150; {"line": {"from": [0, 0], "to": [5960, 0], "count": 150}}
            150; {"grid": {"rows": 10, "columns": 15, "spacing": [50, 50]}}
            96;  {"spokes": {"count": 12, "pixels": 8, "from": 80, "to": 400}}
            """)
    void everyPixelIsNumberedAndNothingOverlaps(int pixels, String step) {
        Drawing drawing = ShapeSheet.draw(shape(step), 1, View.FRONT, HOLES, 0);
        List<Stroke.Text> texts = drawing.strokes().stream()
                .filter(Stroke.Text.class::isInstance)
                .map(Stroke.Text.class::cast)
                .toList();
        List<Stroke.Text> numbers = texts.stream()
                .filter(text -> text.words().matches("\\d+( IN| OUT)?"))
                .toList();
        assertThat(numbers).hasSize(pixels);
        for (Stroke.Text number : numbers) {
            assertThat(texts).noneMatch(other -> other != number && other.area().meets(number.area()));
            assertThat(circles(drawing)).noneMatch(hole -> meets(hole, number.area()));
            assertThat(drawing.area().with(number.area())).isEqualTo(drawing.area());
        }
    }

    private static boolean meets(Stroke.Circle hole, Area area) {
        double x = Math.max(area.left(), Math.min(hole.x(), area.right()));
        double y = Math.max(area.bottom(), Math.min(hole.y(), area.top()));
        return Math.hypot(x - hole.x(), y - hole.y()) < hole.radius();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void drawsTheSmallestShapes(int pixels) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < pixels; i++) {
            points.append(String.format(Locale.ROOT, "%s[%d, 0]", i == 0 ? "" : ", ", 50 * i));
        }
        Shape shape = shape("{\"points\": [" + points + "]}");
        assertThat(circles(ShapeSheet.draw(shape, 1, View.FRONT, HOLES, 0))).hasSizeGreaterThanOrEqualTo(pixels);
    }

    @Test
    void stageNamesPropsAndTheirTurns() {
        Display display = display("{\"ring\": {\"count\": 24, \"radius\": 160}}");
        assertThat(StageSheet.draw(display, 0).strokes())
                .filteredOn(Stroke.Text.class::isInstance)
                .extracting(stroke -> ((Stroke.Text) stroke).words())
                .contains("a-1", "a-2 90° reversed");
        // The arrow of the turned prop points along its own up: to the left.
        assertThat(StageSheet.draw(display, 0).strokes())
                .filteredOn(Stroke.Arrow.class::isInstance)
                .singleElement()
                .satisfies(stroke ->
                        assertThat(((Stroke.Arrow) stroke).directionX()).isCloseTo(-1, within(1e-9)));
    }

    @Test
    void writesRangesAsADisplayDoes() {
        assertThat(PixelRangeText.of(new int[] {0, 1, 2, 5, 9, 8, 7})).isEqualTo("1-3, 6, 10-8");
        assertThat(PixelRangeText.of(new int[] {3})).isEqualTo("4");
        assertThat(PixelRangeText.of(new int[] {39, 42, 45})).isEqualTo("40, 43, 46");
    }
}
