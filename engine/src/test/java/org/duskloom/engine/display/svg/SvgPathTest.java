package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.CubicCurve2D;
import java.awt.geom.Point2D;
import java.awt.geom.QuadCurve2D;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Path data: W3C SVG 1.1 (Second Edition), section 8.3, its grammar in 8.3.9, and its notes on arcs in F.6. */
class SvgPathTest {
    private static final double NEAR = 1e-9;

    /** The points as text, "|" where a new stretch begins. */
    private static String corners(String data) throws TextFormatException {
        StringBuilder text = new StringBuilder();
        for (double[] point : SvgPath.points(data)) {
            text.append(Double.isNaN(point[0]) ? "|" : "%s,%s ".formatted(number(point[0]), number(point[1])));
        }
        return text.toString().strip();
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    /** Those behind the two of "M x y": the points of the one command that follows. */
    private static List<double[]> curve(String data) throws TextFormatException {
        List<double[]> points = SvgPath.points(data);
        return points.subList(2, points.size());
    }

    /** Each pair of data is one path, as 8.3.2 to 8.3.4 say. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "M 10 20 L 30 40; |10,20 30,40",
                "M 10 20 l 30 40; |10,20 40,60",
                "m 10 20 30 40 5 5; |10,20 40,60 45,65",
                "M 10 20 30 40 5 5; |10,20 30,40 5,5",
                "M 0 0 H 5 10 V 7; |0,0 5,0 10,0 10,7",
                "M 1 1 h 5 -2 v 7; |1,1 6,1 4,1 4,8",
                "M 0 0 H 5 V 5 z; |0,0 5,0 5,5 0,0",
                "M 0 0 H 5 V 5 z l 1 1; |0,0 5,0 5,5 0,0 1,1",
                "M 0 0 L 1 1 M 5 5 L 6 6 Z; |0,0 1,1 |5,5 6,6 5,5",
                "M 0 0 L 1 1 m 5 5 l 1 1; |0,0 1,1 |6,6 7,7"
            })
    void straightCommandsMoveAndDraw(String data, String expected) throws TextFormatException {
        assertThat(corners(data)).isEqualTo(expected);
    }

    /** The grammar of 8.3.9: separators may be left out wherever the next number cannot be part of this one. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "M100-200; |100,-200",
                "M0.5.5L-.5-.25; |0.5,0.5 -0.5,-0.25",
                "M 1e1,2E-1; |10,0.2",
                "M+1,+2L 3 , 4; |1,2 3,4",
                "M1,2,3,4; |1,2 3,4"
            })
    void numbersNeedNoBlanks(String data, String expected) throws TextFormatException {
        assertThat(corners(data)).isEqualTo(expected);
    }

    /** The JDK's curve of the same control points, halved again and again: its middle, quarters and so on. */
    @Test
    void cubicCurvesAreThoseOfTheJdk() throws TextFormatException {
        List<double[]> points = curve("M 10 20 C 30 -40 50 70 80 25");
        assertThat(points).hasSize(32);
        CubicCurve2D whole = new CubicCurve2D.Double(10, 20, 30, -40, 50, 70, 80, 25);
        for (int i = 1; i <= 32; i++) {
            Point2D expected = onCurve(whole, i / 32.0, 6);
            assertThat(points.get(i - 1))
                    .containsExactly(new double[] {expected.getX(), expected.getY()}, within(NEAR));
        }
    }

    /** By halving: the share in steps of 1/32 is met after five of them. */
    private static Point2D onCurve(CubicCurve2D curve, double share, int halvings) {
        if (share == 0 || halvings == 0) {
            return curve.getP1();
        }
        if (share == 1) {
            return curve.getP2();
        }
        CubicCurve2D left = new CubicCurve2D.Double();
        CubicCurve2D right = new CubicCurve2D.Double();
        curve.subdivide(left, right);
        return share < 0.5 ? onCurve(left, 2 * share, halvings - 1) : onCurve(right, 2 * share - 1, halvings - 1);
    }

    @Test
    void quadraticCurvesAreThoseOfTheJdk() throws TextFormatException {
        List<double[]> points = curve("M 10 20 Q 30 -40 80 25");
        QuadCurve2D left = new QuadCurve2D.Double();
        QuadCurve2D right = new QuadCurve2D.Double();
        new QuadCurve2D.Double(10, 20, 30, -40, 80, 25).subdivide(left, right);
        assertThat(points.get(15)).containsExactly(new double[] {left.getX2(), left.getY2()}, within(NEAR));
        left.subdivide(null, right);
        assertThat(points.get(7)).containsExactly(new double[] {right.getX1(), right.getY1()}, within(NEAR));
        assertThat(points.get(31)).containsExactly(new double[] {80, 25}, within(NEAR));
    }

    /** 8.3.6 and 8.3.7: the control point is that of the curve before, mirrored; else where the pen is. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "M 0 0 C 1 2 3 4 5 5 S 8 7 9 5; M 0 0 C 1 2 3 4 5 5 C 7 6 8 7 9 5",
                "M 0 0 C 1 2 3 4 5 5 S 8 7 9 5 S 1 1 2 2; M 0 0 C 1 2 3 4 5 5 C 7 6 8 7 9 5 C 10 3 1 1 2 2",
                "M 5 5 S 8 7 9 5; M 5 5 C 5 5 8 7 9 5",
                "M 5 5 L 6 6 s 8 7 9 5; M 5 5 L 6 6 C 6 6 14 13 15 11",
                "M 0 0 Q 2 4 5 5 T 9 5; M 0 0 Q 2 4 5 5 Q 8 6 9 5",
                "M 0 0 Q 2 4 5 5 T 9 5 T 1 1; M 0 0 Q 2 4 5 5 Q 8 6 9 5 Q 10 4 1 1",
                "M 5 5 T 9 5; M 5 5 Q 5 5 9 5",
                "M 0 0 C 1 2 3 4 5 5 T 9 5; M 0 0 C 1 2 3 4 5 5 Q 5 5 9 5",
                "M 1 1 c 1 2 3 4 5 5; M 1 1 C 2 3 4 5 6 6",
                "M 1 1 q 1 2 5 5; M 1 1 Q 2 3 6 6"
            })
    void shorthandsAreWrittenOut(String shorthand, String writtenOut) throws TextFormatException {
        assertThat(corners(shorthand)).isEqualTo(corners(writtenOut));
    }

    /**
     * The four arcs of the picture in 8.3.8, here of a circle of radius 5 through (0, 0) and (6, 0): its middle is 4
     * below or above. With y down, sweep is clockwise as it is seen.
     */
    @ParameterizedTest
    @CsvSource({"0, 0, -4, 1", "0, 1, 4, -1", "1, 0, 4, 9", "1, 1, -4, -9"})
    void flagsChooseOneOfFourArcs(int large, int sweep, double middle, double summit) throws TextFormatException {
        List<double[]> points = curve("M 0 0 A 5 5 0 " + large + " " + sweep + " 6 0");
        assertThat(points).hasSize(32);
        for (double[] point : points) {
            assertThat(Math.hypot(point[0] - 3, point[1] - middle)).isCloseTo(5, within(NEAR));
        }
        assertThat(points.get(15)).containsExactly(new double[] {3, summit}, within(NEAR));
        assertThat(points.get(31)).containsExactly(6, 0);
    }

    /** Half an ellipse of 4 by 2, turned by 90 degrees: its long half-axis points down. */
    @Test
    void ellipsesAreTurned() throws TextFormatException {
        List<double[]> points = curve("M 0 -4 A 4 2 90 0 1 0 4");
        for (double[] point : points) {
            assertThat(point[0] * point[0] / 4 + point[1] * point[1] / 16).isCloseTo(1, within(NEAR));
        }
        assertThat(points.get(15)).containsExactly(new double[] {2, 0}, within(NEAR));
    }

    /** F.6.2 and F.6.6: no radius is a line, a negative one its size, and one too small grows until it reaches. */
    @Test
    void radiiOutOfRangeAreMended() throws TextFormatException {
        assertThat(corners("M 0 0 A 0 5 0 0 1 6 0")).isEqualTo("|0,0 6,0");
        assertThat(corners("M 0 0 A 5 0 0 0 1 6 0")).isEqualTo("|0,0 6,0");
        assertThat(corners("M 2 2 A 5 5 0 0 1 2 2")).isEqualTo("|2,2 2,2");
        assertThat(corners("M 0 0 A -5 5 0 0 1 6 0")).isEqualTo(corners("M 0 0 A 5 5 0 0 1 6 0"));
        for (double[] point : curve("M 0 0 A 1 1 0 0 1 6 0")) {
            assertThat(Math.hypot(point[0] - 3, point[1])).isCloseTo(3, within(NEAR));
        }
    }

    /** 8.3.9: a flag is one digit, so nothing need stand behind it. */
    @Test
    void flagsAreSingleDigits() throws TextFormatException {
        assertThat(corners("M0 0a5 5 0 016 0")).isEqualTo(corners("M 0 0 A 5 5 0 0 1 6 0"));
        assertThatThrownBy(() -> SvgPath.points("M 0 0 A 5 5 0 2 1 6 0")).isInstanceOf(TextFormatException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "L 1 1",
                "5 5",
                "M 1",
                "M 1 1 L",
                "M 1 1 X 2",
                "M 1 1 Z 3 3",
                "M 1 1 C 1 2 3 4 5",
                "M a b",
                "M 1 1 é"
            })
    void whatIsNoPathIsRefused(String data) {
        assertThatThrownBy(() -> SvgPath.points(data)).isInstanceOf(TextFormatException.class);
    }

    @Test
    void nothingIsNoPoint() throws TextFormatException {
        assertThat(SvgPath.points("")).isEmpty();
        assertThat(SvgPath.points(" \n ")).isEmpty();
    }

    /** 6,300 curves of 32 pieces are more points than are taken, and told so in time. */
    @Test
    void endlessPathsAreRefused() {
        List<String> curves = new ArrayList<>(List.of("M 0 0"));
        for (int i = 0; i < 6300; i++) {
            curves.add("q 1 1 2 2");
        }
        String data = String.join(" ", curves);
        assertThatThrownBy(() -> SvgPath.points(data))
                .isInstanceOf(TextFormatException.class)
                .hasMessage("the path has too many points");
    }
}
