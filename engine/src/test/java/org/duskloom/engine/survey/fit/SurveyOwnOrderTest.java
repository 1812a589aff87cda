package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.Noise;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.text.SurveyReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A prop that is wired in an order of its own is not explained by errors as large as the prop. */
class SurveyOwnOrderTest {
    private static final String TRELLIS =
            "\"trellis\": {\"build\": [{\"grid\": {\"rows\": 12, \"columns\": 8, \"spacing\": [150, 150], \"path\":"
                    + " \"serpentine\"}}]}";

    /** A trellis that is described as a serpentine, and wired straight: every other row runs the other way. */
    private static Built straight() {
        return new Built(Built.display(
                        TRELLIS, "{\"name\": \"trellis\", \"shape\": \"trellis\", \"at\": [-4850, 1050]}"))
                .rewire("trellis", i -> i / 8 % 2 == 0 ? i : i / 8 * 8 + 7 - i % 8);
    }

    /** The fifteen pixels, and the errors, are drawn anew for each seed. */
    private static int[] fifteen(long seed) {
        return new Random(seed).ints(1, 97).distinct().limit(15).sorted().toArray();
    }

    private static void assertOwnOrder(SurveyResult result) {
        assertThat(result.noise().source()).as(SurveyReport.of(result)).isEqualTo(Noise.Source.IMPLAUSIBLE);
        assertThat(result.noise().sigma()).isEqualTo(5);
        Finding trellis = result.findings().get(0);
        assertThat(trellis.verdict()).isEqualTo(Verdict.UNEXPLAINED);
        assertThat(trellis.rivals()).isEmpty();
        assertThat(SurveyReport.of(result))
                .contains("trellis: bent, or wired in an order of its own")
                .contains("no reading comes near")
                .doesNotContain("paste")
                .doesNotContain("just as well")
                .doesNotContain("times as large");
    }

    @Test
    void allPixelsOfAStraightTrellis() {
        assertOwnOrder(straight().survey(4, 1));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void fifteenPixelsOfAStraightTrellis(long seed) {
        assertOwnOrder(straight().measure("trellis", fifteen(seed)).survey(4, seed));
    }

    /** With a tolerance the error is known, and the verdict is the same. */
    @Test
    void aToleranceChangesNothing() {
        Built built = straight();
        SurveyResult result = Survey.compare(built.display(), built.flat(4, 1), OptionalDouble.of(20));
        assertThat(result.findings(Verdict.UNEXPLAINED)).hasSize(1);
    }

    /** Half of the props in an order of their own leave the error of the others as it is. */
    @Test
    void doesNotSpoilTheErrorOfOthers() {
        Built built = Gardens.daisies().built();
        for (int i = 1; i <= 4; i++) {
            int[] order = {i + 3};
            built.rewire(
                    "daisy-" + i,
                    pixel -> IntStream.iterate(pixel, p -> p * 7 % 41)
                            .limit(order[0])
                            .reduce((first, last) -> last)
                            .orElseThrow());
        }
        SurveyResult result = built.survey(5, 1);
        assertThat(result.noise().source()).isEqualTo(Noise.Source.MEASURED);
        assertThat(result.noise().sigma()).isBetween(4.5, 6.5);
        assertThat(result.findings(Verdict.UNEXPLAINED)).hasSize(4);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(2);
    }

    /**
     * Built at a tenth of its size: more than a slip of the hand, so no size is told, least of all the end of what is
     * tried.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 5, 20})
    void aScaleOutOfReasonIsNoMeasurement(double factor) {
        Built built = Gardens.daisies().built().resize("daisy-3", factor, 2100, 2000);
        Finding daisy = Built.finding(built.survey(2, 1), "daisy-3");
        assertThat(daisy.verdict()).isEqualTo(Verdict.UNEXPLAINED);
        assertThat(daisy.reading().changes()).noneMatch(Change.Resized.class::isInstance);
    }

    /** Errors of 12 mm are coarse, but a third of the step of 39 mm only: they are believed. */
    @Test
    void believesCoarseMeasurements() {
        SurveyResult result = Gardens.daisies().built().survey(12, 1);
        assertThat(result.noise().source()).isEqualTo(Noise.Source.MEASURED);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(6);
    }
}
