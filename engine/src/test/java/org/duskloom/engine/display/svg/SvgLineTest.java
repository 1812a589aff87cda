package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamReader;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.TextFormatException;
import org.joml.Matrix3x2d;
import org.joml.Vector2d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgLineTest {
    private static SvgLine line(String element, Matrix3x2d matrix) throws Exception {
        XMLStreamReader xml = XMLInputFactory.newFactory().createXMLStreamReader(new StringReader(element));
        xml.nextTag();
        return SvgLine.of(xml, xml.getLocalName(), matrix);
    }

    private static SvgLine line(String element) throws Exception {
        return line(element, new Matrix3x2d());
    }

    private static SvgCircle circle(String name, double x, double y) {
        return new SvgCircle(x, y, Location.ofFile("daisy.svg"), name, true);
    }

    /** Circles a, b, c ... at places such as "5,5 10,0", in that order. */
    private static List<SvgCircle> circles(String places) {
        List<SvgCircle> circles = new ArrayList<>();
        for (String place : places.split(" ")) {
            String[] xy = place.split(",");
            String name = String.valueOf((char) ('a' + circles.size()));
            circles.add(circle(name, Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
        }
        return circles;
    }

    private static String names(List<SvgCircle> circles) {
        return circles.stream().map(SvgCircle::part).collect(Collectors.joining());
    }

    /** Worked by hand: how far along the line the point nearest to each circle is. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            <line x1='0' y1='0' x2='100' y2='0'/>           ; 90,5 10,-5 50,0        ; bca
            <line x1='100' y1='0' x2='0' y2='0'/>           ; 90,5 10,-5 50,0        ; acb
            <polyline points='0,0 100,0 100,100 0,100'/>    ; 5,99 5,1 99,50         ; bca
            <polygon points='0,0 100,0 100,100 0,100'/>     ; 1,50 99,50 50,1        ; cba
            <polyline points='0,0 100,0 100,100 0,100'/>    ; 1,30 99,50 50,1        ; acb
            <path d='M 0 0 H 100 M 100 50 H 0'/>            ; 10,49 90,49 90,1 10,1  ; dcba
            <path d='M 0 0 L 10 0 M 100 0 L 110 0'/>        ; 40,0 10,0 5,0 104,0 100,0 ; cabed
            <line x1='0' y1='0' x2='10' y2='0'/>            ; 50,0 10,0 -5,0 0,0     ; cdab
            <polyline points='7,7 7,7 7,7'/>                ; 3,3 2,2 1,1            ; abc
            """)
    void putsCirclesInTheOrderOfTheLine(String element, String places, String expected) throws Exception {
        assertThat(names(line(element).inOrder(circles(places)))).isEqualTo(expected);
    }

    /** A path that crosses itself: where both pieces are as near, the first one counts. */
    @Test
    void theFirstOfTwoPiecesCounts() throws Exception {
        SvgLine line = line("<polyline points='0,0 100,0 100,50 50,50 50,-50'/>");
        assertThat(names(line.inOrder(circles("60,0 50,0 40,0")))).isEqualTo("cba");
    }

    /** Against the JDK's distance to a piece; the way along the piece follows by Pythagoras. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void agreesWithTheDistancesOfTheJdk(long seed) throws Exception {
        Random random = new Random(seed);
        List<Point2D> corners = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            corners.add(new Point2D.Double(random.nextInt(1000), random.nextInt(1000)));
        }
        String points = corners.stream()
                .map(corner -> corner.getX() + "," + corner.getY())
                .collect(Collectors.joining(" "));
        List<SvgCircle> circles = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            circles.add(circle("c" + i, random.nextDouble() * 1000, random.nextDouble() * 1000));
        }
        List<SvgCircle> expected = new ArrayList<>(circles);
        expected.sort(Comparator.comparingDouble(circle -> along(corners, circle)));
        // To a nanometre: at a corner two circles are at one length, up to rounding.
        assertThat(line("<polyline points='" + points + "'/>").inOrder(circles))
                .extracting(circle -> Math.rint(along(corners, circle) * 1e6))
                .isEqualTo(expected.stream()
                        .map(circle -> Math.rint(along(corners, circle) * 1e6))
                        .toList());
    }

    private static double along(List<Point2D> corners, SvgCircle circle) {
        double nearest = Double.POSITIVE_INFINITY;
        double found = 0;
        double before = 0;
        for (int i = 1; i < corners.size(); i++) {
            Line2D piece = new Line2D.Double(corners.get(i - 1), corners.get(i));
            double distance = piece.ptSegDist(circle.x(), circle.y());
            double length = piece.getP1().distance(piece.getP2());
            if (distance < nearest - 1e-9) {
                nearest = distance;
                double offLine = piece.ptLineDist(circle.x(), circle.y());
                double fromStart = piece.getP1().distance(circle.x(), circle.y());
                double fromEnd = piece.getP2().distance(circle.x(), circle.y());
                double way = Math.sqrt(Math.max(0, fromStart * fromStart - offLine * offLine));
                boolean behind = fromEnd * fromEnd > length * length + fromStart * fromStart;
                found = before + (behind ? 0 : Math.min(length, way));
            }
            before += length;
        }
        return found;
    }

    /** Whoever draws the circles in another order, or moves, turns and enlarges the drawing, wires the same. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void neitherTheOrderDrawnNorThePlaceOnThePageMatters(long seed) throws Exception {
        Random random = new Random(seed);
        String element = "<path d='M 0 0 C 80 0 80 90 0 90 S -70 200 40 240'/>";
        List<SvgCircle> drawn = circles("3,1 40,20 58,40 45,75 10,92 -20,130 -15,190 30,236");
        String expected = names(line(element).inOrder(drawn));
        assertThat(expected).isEqualTo("abcdefgh");
        Matrix3x2d matrix = new Matrix3x2d()
                .translate(random.nextInt(900), random.nextInt(900))
                .rotate(random.nextDouble() * 6)
                .scale(0.2 + random.nextDouble() * 4);
        List<SvgCircle> moved = new ArrayList<>();
        for (SvgCircle circle : drawn) {
            Vector2d place = matrix.transformPosition(new Vector2d(circle.x(), circle.y()));
            moved.add(circle(circle.part(), place.x, place.y));
        }
        Collections.shuffle(moved, random);
        assertThat(names(line(element, matrix).inOrder(moved))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            <line/>                                  ; 2
            <polyline points='0 0 1 0 1 1'/>         ; 3
            <polygon points='0 0 1 0 1 1'/>          ; 4
            <polyline points='0 0 1 0 1'/>           ; 2
            <path d='M 0 0 L 1 1 M 2 2 Z'/>          ; 4
            <path d='M 0 0 Q 1 1 2 0'/>              ; 33
            """)
    void hasThePointsThatAreWritten(String element, int points) throws Exception {
        assertThat(line(element).size()).isEqualTo(points);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<path/>", "<path d=''/>", "<polyline/>", "<polygon points=' '/>", "<polyline points='3'/>"})
    void aLineWithoutPointsLeadsNowhere(String element) {
        assertThatThrownBy(() -> line(element))
                .isInstanceOf(TextFormatException.class)
                .hasMessage("nothing can be wired along it: it has no points");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<polyline points='0,0 a,1'/>", "<polygon points='0,,0'/>", "<line x1='1e999'/>"})
    void whatIsNoNumberIsRefused(String element) {
        assertThatThrownBy(() -> line(element)).isInstanceOf(TextFormatException.class);
    }
}
