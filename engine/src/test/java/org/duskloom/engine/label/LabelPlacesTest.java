package org.duskloom.engine.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where labels beside pixels stand, worked out on paper. */
class LabelPlacesTest {
    private static PixelField field(double... xy) {
        double[] x = new double[xy.length / 2];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = xy[2 * i];
            y[i] = xy[2 * i + 1];
        }
        return new PixelField(x, y);
    }

    private static double turnsOf(Area area) {
        return StrictMath.atan2(area.centreY(), area.centreX()) / (2 * Math.PI);
    }

    /**
     * Sixteen directions, first the one that is wished, then by turns on its right and on its left; at the wished
     * distance, at 1.4 times and at twice that; then there is no place. A label of 1 by 1 leaves its neighbours their
     * places at 20.
     */
    @Test
    void triesDirectionsNearTheWishedOneFirst() {
        PixelField field = field(5000, 5000, 0, 0);
        LabelFinder finder = new LabelFinder(field, 2, 4);
        LabelWish wish = new LabelWish(Span.of(1), 1, 1, 20, 0.1);
        for (double distance : new double[] {20, 28, 40}) {
            for (int step : new int[] {0, -1, 1, -2, 2, -3, 3, -4, 4, -5, 5, -6, 6, -7, 7, -8}) {
                Area area = finder.beside(wish).orElseThrow().area();
                assertThat(area.distanceTo(0, 0)).isCloseTo(distance, within(1e-6));
                double turns = turnsOf(area) - 0.1 - step / 16.0;
                assertThat(turns - Math.rint(turns)).isCloseTo(0, within(1e-9));
            }
        }
        assertThat(finder.beside(wish)).isEmpty();
    }

    /** Farther than eight times pixel and letters together nobody sees what is named: 8 (2 + 4) = 48. */
    @ParameterizedTest
    @CsvSource({"47.9, true", "48.1, false"})
    void isNotFarAway(double clear, boolean found) {
        LabelWish wish = new LabelWish(Span.of(0), 1, 1, clear, 0);
        assertThat(new LabelFinder(field(0, 0), 2, 4).beside(wish).isPresent()).isEqualTo(found);
    }

    /**
     * The ring of a prop and a far pixel: the name slides out until it just leaves the last of its own pixels behind.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.02, 0.11, 0.2, 0.25, 0.27, 0.4, 0.49, 0.5, 0.6, 0.75, 0.77, 0.9})
    void aNameSlidesPastAllOfItsPixels(double turns) {
        double[] xy = new double[42];
        for (int i = 0; i < 20; i++) {
            xy[2 * i] = 50 + 30 * StrictMath.cos(i * Math.PI / 10);
            xy[2 * i + 1] = -20 + 12 * StrictMath.sin(i * Math.PI / 10);
        }
        xy[40] = 5000;
        PixelField field = field(xy);
        LabelWish wish = new LabelWish(new Span(0, 20), 9, 2, 3, turns);
        Area area = new LabelFinder(field, 1, 2).beside(wish).orElseThrow().area();
        double outX = area.centreX() - 50;
        double outY = area.centreY() + 20;
        double way = Math.hypot(outX, outY);
        assertThat(outX).isCloseTo(way * StrictMath.cos(2 * Math.PI * turns), within(1e-6));
        assertThat(outY).isCloseTo(way * StrictMath.sin(2 * Math.PI * turns), within(1e-6));
        // A pixel is left behind where it is the margin away from the label along x or along y.
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 20; i++) {
            double gapX = Math.abs(field.x(i) - area.centreX()) - 4.5;
            double gapY = Math.abs(field.y(i) - area.centreY()) - 1;
            least = Math.min(least, Math.max(gapX, gapY));
        }
        assertThat(least).isCloseTo(3, within(1e-6));
    }

    /** Two pixels above each other: straight to the right where they are near, between them where there is room. */
    @ParameterizedTest
    @CsvSource({
        "3,   0,    3,    0.5",
        "7.9, 0,    3,    2.95",
        "20,  0,    -4,   9",
        "3,   0.5,  -11,  0.5",
        "3,   0.25, -4,   6",
        "3,   0.75, -4,   -5"
    })
    void standsStraightBesideTwo(double apart, double turns, double left, double bottom) {
        LabelWish wish = new LabelWish(new Span(0, 2), 8, 2, 3, turns);
        Area area = new LabelFinder(field(0, 0, 0, apart), 1, 2)
                .beside(wish)
                .orElseThrow()
                .area();
        assertThat(area.left()).isCloseTo(left, within(1e-6));
        assertThat(area.bottom()).isCloseTo(bottom, within(1e-6));
    }

    /** At 3 from its own, another pixel must be 3 / 0.87 = 3.45 away: so far, one tells at a glance whose it is. */
    @ParameterizedTest
    @CsvSource({"3.4, false", "3.5, true"})
    void isClearlyNearerToItsOwn(double other, boolean stays) {
        PixelField field = field(0, 0, 0, 3 + 2 + other, 0, -100);
        Area area = new LabelFinder(field, 1, 1)
                .beside(new LabelWish(Span.of(0), 2, 2, 3, 0.25))
                .orElseThrow()
                .area();
        assertThat(Math.abs(area.centreX()) < 1e-6 && area.centreY() > 0).isEqualTo(stays);
    }

    /**
     * A wide number begins beside its own pixel, 3 away, but its middle lies under another, 6 away: it would be read as
     * that.
     */
    @Test
    void theMiddleOfANumberIsNearestToItsOwnToo() {
        PixelField field = field(11, 6, 0, 0);
        LabelWish wish = new LabelWish(Span.of(1), 16, 2, 3, 0);
        Area area = new LabelFinder(field, 1, 2).beside(wish).orElseThrow().area();
        assertThat(Math.hypot(area.centreX() - 11, area.centreY() - 6))
                .isGreaterThan(Math.hypot(area.centreX(), area.centreY()));
    }

    /** The name of a prop may be as long as it likes. */
    @Test
    void theMiddleOfANameNeedNot() {
        PixelField field = field(0, 0, 0, 0.5, 11, 6.25);
        LabelWish wish = new LabelWish(new Span(0, 2), 16, 2, 3, 0);
        Area area = new LabelFinder(field, 1, 2).beside(wish).orElseThrow().area();
        assertThat(area.left()).isCloseTo(3, within(1e-6));
        assertThat(area.centreY()).isCloseTo(0.25, within(1e-6));
    }

    /** A line through the wished place, which lies at a share of the line; or that ends before it, or passes beside. */
    @ParameterizedTest
    @CsvSource({
        "0,    30, 20,  false",
        "0.25, 30, 20,  false",
        "0.5,  30, 20,  false",
        "0.75, -3, 50,  false",
        "1,    30, 20,  false",
        "1,    -7, -40, false",
        "0.5,  0,  60,  false",
        "0.03, 0,  60,  false",
        "-0.1, 30, 20,  true",
        "1.1,  30, 20,  true",
        "-0.1, 0, -60,  true",
        "1.1,  0, -60,  true"
    })
    void standsOnNoLine(double share, double alongX, double alongY, boolean stays) {
        LabelFinder finder = new LabelFinder(field(0, 0), 1, 1);
        double fromX = 10.5 - share * alongX;
        double fromY = -share * alongY;
        finder.takeLine(fromX, fromY, fromX + alongX, fromY + alongY);
        Area area = finder.beside(new LabelWish(Span.of(0), 1, 1, 10, 0))
                .orElseThrow()
                .area();
        assertThat(area.distanceTo(10.5, 0) < 0.1).isEqualTo(stays);
    }

    /** What is taken is left free, and nothing beside it. */
    @Test
    void standsBesideWhatIsTaken() {
        for (double gap : new double[] {0.01, -0.01}) {
            LabelFinder finder = new LabelFinder(field(0, 0), 1, 1);
            finder.take(new Area(11 + gap, -3, 15, 3));
            Optional<LabelPlace> place = finder.beside(new LabelWish(Span.of(0), 1, 1, 10, 0));
            assertThat(Math.abs(place.orElseThrow().area().centreY()) < 1e-6).isEqualTo(gap > 0);
        }
    }

    /**
     * Small letters slip through nowhere: a line as long as you like, one shorter than a letter, level, upright and at
     * a slant, far from the zero point and across it, from its first point to its last.
     */
    @ParameterizedTest
    @CsvSource({"-30, 10, 30, 10", "5, -30, 5, 30", "0, 0, 0.2, 0", "100, 100, 130, 140", "-3, -2, 3, 2", "7, 7, 7, 7"})
    void noLabelSlipsThroughALine(double fromX, double fromY, double toX, double toY) {
        double size = 0.4;
        double length = Math.hypot(toX - fromX, toY - fromY);
        for (int i = 0; i <= 400; i++) {
            double x = fromX + (toX - fromX) * i / 400;
            double y = fromY + (toY - fromY) * i / 400;
            LabelFinder finder = new LabelFinder(field(x, y - 3 * size), 0.1, size);
            finder.takeLine(fromX, fromY, toX, toY);
            Area area = finder.beside(new LabelWish(Span.of(0), size, size, 2.5 * size, 0.25))
                    .orElseThrow()
                    .area();
            for (int k = 0; k <= 10 * length; k++) {
                double share = length == 0 ? 0 : Math.min(1, k / (10 * length));
                double lineX = fromX + (toX - fromX) * share;
                double lineY = fromY + (toY - fromY) * share;
                assertThat(area.distanceTo(lineX, lineY))
                        .as("%s from %s, %s", area, lineX, lineY)
                        .isPositive();
            }
        }
    }
}
