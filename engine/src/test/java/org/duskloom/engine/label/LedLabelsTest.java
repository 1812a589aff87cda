package org.duskloom.engine.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels away from what they name, and the lines that lead to it. */
class LedLabelsTest {
    private static final double RADIUS = 2;
    private static final double LETTERS = 2;

    private static PixelField field(List<double[]> places) {
        return new PixelField(
                places.stream().mapToDouble(place -> place[0]).toArray(),
                places.stream().mapToDouble(place -> place[1]).toArray());
    }

    private static List<double[]> one() {
        return new ArrayList<>(List.of(new double[] {0, 0}));
    }

    /**
     * A leader of less than half a letter is not seen: from 2.2 the reach grows by a fifth at a time until there are
     * 0.4 between label and line, half a letter of line, and the rim of the pixel, 2: 2.2 x 1.2^3 = 3.8016.
     */
    @Test
    void aLeaderIsLongEnoughToBeSeen() {
        LabelPlace place = new LabelFinder(field(one()), RADIUS, LETTERS)
                .led(new LabelWish(Span.of(0), 8, 2, 2.2, 0))
                .orElseThrow();
        assertThat(place.area().left()).isCloseTo(3.8016, within(1e-9));
        assertThat(place.area().centreY()).isCloseTo(0, within(1e-9));
        LabelPlace.Leader leader = place.leader().orElseThrow();
        assertThat(leader.fromX()).isCloseTo(3.4016, within(1e-9));
        assertThat(leader.toX()).isCloseTo(2, within(1e-9));
        assertThat(leader.fromY()).isCloseTo(0, within(1e-9));
        assertThat(leader.toY()).isCloseTo(0, within(1e-9));
    }

    /** Half a letter is enough: 0.2 letters free, half a letter of line, and the rim, 0.4 + 1 + 2 = 3.4. */
    @ParameterizedTest
    @CsvSource({"3.41, 3.41", "3.39, 4.068"})
    void halfALetterIsSeen(double clear, double reach) {
        LabelPlace place = new LabelFinder(field(one()), RADIUS, LETTERS)
                .led(new LabelWish(Span.of(0), 8, 2, clear, 0))
                .orElseThrow();
        assertThat(place.area().left()).isCloseTo(reach, within(1e-9));
    }

    /** On an ellipse round the box of its pixels, whose half sides are those of both and the reach. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.25, 0.4, 0.7, 0.8})
    void goesRoundTheBoxOfItsPixels(double turns) {
        List<double[]> places = List.of(
                new double[] {10, 35},
                new double[] {40, 50},
                new double[] {70, 35},
                new double[] {40, 20},
                new double[] {2000, 0});
        LabelPlace place = new LabelFinder(field(places), RADIUS, LETTERS)
                .led(new LabelWish(new Span(0, 4), 8, 2, 5, turns))
                .orElseThrow();
        assertThat(place.area().centreX())
                .isCloseTo(40 + (30 + 5 + 4) * StrictMath.cos(2 * Math.PI * turns), within(1e-9));
        assertThat(place.area().centreY())
                .isCloseTo(35 + (15 + 5 + 1) * StrictMath.sin(2 * Math.PI * turns), within(1e-9));
        LabelPlace.Leader leader = place.leader().orElseThrow();
        double[] nearest = places.stream()
                .min(Comparator.comparingDouble(pixel -> place.area().distanceTo(pixel[0], pixel[1])))
                .orElseThrow();
        assertThat(Math.hypot(leader.toX() - nearest[0], leader.toY() - nearest[1]))
                .isCloseTo(RADIUS, within(1e-9));
        assertThat(place.area().distanceTo(leader.fromX(), leader.fromY())).isCloseTo(0.2 * LETTERS, within(1e-9));
    }

    /** Ten degrees at a time, on the right first and then on the left, as far as the wished place is taken. */
    @Test
    void turnsAsideByTenDegrees() {
        for (int taken = 1; taken <= 3; taken++) {
            LabelFinder finder = new LabelFinder(field(one()), RADIUS, LETTERS);
            int[] steps = {0, -1, 1, -2};
            for (int k = 0; k < taken; k++) {
                double angle = 2 * Math.PI * steps[k] / 36;
                finder.take(Area.round(20.5 * StrictMath.cos(angle), 20.5 * StrictMath.sin(angle), 0.1));
            }
            Area area = finder.led(new LabelWish(Span.of(0), 1, 1, 20, 0))
                    .orElseThrow()
                    .area();
            assertThat(StrictMath.atan2(area.centreY(), area.centreX()))
                    .isCloseTo(2 * Math.PI * steps[taken] / 36, within(1e-9));
        }
    }

    /**
     * The search ends at the sides of the picture and forty times margin and letters: 60 + 30 + 40 (2 + 2) = 250. The
     * last reach before that is 2 x 1.2^26 = 228.95, the one before it 190.79.
     */
    @ParameterizedTest
    @CsvSource({"150, 158.993694", "200, 228.950919", "240, -1"})
    void searchesFarButNotForEver(double taken, double reach) {
        List<double[]> places = List.of(new double[] {0, 0}, new double[] {60, 30});
        LabelFinder finder = new LabelFinder(field(places), RADIUS, LETTERS);
        finder.take(new Area(-taken - 30, -taken - 30, 60 + taken, 60 + taken));
        LabelWish wish = new LabelWish(new Span(0, 2), 1, 1, 2, 0);
        if (reach < 0) {
            assertThat(finder.led(wish)).isEmpty();
        } else {
            double wanted = reach < taken ? reach * 1.2 : reach;
            assertThat(finder.led(wish).orElseThrow().area().left()).isCloseTo(60 + wanted, within(1e-4));
        }
    }

    /** A stamp too small to see on the straight way, wherever: the leader goes another way. */
    @ParameterizedTest
    @ValueSource(doubles = {2.05, 2.6, 4, 6.3, 9.7, 11.5})
    void aLeaderLiesOverNothingThatIsTaken(double stamp) {
        for (double side : new double[] {-0.2, 0, 0.2}) {
            LabelFinder finder =
                    new LabelFinder(field(one()), RADIUS, LETTERS, new Area(12, -30, Double.POSITIVE_INFINITY, 30));
            finder.take(Area.round(stamp, side, 0.02));
            LabelPlace.Leader leader = finder.ledOverNothing(new LabelWish(Span.of(0), 8, 2, 12, 0))
                    .orElseThrow()
                    .leader()
                    .orElseThrow();
            assertThat(leader.toY()).isNotCloseTo(0, within(0.01));
        }
    }

    /** Nor does it turn aside without need. */
    @Test
    void aLeaderGoesStraightWhereTheWayIsFree() {
        LabelFinder finder = new LabelFinder(field(one()), RADIUS, LETTERS, new Area(12, -30, 100, 30));
        finder.take(new Area(3, 0.3, 10, 20));
        finder.take(new Area(3, -20, 10, -0.3));
        LabelPlace place =
                finder.ledOverNothing(new LabelWish(Span.of(0), 8, 2, 12, 0)).orElseThrow();
        assertThat(place.area().centreY()).isCloseTo(0, within(1e-9));
        assertThat(place.area().left()).isCloseTo(12, within(1e-9));
    }

    /** Beside the way there is room for a pixel if its rim, 2 from its middle, keeps an eighth of a letter off. */
    @ParameterizedTest
    @CsvSource({"2.2, false", "2.3, true"})
    void aLeaderCrossesNoPixel(double aside, boolean straight) {
        List<double[]> places = one();
        places.add(new double[] {6, aside});
        LabelFinder finder = new LabelFinder(field(places), RADIUS, LETTERS, new Area(12, -30, 100, 30));
        LabelPlace place =
                finder.ledOverNothing(new LabelWish(Span.of(0), 8, 2, 12, 0)).orElseThrow();
        assertThat(Math.abs(place.area().centreY()) < 1e-9).isEqualTo(straight);
    }

    /** A fence of pixels all round the bounds: lines cross it where they must, but still nothing that is taken. */
    @Test
    void crossesPixelsRatherThanLabels() {
        List<double[]> places = one();
        for (int i = -30; i <= 30; i++) {
            places.add(new double[] {8, 2 * i});
        }
        LabelFinder finder = new LabelFinder(field(places), RADIUS, LETTERS, new Area(12, -25, 60, 25));
        finder.take(Area.round(4, 0, 0.5));
        LabelWish wish = new LabelWish(Span.of(0), 8, 2, 12, 0);
        assertThat(finder.ledOverNothing(wish)).isEmpty();
        LabelPlace.Leader leader = finder.led(wish).orElseThrow().leader().orElseThrow();
        for (double[] point : points(leader)) {
            assertThat(Area.round(4, 0, 0.5).distanceTo(point[0], point[1])).isPositive();
        }
        finder.take(new Area(5, -60, 6, 60));
        assertThat(finder.led(wish)).isPresent();
    }

    /** Later labels lie over no earlier leader, and leaders that cross nothing cross no earlier leaders either. */
    @ParameterizedTest
    @ValueSource(doubles = {6, 4.5})
    void leadersStayToBeSeen(double spacing) {
        List<double[]> places = new ArrayList<>();
        for (int i = 0; i < 36; i++) {
            places.add(new double[] {i % 6 * spacing, (double) (i / 6) * spacing});
        }
        LabelFinder finder = new LabelFinder(field(places), RADIUS, LETTERS);
        List<double[]> lines = new ArrayList<>();
        List<Area> areas = new ArrayList<>();
        for (int i = 0; i < 36; i++) {
            LabelWish wish = new LabelWish(Span.of(i), 8, 2, 2.5, 0.25);
            LabelPlace place = finder.beside(wish)
                    .or(() -> finder.ledOverNothing(wish))
                    .or(() -> finder.led(wish))
                    .orElseThrow();
            assertThat(lines).noneMatch(point -> place.area().grown(-1e-9).distanceTo(point[0], point[1]) == 0);
            place.leader().ifPresent(leader -> lines.addAll(points(leader)));
            areas.add(place.area());
        }
        assertThat(lines).isNotEmpty();
        assertThat(areas).hasSize(36);
    }

    private static List<double[]> points(LabelPlace.Leader leader) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= 200; i++) {
            double share = i / 200.0;
            points.add(new double[] {
                leader.fromX() + share * (leader.toX() - leader.fromX()),
                leader.fromY() + share * (leader.toY() - leader.fromY())
            });
        }
        return points;
    }
}
