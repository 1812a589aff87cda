package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Point2D;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Elliptical arcs: W3C SVG 1.1 (Second Edition), appendix F.6. */
class SvgArcTest {
    private static final int COUNT = 16;

    private static void assertPoints(double[] actual, double[] expected, double near) {
        assertThat(actual).containsExactly(expected, within(near));
    }

    private static double[] reversed(double[] points) {
        double[] back = new double[points.length];
        for (int i = 0; i < points.length; i += 2) {
            back[points.length - 2 - i] = points[i];
            back[points.length - 1 - i] = points[i + 1];
        }
        return back;
    }

    /** The place at an angle of an ellipse: equation F.6.3.1. */
    private static double[] onEllipse(double[] ellipse, double angle) {
        double turn = StrictMath.toRadians(ellipse[4]);
        double x = ellipse[2] * StrictMath.cos(angle);
        double y = ellipse[3] * StrictMath.sin(angle);
        return new double[] {
            StrictMath.cos(turn) * x - StrictMath.sin(turn) * y + ellipse[0],
            StrictMath.sin(turn) * x + StrictMath.cos(turn) * y + ellipse[1]
        };
    }

    /** From centre, radii and angles to the ends and flags by F.6.4, and back to the places of F.6.3.1. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void comesBackFromTheCentreParametrization(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            double[] ellipse = {
                random.nextDouble() * 400 - 200,
                random.nextDouble() * 400 - 200,
                1 + random.nextDouble() * 90,
                1 + random.nextDouble() * 90,
                random.nextDouble() * 720 - 360
            };
            double from = random.nextDouble() * 6 - 3;
            double way = (0.2 + random.nextDouble() * 5.8) * (random.nextBoolean() ? 1 : -1);
            double[] start = onEllipse(ellipse, from);
            double[] end = onEllipse(ellipse, from + way);
            double[] arc = {start[0], start[1], ellipse[2], ellipse[3], ellipse[4], end[0], end[1]};
            double[] pieces = SvgArc.pieces(arc, Math.abs(way) > Math.PI, way > 0, COUNT);
            assertThat(pieces).hasSize(2 * (COUNT - 1));
            for (int i = 1; i < COUNT; i++) {
                double[] expected = onEllipse(ellipse, from + way * i / COUNT);
                assertThat(pieces[2 * i - 2]).isCloseTo(expected[0], within(1e-4));
                assertThat(pieces[2 * i - 1]).isCloseTo(expected[1], within(1e-4));
            }
        }
    }

    /** The JDK's own arcs, turned by its own transforms; its angles grow the other way on the screen. */
    @ParameterizedTest
    @CsvSource({"30, 20, 0, 10, 80", "30, 20, 25, 10, 80", "7, 40, -60, 200, 150", "12, 12, 0, 0, 90"})
    void areThoseOfTheJdk(double radiusX, double radiusY, double turn, double from, double extent) {
        AffineTransform turned = AffineTransform.getRotateInstance(Math.toRadians(turn));
        Point2D[] expected = new Point2D[COUNT + 1];
        for (int i = 0; i <= COUNT; i++) {
            Arc2D piece = new Arc2D.Double(
                    -radiusX, -radiusY, 2 * radiusX, 2 * radiusY, from, extent * i / COUNT, Arc2D.OPEN);
            expected[i] = turned.transform(piece.getEndPoint(), null);
        }
        Point2D end = expected[COUNT];
        double[] arc = {expected[0].getX(), expected[0].getY(), radiusX, radiusY, turn, end.getX(), end.getY()};
        double[] pieces = SvgArc.pieces(arc, false, false, COUNT);
        for (int i = 1; i < COUNT; i++) {
            assertThat(pieces[2 * i - 2]).isCloseTo(expected[i].getX(), within(1e-9));
            assertThat(pieces[2 * i - 1]).isCloseTo(expected[i].getY(), within(1e-9));
        }
    }

    /** Backwards over the same arc: the ends change places, and the sweep is the other one. */
    @ParameterizedTest
    @CsvSource({"false, false", "false, true", "true, false", "true, true"})
    void runTheSameWayBack(boolean large, boolean sweep) {
        double[] there = SvgArc.pieces(new double[] {1, 2, 30, 20, 35, 25, -6}, large, sweep, COUNT);
        double[] back = SvgArc.pieces(new double[] {25, -6, 30, 20, 35, 1, 2}, large, !sweep, COUNT);
        assertPoints(reversed(back), there, 1e-9);
    }

    /** The two arcs of one size are each other's mirror in the middle between the ends (F.6.4, picture). */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theOtherSweepIsItsMirror(boolean large) {
        double[] arc = {-8, 3, 30, 20, 35, 8, -3};
        double[] clockwise = SvgArc.pieces(arc, large, true, COUNT);
        double[] counter = SvgArc.pieces(arc, large, false, COUNT);
        for (int i = 0; i < clockwise.length; i++) {
            assertThat(counter[i]).isCloseTo(-reversed(clockwise)[i], within(1e-9));
        }
    }

    /** A circle looks the same whichever way it is turned, an ellipse after half a turn. */
    @Test
    void turnsThatChangeNothing() {
        double[] circle = SvgArc.pieces(new double[] {0, 0, 9, 9, 0, 10, 4}, true, true, COUNT);
        for (double turn : new double[] {17, 90, -250, 720}) {
            assertPoints(SvgArc.pieces(new double[] {0, 0, 9, 9, turn, 10, 4}, true, true, COUNT), circle, 1e-9);
        }
        double[] ellipse = SvgArc.pieces(new double[] {0, 0, 9, 7, 40, 10, 4}, false, true, COUNT);
        assertPoints(SvgArc.pieces(new double[] {0, 0, 9, 7, 220, 10, 4}, false, true, COUNT), ellipse, 1e-9);
        assertPoints(SvgArc.pieces(new double[] {0, 0, 7, 9, 130, 10, 4}, false, true, COUNT), ellipse, 1e-9);
    }

    /**
     * F.6.6, step 3: radii too small grow alike until the ends are a diameter apart. Between (0, 0) and (12, 0) those
     * of 2 and 1 become 6 and 3, so the half ellipse is 3 high in its middle, to either side.
     */
    @ParameterizedTest
    @CsvSource({"false, true, -3", "true, true, -3", "false, false, 3", "true, false, 3"})
    void radiiTooSmallGrowAlike(boolean large, boolean sweep, double summit) {
        double[] pieces = SvgArc.pieces(new double[] {0, 0, 2, 1, 0, 12, 0}, large, sweep, COUNT);
        assertThat(pieces[COUNT - 2]).isCloseTo(6, within(1e-9));
        assertThat(pieces[COUNT - 1]).isCloseTo(summit, within(1e-9));
        for (int i = 0; i < pieces.length; i += 2) {
            double x = (pieces[i] - 6) / 6;
            double y = pieces[i + 1] / 3;
            assertThat(x * x + y * y).isCloseTo(1, within(1e-9));
        }
    }

    /** A radius a million times the chord: nearly straight, and never not a number. */
    @Test
    void hugeRadiiAreNearlyStraight() {
        double[] pieces = SvgArc.pieces(new double[] {0, 0, 1e6, 1e6, 0, 1, 0}, false, true, COUNT);
        for (int i = 1; i < COUNT; i++) {
            assertThat(pieces[2 * i - 2]).isCloseTo((double) i / COUNT, within(1e-3));
            assertThat(pieces[2 * i - 1]).isCloseTo(0, within(1e-6));
        }
    }

    @Test
    void onePieceHasNoPointBetween() {
        assertThat(SvgArc.pieces(new double[] {0, 0, 5, 5, 0, 6, 0}, false, true, 1))
                .isEmpty();
    }
}
