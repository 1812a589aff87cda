package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of the steps however they are asked for: mirrored, moved, enlarged, run backwards. */
class StepSymmetryTest {
    private static final double EPS = 1e-9;
    private static final Point O = Point.ORIGIN;

    private static List<Point> places(Step step) {
        Strand strand = Strand.of(step);
        return IntStream.range(0, strand.size())
                .mapToObj(i -> new Point(strand.x[i], strand.y[i], strand.z[i]))
                .toList();
    }

    private static void assertNear(List<Point> actual, List<Point> expected) {
        assertThat(actual).hasSameSizeAs(expected);
        for (int i = 0; i < actual.size(); i++) {
            assertThat(actual.get(i).distance(expected.get(i)))
                    .as("pixel " + (i + 1))
                    .isLessThan(EPS);
        }
    }

    private static List<Point> reversed(List<Point> places) {
        return IntStream.range(0, places.size())
                .mapToObj(i -> places.get(places.size() - 1 - i))
                .toList();
    }

    /** Every kind of step with a centre, about that place and so many times as large. */
    private static List<Step> steps(double scale, Point centre) {
        HelixWire cone = new HelixWire(30 * scale, 4 * scale, 90 * scale, 3.5);
        GridStep.Wiring wiring = new GridStep.Wiring("top-right", true, true);
        return List.of(
                new RingStep(17, 40 * scale, 12, Turning.CLOCKWISE, centre),
                new ArcStep(9, 40 * scale, 200, -15, centre),
                new GridStep(4, 7, 3 * scale, 5 * scale, wiring, centre),
                new SpokesStep(5, 6, 7 * scale, 31 * scale, 20, Turning.CLOCKWISE, true, centre),
                new HelixStep(40, cone, 33, Turning.COUNTER_CLOCKWISE, centre));
    }

    @Test
    void aCentreMovesAllPixelsAlike() {
        Point centre = new Point(100, -250, 60);
        List<Step> here = steps(1, O);
        List<Step> there = steps(1, centre);
        for (int i = 0; i < here.size(); i++) {
            List<Point> moved = places(here.get(i)).stream()
                    .map(p -> new Point(p.x() + 100, p.y() - 250, p.z() + 60))
                    .toList();
            assertNear(places(there.get(i)), moved);
        }
    }

    /** Metres or millimetres: the shape is the same. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.1, 25.4})
    void lengthsEnlargeAllPixelsAlike(double scale) {
        List<Step> one = steps(1, O);
        List<Step> many = steps(scale, O);
        for (int i = 0; i < one.size(); i++) {
            List<Point> enlarged = places(one.get(i)).stream()
                    .map(p -> new Point(p.x() * scale, p.y() * scale, p.z() * scale))
                    .toList();
            assertNear(places(many.get(i)), enlarged);
        }
    }

    /** From the same angle below the axis the other way round: y changes its sign; on a helix z does. */
    @Test
    void clockwiseIsTheMirrorOfCounterClockwise() {
        for (double start : new double[] {0, 17, 90, -200, 3600}) {
            assertNear(
                    places(new RingStep(13, 50, -start, Turning.CLOCKWISE, O)),
                    mirrored(new RingStep(13, 50, start, Turning.COUNTER_CLOCKWISE, O), -1, 1));
            assertNear(
                    places(new SpokesStep(7, 3, 10, 20, -start, Turning.CLOCKWISE, true, O)),
                    mirrored(new SpokesStep(7, 3, 10, 20, start, Turning.COUNTER_CLOCKWISE, true, O), -1, 1));
            HelixWire wire = new HelixWire(50, 10, 120, 2.25);
            assertNear(
                    places(new HelixStep(31, wire, -start, Turning.CLOCKWISE, O)),
                    mirrored(new HelixStep(31, wire, start, Turning.COUNTER_CLOCKWISE, O), 1, -1));
        }
    }

    private static List<Point> mirrored(Step step, double signY, double signZ) {
        return places(step).stream()
                .map(p -> new Point(p.x(), p.y() * signY, p.z() * signZ))
                .toList();
    }

    /** The corners of a regular polygon cancel each other: the n-th roots of one have the sum 0. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7, 12, 61, 1000})
    void theMiddleOfARingIsItsCentre(int count) {
        List<Point> ring = places(new RingStep(count, 80, 33, Turning.CLOCKWISE, new Point(5, 7, 9)));
        assertThat(ring.stream().mapToDouble(Point::x).average().orElseThrow()).isCloseTo(5, within(EPS));
        assertThat(ring.stream().mapToDouble(Point::y).average().orElseThrow()).isCloseTo(7, within(EPS));
        assertThat(ring).allSatisfy(p -> assertThat(p.z()).isEqualTo(9));
    }

    @Test
    void linesAndArcsRunTheSameWayBack() {
        Point from = new Point(1, 2, 3);
        Point to = new Point(-400, 17.5, 90);
        assertNear(places(new LineStep(23, to, from)), reversed(places(new LineStep(23, from, to))));
        assertNear(places(new ArcStep(23, 9, -70, 210, from)), reversed(places(new ArcStep(23, 9, 210, -70, from))));
        PolylineStep there = new PolylineStep(List.of(O, new Point(30, 0, 0), new Point(30, 40, 0)), 8, 10);
        PolylineStep back = new PolylineStep(List.of(new Point(30, 40, 0), new Point(30, 0, 0), O), 8, 10);
        assertNear(places(back), reversed(places(there)));
    }

    /** Points added on the line itself, and points given twice, change nothing. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void moreCornersOnTheSameLineChangeNothing(long seed) {
        Random random = new Random(seed);
        List<Point> corners = Stream.generate(
                        () -> new Point(random.nextInt(300), random.nextInt(300), random.nextInt(30)))
                .limit(6)
                .toList();
        double length = 0;
        Stream.Builder<Point> more = Stream.builder();
        more.add(corners.get(0));
        for (int i = 1; i < corners.size(); i++) {
            Point before = corners.get(i - 1);
            length += before.distance(corners.get(i));
            more.add(before.toward(corners.get(i), random.nextDouble()))
                    .add(corners.get(i))
                    .add(corners.get(i));
        }
        assertNear(
                places(new PolylineStep(more.build().toList(), 50, length / 49)),
                places(new PolylineStep(corners, 50, length / 49)));
    }

    /** The straight way is the shortest: no pixel is farther from the last than the wire between them is long. */
    @Test
    void noPixelIsFartherThanItsWire() {
        List<Point> corners = List.of(O, new Point(100, 0, 0), new Point(100, 3, 0), new Point(-50, 3, 80));
        List<Point> places = places(new PolylineStep(corners, 38, 7));
        for (int i = 1; i < places.size(); i++) {
            assertThat(places.get(i - 1).distance(places.get(i))).isLessThan(7 + EPS);
        }
    }

    private static Stream<GridStep.Wiring> wirings() {
        return Stream.of("top-left", "top-right", "bottom-left", "bottom-right")
                .flatMap(corner -> Stream.of(true, false)
                        .flatMap(columns ->
                                Stream.of(true, false).map(snakes -> new GridStep.Wiring(corner, columns, snakes))));
    }

    /** However it is wired, a grid hangs at the same places, and its lines hold every pixel once. */
    @ParameterizedTest
    @MethodSource("wirings")
    void wiringChangesNoPlaceOfAGrid(GridStep.Wiring wiring) {
        Set<Point> expected = new HashSet<>();
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 3; column++) {
                expected.add(new Point((column - 1) * 10, (row - 1.5) * 20, 0));
            }
        }
        GridStep grid = new GridStep(4, 3, 10, 20, wiring, O);
        assertThat(places(grid)).containsExactlyInAnyOrderElementsOf(expected);
        Strand strand = Strand.of(grid);
        assertThat(strand.lines()).hasSize(wiring.alongColumns() ? 3 : 4);
        assertThat(strand.lines().stream().flatMapToInt(Arrays::stream).sorted())
                .containsExactlyElementsOf(IntStream.range(0, 12).boxed().toList());
        String corner = wiring.corner();
        assertThat(places(grid).get(0))
                .isEqualTo(new Point(corner.endsWith("left") ? -10 : 10, corner.startsWith("top") ? 30 : -30, 0));
    }

    /** A wire that snakes never leaps: each pixel is one spacing from the last, along or across. */
    @ParameterizedTest
    @MethodSource("wirings")
    void aSnakingWireNeverLeaps(GridStep.Wiring wiring) {
        List<Point> places = places(new GridStep(4, 3, 10, 20, wiring, O));
        long leaps = IntStream.range(1, places.size())
                .filter(i -> places.get(i - 1).distance(places.get(i)) > 20)
                .count();
        int turns = wiring.alongColumns() ? 2 : 3;
        assertThat(leaps).isEqualTo(wiring.serpentine() ? 0 : turns);
    }

    /** A light that runs along the lines of spokes runs outwards on all of them, also where the wire comes back. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void linesOfSpokesRunOutwards(boolean serpentine) {
        SpokesStep spokes = new SpokesStep(6, 4, 10, 40, 15, Turning.COUNTER_CLOCKWISE, serpentine, O);
        List<Point> places = places(spokes);
        List<int[]> lines = Strand.of(spokes).lines();
        assertThat(lines).hasSize(6);
        for (int[] line : lines) {
            for (int i = 0; i < 4; i++) {
                assertThat(places.get(line[i]).distance(O)).isCloseTo(10 + 10 * i, within(EPS));
            }
        }
    }

    /** A cone's radius falls in proportion to the height: by similar triangles it is r0 + (r1 - r0)·y/h. */
    @Test
    void aHelixLiesOnItsCone() {
        List<Point> places = places(new HelixStep(200, new HelixWire(80, 20, 300, 7), 0, Turning.COUNTER_CLOCKWISE, O));
        for (int i = 0; i < places.size(); i++) {
            Point p = places.get(i);
            assertThat(new Point(p.x(), 0, p.z()).distance(O)).isCloseTo(80 - 60 * p.y() / 300, within(EPS));
            assertThat(p.y()).isGreaterThan(i == 0 ? -1 : places.get(i - 1).y());
        }
        assertThat(places.get(199).y()).isCloseTo(300, within(EPS));
    }
}
