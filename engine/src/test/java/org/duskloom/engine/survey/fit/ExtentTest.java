package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.joml.Vector3d;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far points spread, and which were measured in one place though they are far apart. */
class ExtentTest {
    private static int[] everyOne(Positions points) {
        return IntStream.range(0, points.size()).toArray();
    }

    /** A point, a line, a plane and a body, each with that spread; in whatever way they are turned and wherever. */
    @RepeatedTest(20)
    void directionsAreCountedHoweverPointsLie(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        Similarity anyhow = new Similarity(
                Points.rotation(6 * random.nextDouble(), 6 * random.nextDouble(), 6 * random.nextDouble()),
                1,
                new Vector3d(50 * random.nextDouble(), 50 * random.nextDouble(), 50 * random.nextDouble()));
        double[][] spreads = {{0, 0, 0}, {9, 0, 0}, {9, 3, 0}, {9, 3, 1}};
        for (int rank = 0; rank < 4; rank++) {
            double[] xyz = random.doubles(60, -1, 1).toArray();
            for (int i = 0; i < xyz.length; i++) {
                xyz[i] *= spreads[rank][i % 3];
            }
            Positions points = anyhow.of(Points.deep(xyz));
            assertThat(Extent.rank(points, everyOne(points), 0.1)).isEqualTo(rank);
            assertThat(Extent.rank(points, everyOne(points), 1000))
                    .as("all of it error")
                    .isZero();
        }
    }

    /** Two points at a distance d spread by d^2 / 2 about their middle, which has to be more than 4 sigma^2. */
    @ParameterizedTest
    @CsvSource({"2.8, 0", "2.9, 1"})
    void errorsAreNoSpread(double distance, int rank) {
        assertThat(Extent.rank(Points.flat(0, 0, distance, 0), new int[] {0, 1}, 1))
                .isEqualTo(rank);
    }

    /** Only those that are asked for count. */
    @Test
    void pointsThatAreNotAskedForDoNotCount() {
        Positions points = Points.flat(0, 0, 5, 0, 9, 0, 3, 8);
        assertThat(Extent.rank(points, new int[] {0, 1, 2}, 0.1)).isEqualTo(1);
        assertThat(Extent.rank(points, new int[] {0, 1, 3}, 0.1)).isEqualTo(2);
    }

    /** The quaint box of 2, 3, 6 with the diagonal 7, wherever it stands. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0", "-100, 7, 0.5", "-2, -3, -6"})
    void theDiagonalOfABox(double x, double y, double z) {
        Positions corners = Points.deep(x, y + 3, z, x + 2, y, z, x + 1, y + 1, z + 6);
        assertThat(Extent.diagonal(corners)).isCloseTo(7, within(1e-12));
        assertThat(Extent.distance(corners, 0, 1)).isCloseTo(Math.sqrt(13), within(1e-12));
    }

    /** One long jump between two runs of pixels does not lengthen the usual step. */
    @Test
    void theUsualStepKnowsNoJump() {
        Positions pixels = Points.flat(0, 0, 1, 0, 2, 0, 90, 0, 91, 0, 92, 0);
        assertThat(Extent.medianStep(pixels, 0, 6)).isEqualTo(1);
        assertThat(Extent.medianStep(pixels, 2, 2)).isEqualTo(88);
        assertThat(Extent.medianStep(pixels, 3, 1)).isZero();
        assertThat(Extent.medianStep(pixels, 3, 0)).isZero();
    }

    private static List<List<Integer>> heaps(double... measuredX) {
        double[] xy = new double[2 * measuredX.length];
        double[] described = new double[xy.length];
        for (int i = 0; i < measuredX.length; i++) {
            xy[2 * i] = measuredX[i];
            described[2 * i] = i;
        }
        int[] pixels = IntStream.range(0, measuredX.length).toArray();
        return Heaps.of(new MeasuredProp(0, pixels, Points.flat(xy)), Points.flat(described));
    }

    /** A row of 20: a quarter of it is 4.75 steps, a tenth 1.9. Both zeros are one place. */
    @Test
    void farPixelsInOnePlaceAreAHeap() {
        double[] sound = IntStream.range(0, 20).asDoubleStream().toArray();
        assertThat(heaps(sound)).isEmpty();
        double[] far = sound.clone();
        far[0] = 0.0;
        far[5] = -0.0;
        assertThat(heaps(far)).containsExactly(List.of(0, 5));
        double[] near = sound.clone();
        near[4] = 0;
        assertThat(heaps(near)).as("two pixels, four steps apart").isEmpty();
        double[] three = sound.clone();
        three[1] = 0;
        three[2] = 0;
        assertThat(heaps(three)).as("three pixels").containsExactly(List.of(0, 1, 2));
        double[] pairs = sound.clone();
        pairs[1] = 0;
        pairs[2] = 0;
        pairs[11] = 10;
        assertThat(heaps(pairs))
                .as("measured coarsely: two places with neighbours")
                .isEmpty();
    }

    /** Evenly over the wiring, each once, the first always. */
    @ParameterizedTest
    @CsvSource({"10, 3", "10, 10", "10, 99", "1, 5", "1000, 7"})
    void aSampleIsSpreadEvenly(int count, int most) {
        Positions places = Points.random(new Random(1), count, 5, Dimensions.FLAT);
        int[] which = MeasuredMoments.spread(new MeasuredProp(0, everyOne(places), places), most);
        assertThat(which).hasSize(Math.min(count, most)).startsWith(0).doesNotHaveDuplicates();
        for (int i = 1; i < which.length; i++) {
            assertThat(which[i] - which[i - 1])
                    .isBetween(count / which.length, (count + which.length - 1) / which.length);
        }
    }
}
