package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.survey.Estimate;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.Wiring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How exactly turn and place of a prop of 300 mm come out of measurements with errors of 5 mm: 500 trials for each
 * number of pixels in a ring of radius r = 150 mm. Closed form, from the least squares of a rigid motion about the
 * middle: the standard deviation of the angle is 5/(r sqrt(n)) rad, of each coordinate of the place 5/sqrt(n) mm. With
 * that the angle is within 0.5 degrees in erf(0.5/(sigma sqrt(2))) of all cases, and the place within 2 mm in 1 -
 * exp(-2^2/(2 sigma^2)): 63.6 % and 61.7 % with 12 pixels, 93.0 % and 97.9 % with 48, 99.0 % and 99.95 % with 96, 99.98
 * % and all with 208.
 */
class SurveyAccuracyTest {
    private static final double SIGMA = 5;
    private static final double RADIUS = 150;
    private static final int TRIALS = 500;

    @ParameterizedTest
    @CsvSource({"12, 0.6356, 0.6171", "48, 0.9302, 0.9785", "96, 0.9897, 0.9995", "208, 0.9998, 1"})
    void spreadsAsTheClosedFormSays(int pixels, double shareOfTurns, double shareOfPlaces) {
        double[] turns = new double[TRIALS];
        double[] offsets = new double[TRIALS];
        double squaredOffsets = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double[] errors = errors(pixels, trial);
            turns[trial] = Math.abs(errors[0]);
            offsets[trial] = Math.hypot(errors[1], errors[2]);
            squaredOffsets += errors[1] * errors[1] + errors[2] * errors[2];
        }
        double turnSigma = Math.toDegrees(SIGMA / (RADIUS * Math.sqrt(pixels)));
        double placeSigma = SIGMA / Math.sqrt(pixels);
        // A standard deviation from n values is known to 1 in sqrt(2 n): 3.2 % and 2.2 %; within four of these.
        double squaredTurns = Arrays.stream(turns).map(turn -> turn * turn).sum();
        assertThat(Math.sqrt(squaredTurns / TRIALS) / turnSigma).isCloseTo(1, within(0.13));
        assertThat(Math.sqrt(squaredOffsets / (2 * TRIALS)) / placeSigma).isCloseTo(1, within(0.09));
        assertThat(share(turns, 0.5)).isCloseTo(shareOfTurns, within(slack(shareOfTurns)));
        assertThat(share(offsets, 2)).isCloseTo(shareOfPlaces, within(slack(shareOfPlaces)));
    }

    /**
     * With 256 pixels none of 500 is off by more than 0.5 degrees or 2 mm: the bounds are 4.2 and 6.4 standard
     * deviations.
     */
    @Test
    void isWithinHalfADegreeAndTwoMillimetresEveryTime() {
        for (int trial = 0; trial < TRIALS; trial++) {
            double[] errors = errors(256, 10_000 + trial);
            assertThat(Math.abs(errors[0])).isLessThan(0.5);
            assertThat(Math.hypot(errors[1], errors[2])).isLessThan(2);
        }
    }

    /** Degrees and millimetres that one trial is off: a ring turned by any angle, moved by up to 300 mm. */
    private static double[] errors(int pixels, int trial) {
        Random random = new Random(trial);
        double degrees = 360 * random.nextDouble() - 180;
        double dx = 600 * random.nextDouble() - 300;
        double dy = 600 * random.nextDouble() - 300;
        Built built = new Built(ring(pixels)).turn("ring", degrees, 1000, 500).move("ring", dx, dy);
        built.measure("ring", IntStream.rangeClosed(1, pixels).toArray());
        Finding finding = built.survey(SIGMA, trial).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.DIFFERENT);
        Estimate estimate = finding.estimate().orElseThrow();
        // Of a ring alone every start fits, with a turn for each; the one that is preferred leaves a turn that is told.
        double step = 360.0 / pixels;
        Wiring wiring = finding.reading().wiring();
        int start = wiring.describedPixel(0);
        double turned = estimate.turnDegrees() - step * start;
        assertThat(estimate.errorDegrees())
                .isBetween(
                        0.5 * Math.toDegrees(SIGMA / (RADIUS * Math.sqrt(pixels))),
                        2.1 * Math.toDegrees(SIGMA / (RADIUS * Math.sqrt(pixels))));
        return new double[] {Rotations.normalized(turned - degrees), estimate.dx() - dx, estimate.dy() - dy};
    }

    private static Display ring(int pixels) {
        return Built.display(
                "\"ring\": {\"build\": [{\"ring\": {\"count\": " + pixels
                        + ", \"radius\": 150, \"direction\": \"clockwise\"}}]}",
                "{\"name\": \"ring\", \"shape\": \"ring\", \"at\": [1000, 500]}");
    }

    private static double share(double[] values, double bound) {
        return Arrays.stream(values).filter(value -> value <= bound).count() / (double) values.length;
    }

    /** Four standard deviations of a share of 500, and one trial more. */
    private static double slack(double share) {
        return 4 * Math.sqrt(share * (1 - share) / TRIALS) + 1.0 / TRIALS;
    }
}
