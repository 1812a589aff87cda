package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.joml.Vector3d;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fit that wrong points do not move: P. J. Rousseeuw, Journal of the American Statistical Association
 * 79(388):871-880, 1984, least median of squares, which holds with up to nearly half of the points anywhere.
 */
class LeastMedianTest {
    private static final int COUNT = 41;

    private static Similarity any(Random random) {
        double angle = 2 * Math.PI * random.nextDouble();
        Vector3d shift = new Vector3d(100 * random.nextDouble(), -50 * random.nextDouble(), 0);
        return new Similarity(Rotations.aboutZ(Math.cos(angle), Math.sin(angle)), 0.3 + 3 * random.nextDouble(), shift);
    }

    /** The same points but for the first so many, which are anywhere. */
    private static Positions spoilt(Positions points, int wrong, Random random) {
        Positions elsewhere = Points.random(random, COUNT, 200, Dimensions.FLAT);
        double[][] mixed = new double[3][COUNT];
        for (int i = 0; i < COUNT; i++) {
            Positions of = i < wrong ? elsewhere : points;
            mixed[0][i] = of.x(i);
            mixed[1][i] = of.y(i);
        }
        return new Positions(mixed[0], mixed[1], mixed[2]);
    }

    private static int[] everyOne(int count) {
        return IntStream.range(0, count).toArray();
    }

    @RepeatedTest(20)
    void nearlyHalfOfThePointsMayBeAnywhere(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        Similarity truth = any(random);
        Positions from = Points.random(random, COUNT, 10, Dimensions.FLAT);
        Positions to = spoilt(truth.of(from), 18, random);
        LeastMedian found = LeastMedian.of(from, to, everyOne(COUNT));
        assertThat(found.median()).isCloseTo(0, within(1e-18));
        assertThat(found.similarity().scale()).isCloseTo(truth.scale(), within(1e-9));
        assertThat(Rotations.squaredDifference(found.similarity().rotation(), truth.rotation()))
                .isLessThan(1e-18);
        double[] squares = LeastMedian.squares(found.similarity(), from, to);
        for (int i = 18; i < COUNT; i++) {
            assertThat(squares[i]).as("point %d", i).isLessThan(1e-18);
        }
        assertThat(LeastMedian.of(from, to, everyOne(COUNT))).as("no chance").isEqualTo(found);
    }

    /** Points that all lie in one place tell no turn and no scale: nothing is found, and nothing is said to fit. */
    @Test
    void pointsInOnePlaceTellNothing() {
        LeastMedian found = LeastMedian.of(Points.flat(1, 1, 1, 1), Points.flat(0, 0, 5, 5), everyOne(2));
        assertThat(found.median()).isInfinite();
    }

    /** Two points that are brought to one place: a scale of nothing, and yet a turn that is one. */
    @Test
    void aScaleOfNothingTurnsNothing() {
        Similarity found = LeastMedian.of(Points.flat(0, 0, 3, 4), Points.flat(7, 7, 7, 7), everyOne(2))
                .similarity();
        assertThat(found.scale()).isZero();
        assertThat(found.rotation().determinant()).isEqualTo(1);
        assertThat(found.of(3, 4, 0)).isEqualTo(new Vector3d(7, 7, 0));
    }

    /** One beyond the middle, so that the two that always fit are no majority of three; never beyond the last. */
    @ParameterizedTest
    @CsvSource({"1, 0", "2, 1", "3, 2", "4, 3", "5, 3", "40, 21", "41, 21"})
    void twoPointsThatAlwaysFitDecideNothing(int count, int index) {
        assertThat(LeastMedian.medianIndex(count)).isEqualTo(index);
    }

    /** Angles and ratios stay, the point goes where it was to go, and the angle is told in degrees. */
    @RepeatedTest(20)
    void aSimilarityKeepsAngles(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        double degrees = 360 * random.nextDouble() - 180;
        Similarity similarity = Similarity.taking(
                new Vector3d(1, 2, 3),
                new Vector3d(-4, 5, -6),
                Rotations.aboutZ(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees))),
                2.5);
        assertThat(similarity.of(1, 2, 3).distance(-4, 5, -6)).isCloseTo(0, within(1e-12));
        assertThat(similarity.turnDegrees()).isCloseTo(degrees, within(1e-9));
        Positions points = Points.random(random, 6, 10, Dimensions.DEEP);
        Positions mapped = similarity.of(points);
        for (int i = 1; i < points.size(); i++) {
            assertThat(mapped.distance(0, i)).isCloseTo(2.5 * points.distance(0, i), within(1e-12 * 100));
        }
    }
}
