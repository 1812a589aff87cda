package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Places are compared with the transforms of the JDK's two-dimensional graphics, parts and orders with what was drawn.
 */
class SvgReaderTest {
    private static final double MM_PER_PX = 25.4 / 96;

    private final Problems problems = new Problems();

    private Optional<SvgPixels> read(String svg, String along) {
        SourceText source = SourceText.of(svg.getBytes(StandardCharsets.UTF_8), "petal.svg", problems)
                .orElseThrow();
        return SvgReader.read(
                source,
                Optional.ofNullable(along).map(id -> new TextNode(new Location("display.json", 4, 9), id)),
                problems);
    }

    private SvgPixels sound(String svg, String along) {
        Optional<SvgPixels> pixels = read(svg, along);
        assertThat(shown()).isEmpty();
        return pixels.orElseThrow();
    }

    private List<String> shown() {
        return problems.inFileOrder().stream().map(Object::toString).toList();
    }

    /** A page of 200 by 100 mm whose user unit is half a millimetre. */
    private static String page(String inside) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200mm\" height=\"10cm\" viewBox=\"0 0 400 200\">\n"
                + inside + "\n</svg>\n";
    }

    @Test
    void aCircleIsAPixelWhereItsCentreLies() {
        SvgPixels pixels =
                sound(page("<circle cx='20' cy='40' r='3'/><path d='M0 0'/><circle cx='1e2' cy='.5' r='1'/>"), null);
        assertThat(pixels.x()).containsExactly(10, 50);
        assertThat(pixels.y()).containsExactly(-20, -0.25);
        assertThat(pixels.places()).extracting(Location::line).containsExactly(2, 2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "translate(30)",
                "translate(30 -7.5)",
                "rotate(30)",
                "rotate(-112.5, 20 30)",
                "scale(2)",
                "scale(-1,.5)",
                "skewX(20)",
                "skewY(-35)",
                "matrix(0.5 0.25 -0.75 1.5 10 20)",
                " translate(10,20)rotate(45) , scale(1.5 2) skewX(3)\n"
            })
    void transformsAreThoseOfTheJdksGraphics(String transform) {
        SvgPixels pixels = sound(
                page("<g transform='rotate(15)'><g transform='" + transform
                        + "'><circle transform='translate(1 2)' cx='20' cy='40' r='3'/></g></g>"),
                null);
        AffineTransform all = AffineTransform.getRotateInstance(Math.toRadians(15));
        all.concatenate(awt(transform));
        Point2D expected = all.transform(new Point2D.Double(21, 42), null);
        assertThat(pixels.x()[0]).isCloseTo(expected.getX() / 2, within(1e-6));
        assertThat(pixels.y()[0]).isCloseTo(-expected.getY() / 2, within(1e-6));
    }

    private static AffineTransform awt(String transform) {
        AffineTransform all = new AffineTransform();
        for (String step : transform.strip().split("(?<=\\))[\\s,]*")) {
            String word = step.substring(0, step.indexOf('('));
            double[] n = Arrays.stream(step.substring(step.indexOf('(') + 1, step.indexOf(')'))
                            .split("[\\s,]+"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            switch (word) {
                case "translate" -> all.translate(n[0], n.length > 1 ? n[1] : 0);
                case "scale" -> all.scale(n[0], n[n.length - 1]);
                case "rotate" -> all.rotate(Math.toRadians(n[0]), n.length > 1 ? n[1] : 0, n.length > 1 ? n[2] : 0);
                case "skewX" -> all.shear(Math.tan(Math.toRadians(n[0])), 0);
                case "skewY" -> all.shear(0, Math.tan(Math.toRadians(n[0])));
                default -> all.concatenate(new AffineTransform(n));
            }
        }
        return all;
    }

    /** CSS Values and Units Level 3, section 5.2: 1in = 2.54cm = 96px = 72pt = 6pc, 1Q = 1/40 cm. */
    @ParameterizedTest
    @CsvSource({
        "25.4mm, 25.4",
        "2.54cm, 25.4",
        "1in, 25.4",
        "96px, 25.4",
        "96, 25.4",
        "72pt, 25.4",
        "6pc, 25.4",
        "40Q, 10"
    })
    void unitsAreThoseOfTheStandard(String length, double millimetres) {
        String svg =
                "<svg xmlns='http://www.w3.org/2000/svg' width='9mm'><circle cx='" + length + "' cy='0' r='1'/></svg>";
        assertThat(sound(svg, null).x()[0]).isCloseTo(millimetres, within(1e-6));
    }

    /** SVG 1.1, 7.8: the viewBox is scaled evenly and put in the middle, unless the aspect is free. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            width='100mm' height='100mm' viewBox='0 0 10 20'                            ~ 25 ~ 0
            width='100mm' height='100mm' viewBox='0 0 10 20' preserveAspectRatio='none' ~ 0  ~ 0
            width='100mm' viewBox='-5 0 10 20'                                          ~ 50 ~ 0
            width='100%' height='100%' viewBox='0 -96 10 20'                            ~ 0  ~ -25.4
            """)
    void theViewBoxIsFittedToThePage(String page, double x, double y) {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' " + page + "><circle r='1'/></svg>";
        SvgPixels pixels = read(svg, null).orElseThrow();
        assertThat(problems.hasErrors()).isFalse();
        assertThat(pixels.x()[0]).isCloseTo(x, within(1e-6));
        assertThat(pixels.y()[0]).isCloseTo(y, within(1e-6));
    }

    @Test
    void groupsAreParts() {
        SvgPixels pixels = sound(
                page("<g id='petals'><g id='petals/1'><circle r='1'/><circle cx='1' r='1'/></g>"
                        + "<g id='tip'><circle cx='2' r='1'/></g></g><g><circle cx='3' r='1'/></g><g id='empty'/>"),
                null);
        assertThat(pixels.parts()).containsOnlyKeys("petals", "petals/1", "petals/tip");
        assertThat(pixels.parts().get("petals")).containsExactly(0, 1, 2);
        assertThat(pixels.parts().get("petals/1")).containsExactly(0, 1);
        assertThat(pixels.parts().get("petals/tip")).containsExactly(2);
    }

    @Test
    void theZeroPointIsWhereItIsMarked() {
        String circle = "<circle id='zero' cx='100' cy='100' r='1'/>";
        assertThat(sound(page(circle + "<circle cx='120' cy='80' r='1'/>"), null)
                        .x())
                .containsExactly(10);
        assertThat(sound(
                                page(
                                        "<circle cx='120' cy='80' r='1'/><g transform='translate(100 100)'><g id='zero'/></g>"),
                                null)
                        .y())
                .containsExactly(10);
    }

    @Test
    void whatIsNotDrawnIsNoPixel() {
        String svg =
                page("<defs><circle r='1'/></defs><symbol><circle r='1'/></symbol><clipPath><circle r='1'/></clipPath>"
                        + "<g style='fill: red; display : none'><circle r='1'/></g><circle display='none' r='1'/><circle r='0'/>"
                        + "<x:note xmlns:x='urn:x'><circle r='1'/></x:note><circle cx='2' r='1'/>");
        assertThat(sound(svg, null).x()).containsExactly(1);
    }

    /** W3C SVG 1.1, section 11.5: visibility is inherited, and may be told otherwise inside; 6.4: style goes first. */
    @Test
    void whatIsHiddenIsNoPixel() {
        String svg = page("<g visibility='hidden'><circle cx='2' r='1'/><circle cx='4' r='1' visibility='visible'/></g>"
                + "<circle cx='6' r='1' style='visibility:COLLAPSE'/><circle cx='8' r='1' visibility='inherit'/>"
                + "<circle cx='10' r='1' visibility='hidden' style='visibility: visible !important; fill: red'/>"
                + "<g visibility='hidden'><g display='inline'><circle cx='12' r='1'/></g></g>");
        assertThat(sound(svg, null).x()).containsExactly(2, 4, 5);
    }

    /** What only says where something is may be out of sight. */
    @Test
    void thePathAndTheZeroPointMayBeHidden() {
        String svg = page("<g display='none'><path id='wire' d='M40 0H0'/><circle id='zero' cx='10' cy='0' r='1'/></g>"
                + "<circle cx='20' r='1'/><circle cx='30' r='1'/>");
        assertThat(sound(svg, "wire").x()).containsExactly(10, 5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "text-transform: none",
                "text-transform:uppercase;-x-transform:scale(2)",
                "transform: none",
                "transform-origin: 0px 0px",
                "transform-origin:0"
            })
    void aStyleThatMovesNothingIsPassedOver(String style) {
        String svg = page("<g style='" + style + "'><circle cx='2' r='1'/></g>");
        assertThat(sound(svg, null).x()).containsExactly(1);
    }

    /** Two hundred thousand digits are read once, not once for each of them. */
    @Test
    @Timeout(20)
    void aLengthMayBeAnyText() {
        assertThat(read(page("<circle cx='" + "1".repeat(200_000) + "!'/><circle r='1'/>"), null))
                .isEmpty();
        assertThat(shown()).singleElement().asString().contains("is no length").hasSizeLessThan(300);
    }

    @Test
    void aGroupOfPixelsLeavesOutAllOtherCircles() {
        String svg = page(
                "<circle cx='8' r='9'/><g id='pixels'><circle cx='2' r='1'/><g id='tip'><circle cx='4' r='1'/></g></g>");
        SvgPixels pixels = sound(svg, null);
        assertThat(pixels.x()).containsExactly(1, 2);
        assertThat(pixels.parts()).containsOnlyKeys("tip");
    }

    /** A half circle of radius 100 about (200, 100), from the right over the top to the left, drawn in five ways. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<path id='wire' d='M300 100A100 100 0 0 0 100,100'/>",
                "<path id='wire' d='m300 100a100,100 0 00-100-100 100 100 0 00-100 100'/>",
                "<path id='wire' d='M300 100C300 44.8 255.2 0 200 0S100 44.8 100 100'/>",
                "<path id='wire' d='M300,100 Q300 0 200 0 T100 100z'/>",
                "<path id='wire' d='M300 100V0H200 l-100 0v100'/>",
                "<g transform='translate(0 100)'><polyline id='wire' points='300 0 300 -100 100,-100 100 0'/></g>",
                "<polygon id='wire' points='300 100 200 0 100 100'/>"
            })
    void pixelsAreWiredAlongAPath(String path) {
        List<Integer> scrambled = List.of(3, 0, 5, 1, 4, 2);
        StringBuilder circles = new StringBuilder();
        double[] expected = new double[6];
        for (int k : scrambled) {
            double angle = Math.PI * (k + 0.5) / 6;
            circles.append("<circle r='4' cx='")
                    .append(200 + 98 * Math.cos(angle))
                    .append("' cy='")
                    .append(100 - 98 * Math.sin(angle))
                    .append("'/>");
            expected[k] = (200 + 98 * Math.cos(angle)) / 2;
        }
        assertThat(sound(page(circles + path), "wire").x()).containsExactly(expected, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            <use href='#a'/>                    ~ petal.svg:2:1: error: the use: a copy that only points to what it is a copy of is not read
            <ellipse rx='3' ry='4'/>            ~ petal.svg:2:1: error: the ellipse: an ellipse is not taken for a light; draw a circle
            <svg/>                              ~ petal.svg:2:1: error: the svg: this element is not understood
            <circle cx='5furlongs' r='1'/>      ~ petal.svg:2:1: error: the circle: "5furlongs" is no length; allowed: a number
            <circle cx='50%' r='1'/>            ~ petal.svg:2:1: error: the circle: "50%" is no length
            <g transform='spin(4)'/>            ~ petal.svg:2:1: error: the g: the transform spin with 1 numbers is not understood; allowed: matrix
            <g transform='rotate(4'/>           ~ petal.svg:2:1: error: the g: the transform "rotate(4" cannot be read
            <g transform='scale(one)'/>         ~ petal.svg:2:1: error: the g: "one" cannot be read; a number is needed at "one"
            <g style='transform: scale(2)'/>    ~ petal.svg:2:1: error: the g: a transform in the style is not understood
            <g style='rotate:4deg'/>            ~ petal.svg:2:1: error: the g: a transform in the style is not understood
            <g style='transform-origin: 5px 0'/>~ petal.svg:2:1: error: the g: a transform in the style is not understood
            <g transform-origin='center'/>      ~ petal.svg:2:1: error: the g: a transform in the style is not understood
            <g id='tip*'/>                      ~ petal.svg:2:1: error: the id "tip*" of a group would name a part, and "tip*" holds *
            <g>                                 ~ petal.svg:3: error: the drawing is no sound XML here
            <circle r='1' fill='&house;'/>      ~ petal.svg:2: error: the drawing is no sound XML here
            <path id='wire' d='L 3 4'/>         ~ petal.svg:2:1: error: the path: "L 3 4" cannot be read; a path begins with M
            <path id='wire' d='M 3 4 X 5'/>     ~ petal.svg:2:1: error: the path: "M 3 4 X 5" cannot be read; the command X is not understood
            <path id='wire' d='M 3 4 L 5'/>     ~ petal.svg:2:1: error: the path: "M 3 4 L 5" cannot be read; a number is needed at its end
            <path id='wire'/>                   ~ petal.svg:2:1: error: the path: nothing can be wired along it
            <path id='wirr' d='M0 0'/>          ~ display.json:4:9: error: the drawing has no path with the id "wire"; paths with ids: "wirr"
            """)
    void namesWhatIsNotUnderstood(String element, String expected) {
        assertThat(read(page(element + "<circle r='1'/>"), "wire")).isEmpty();
        assertThat(shown()).isNotEmpty();
        assertThat(shown()).anySatisfy(line -> assertThat(line).startsWith(expected));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            <svg xmlns='http://www.w3.org/2000/svg'/>                    ~ petal.svg:1:42: error: the drawing has no circle; draw one
            <svg xmlns='http://www.w3.org/2000/svg'><g id='pixels'/><circle r='1'/></svg> ~ petal.svg:1:78: error: the group "pixels" has no circle
            <html><circle r='1'/></html>                                 ~ petal.svg:1:1: error: this is no SVG drawing, but "html"
            <svg viewBox='0 0 0 4'><circle r='1'/></svg>                 ~ petal.svg:1:1: error: the drawing's page: the viewBox "0 0 0 4" is no area
            <svg viewBox='0 0 4 4' width='0'><circle r='1'/></svg>       ~ petal.svg:1:1: error: the drawing's page: the drawing has no size
            <svg viewBox='0 0 4 4' preserveAspectRatio='xMinYMin'><circle r='1'/></svg> ~ petal.svg:1:1: error: the drawing's page: preserveAspectRatio
            <svg transform='scale(2)'><circle r='1'/></svg>              ~ petal.svg:1:1: error: the drawing's page: a transform of it is not understood; give it to a group
            {"duskloom": "display/1"}                                    ~ petal.svg:1: error: the drawing is no sound XML here
            """)
    void namesWhatIsWrongWithAFile(String svg, String expected) {
        assertThat(read(svg, null)).isEmpty();
        assertThat(shown()).singleElement().asString().startsWith(expected);
    }

    /** CWE-776 and CWE-611: entities that grow without end, and those that name other files. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE svg [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]><svg><text>&b;</text></svg>",
                "<?xml version='1.0'?>\n<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><svg id='&a;'/>",
                "<!DOCTYPE svg SYSTEM 'http://127.0.0.1:9/a.dtd' [ ]><svg/>"
            })
    void readsNoEntities(String svg) {
        assertThat(read(svg, null)).isEmpty();
        assertThat(shown()).singleElement().asString().contains("the drawing declares entities, which are not read");
    }

    /**
     * The document type of SVG 1.1, which many programs write, names a file in the network; nothing listens on port 9.
     */
    @Test
    void fetchesNoDocumentType() {
        String svg =
                "<?xml version='1.0'?>\n<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://127.0.0.1:9/svg11.dtd'>\n"
                        + page("<circle cx='2' r='1'/>");
        assertThat(sound(svg, null).x()).containsExactly(1);
    }

    @Test
    void standsElementsThatAreVeryDeep() {
        assertThat(read(page("<g>".repeat(5000) + "</g>".repeat(5000)), null)).isEmpty();
        assertThat(shown()).singleElement().asString().contains("more than 200 deep");
    }

    @Test
    void readsManyCircles() {
        List<String> circles = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            circles.add("<circle cx='" + i + "' r='1'/>");
        }
        assertThat(sound(page(String.join("\n", circles)), null).count()).isEqualTo(20_000);
    }

    @Test
    void aDrawingWithoutASizeCountsPx() {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg'><circle cx='10' cy='0' r='1'/></svg>";
        assertThat(read(svg, null).orElseThrow().x()[0]).isCloseTo(10 * MM_PER_PX, within(1e-6));
        assertThat(shown())
                .containsExactly(
                        "petal.svg:1:1: warning: the drawing's page has no size on paper, so that its unit is taken for"
                                + " 1/96 of an inch, 0.26 mm; give the page a size in mm, in the program that drew it; in the file:"
                                + " width=\"200mm\"");
    }

    @ParameterizedTest
    @CsvSource({"200px,false", "200,false", "100%,false", "200mm,true", "20cm,true", "8in,true", "600pt,true"})
    void asksForASizeOnPaperWhereTheWidthIsNone(String width, boolean isOnPaper) {
        read("<svg viewBox='0 0 9 9' width='" + width + "'><circle r='1'/></svg>", null)
                .orElseThrow();
        assertThat(shown().isEmpty()).isEqualTo(isOnPaper);
    }

    /** One cause, one error. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<circle cx='50%' r='1'/>",
                "<ellipse rx='1' ry='1'/>",
                "<path id='wire'/><circle r='1'/>",
                "<path id='wire' d='M 3'/><circle r='1'/>"
            })
    void doesNotMissWhatIsSaidToBeWrong(String element) {
        assertThat(read(page(element), "wire")).isEmpty();
        assertThat(shown()).singleElement().asString().startsWith("petal.svg:2:1: error: the ");
    }

    @Test
    void saysThatAllCirclesAreHidden() {
        assertThat(read(page("<g display='none'><circle r='1'/></g>"), null)).isEmpty();
        assertThat(shown())
                .containsExactly(
                        "petal.svg:4:1: error: the drawing has no circle that is seen; show what is hidden, or draw"
                                + " one for each pixel");
    }
}
