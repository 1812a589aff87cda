package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.duskloom.engine.survey.Noise;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How well was measured is seen from what is left over when every prop has its best place. */
class NoiseTest {
    /**
     * 636 spare coordinates behind the estimate: it is known to some percent, and taken a little too large on purpose.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2, 5, 12})
    void isFoundFromTheMeasurements(double sigma) {
        for (long seed = 1; seed <= 20; seed++) {
            Noise noise = Gardens.daisies().built().survey(sigma, seed).noise();
            assertThat(noise.source()).isEqualTo(Noise.Source.MEASURED);
            assertThat(noise.spareCoordinates()).isEqualTo(6 * (82 - 4));
            assertThat(noise.sigma() / sigma).isBetween(0.9, 1.25);
        }
    }

    @Test
    void isNotSpoiltByPropsThatHangWrong() {
        Built built = Gardens.daisies()
                .built()
                .reverse("daisy-1")
                .mirrorX("daisy-2", 1400)
                .turn("daisy-3", 77, 0, 0)
                .shift("daisy-4", 3, 200, 0);
        assertThat(built.survey(5, 1).noise().sigma()).isCloseTo(5, within(1.0));
    }

    @Test
    void isNotSpoiltByABentProp() {
        Built built = Gardens.daisies().built();
        for (int pixel = 1; pixel <= 20; pixel++) {
            built.shift("daisy-4", pixel, 80, 0);
        }
        assertThat(built.survey(5, 1).noise().sigma()).isCloseTo(5, within(1.0));
    }

    @Test
    void followsTheToleranceThatIsAsked() {
        Built built = Gardens.daisies().built().move("daisy-2", 12, 0);
        SurveyResult strict = Survey.compare(built.display(), built.flat(1, 1), OptionalDouble.of(6));
        assertThat(strict.noise().sigma()).isEqualTo(2);
        assertThat(strict.findings(Verdict.DIFFERENT)).hasSize(1);
        SurveyResult lenient = Survey.compare(built.display(), built.flat(1, 1), OptionalDouble.of(100));
        assertThat(lenient.findings(Verdict.AS_DESCRIBED)).hasSize(6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesNoTolerance(double tolerance) {
        Built built = Gardens.daisies().built();
        assertThatThrownBy(() -> Survey.compare(built.display(), built.flat(1, 1), OptionalDouble.of(tolerance)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * Three pixels have two coordinates to spare, which say next to nothing: 5 mm is assumed, in the display's unit.
     */
    @Test
    void isAssumedIfLittleWasMeasured() {
        String metres = "{\"name\": \"arch\", \"shape\": \"arch\", \"at\": [0, 0]}";
        Built built = new Built(Built.displayIn(
                        "m", "\"arch\": {\"build\": [{\"ring\": {\"count\": 30, \"radius\": 1.5}}]}", metres))
                .measure("arch", 1, 10, 20);
        Noise noise = built.survey(0.001, 3).noise();
        assertThat(noise.source()).isEqualTo(Noise.Source.ASSUMED);
        assertThat(noise.sigma()).isEqualTo(0.005);
    }

    /** Exact measurements have no error, but rounding has; nothing is found that is not there. */
    @Test
    void isNeverNothing() {
        SurveyResult result = Gardens.daisies().built().survey(0, 1);
        assertThat(result.noise().sigma()).isGreaterThan(0.01).isLessThan(0.1);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(6);
    }
}
