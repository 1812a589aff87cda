package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Depth was measured as well, or it was not and the props are tilted all the same. */
class SurveySpaceTest {
    private static Gardens tilted() {
        return new Gardens()
                .prop("daisy-1", "daisy", 0, 0)
                .prop("daisy-2", "daisy", 800, 0, "\"tilt\": 40", "\"yaw\": 25", "\"turn\": 10")
                .prop("daisy-3", "daisy", 1600, 0, "\"tilt\": -30")
                .prop("daisy-4", "daisy", 2400, 0, "\"yaw\": 80");
    }

    @Test
    void tiltedPropsAreAsDescribed() {
        assertThat(tilted().built().surveyInSpace(5, 1).findings(Verdict.AS_DESCRIBED))
                .hasSize(4);
        assertThat(tilted().built().survey(5, 1).findings(Verdict.AS_DESCRIBED)).hasSize(4);
    }

    /** The daisy that faces the audience leans forward by 15 degrees. */
    @Test
    void tellsATilt() {
        Finding daisy = Built.finding(tilted().built().tilt("daisy-1", 15, 0, 0).surveyInSpace(5, 1), "daisy-1");
        assertThat(daisy.reading().changes()).singleElement().isInstanceOf(Change.TurnedInSpace.class);
        assertThat(((Change.TurnedInSpace) daisy.reading().changes().get(0)).degrees())
                .isCloseTo(15, within(1.0));
        Placement now = daisy.reading().placement();
        assertThat(now.tiltDegrees()).isCloseTo(15, within(1.0));
        assertThat(now.turnDegrees()).isCloseTo(0, within(1.0));
        assertThat(now.yawDegrees()).isCloseTo(0, within(1.5));
        assertThat(now.x()).isZero();
    }

    /**
     * A tilted prop that is turned in its own plane is described with another {@code turn}, and with the same tilt and
     * yaw.
     */
    @ParameterizedTest
    @ValueSource(ints = {20, 100})
    void tellsATurnInThePlaneOfTheProp(int turn) {
        Built built = new Built(new Gardens()
                .prop("daisy-1", "daisy", 0, 0)
                .prop("daisy-2", "daisy", 800, 0, "\"tilt\": 40", "\"yaw\": 25", "\"turn\": " + turn)
                .display());
        // Measured with that turn, compared with a description without it.
        Measurements measured = built.deep(5, 3);
        SurveyResult result = Survey.compare(
                new Gardens()
                        .prop("daisy-1", "daisy", 0, 0)
                        .prop("daisy-2", "daisy", 800, 0, "\"tilt\": 40", "\"yaw\": 25", "\"turn\": 10")
                        .display(),
                measured,
                OptionalDouble.empty());
        Finding daisy = Built.finding(result, "daisy-2");
        Change.Turned turned = (Change.Turned) daisy.reading().changes().get(0);
        assertThat(turned.degrees()).isCloseTo(turn - 10, within(1.5));
        assertThat(turned.isQuarter()).isEqualTo(turn == 100);
        assertThat(daisy.reading().placement().tiltDegrees()).isEqualTo(40);
        assertThat(daisy.reading().placement().yawDegrees()).isEqualTo(25);
    }

    @Test
    void tellsAMoveTowardTheAudience() {
        Finding daisy = Built.finding(tilted().built().move("daisy-3", 0, 0, 90).surveyInSpace(5, 1), "daisy-3");
        Change.Moved moved = (Change.Moved) daisy.reading().changes().get(0);
        assertThat(moved.dz()).isCloseTo(90, within(4.0));
        assertThat(moved.dx()).isCloseTo(0, within(4.0));
        assertThat(daisy.reading().changes()).hasSize(1);
    }

    /** From the front nothing moved. */
    @Test
    void doesNotSeeDepthThatWasNotMeasured() {
        Built built = tilted().built().move("daisy-3", 0, 0, 90);
        assertThat(built.survey(5, 1).findings(Verdict.AS_DESCRIBED)).hasSize(4);
    }

    /** A flat daisy that is hung back to front is its mirror image; mirrored is the simpler word. */
    @Test
    void backToFrontIsMirrored() {
        Finding daisy = Built.finding(tilted().built().mirrorX("daisy-1", 0).surveyInSpace(5, 1), "daisy-1");
        assertThat(daisy.reading().changes()).singleElement().isInstanceOf(Change.Mirrored.class);
    }

    /** Wiring is told apart on props that are seen edge-on too. */
    @Test
    void tellsTheWiringOfATiltedProp() {
        SurveyResult result =
                tilted().built().reverse("daisy-2").reverse("daisy-3").survey(5, 1);
        assertThat(result.findings(Verdict.DIFFERENT))
                .hasSize(2)
                .allMatch(finding -> finding.reading().wiring().kind() == WiringKind.FROM_OTHER_END);
    }

    /** Seen from the front only, a prop that is tilted may still be turned as the audience sees it. */
    @Test
    void turnsATiltedPropAsTheAudienceSeesIt() {
        Built built = tilted().built().turn("daisy-2", 35, 800, 0);
        Finding daisy = Built.finding(built.survey(5, 1), "daisy-2");
        assertThat(((Change.Turned) daisy.reading().changes().get(0)).degrees()).isCloseTo(35, within(2.0));
        MeasuredProp exact = built.flat(0, 0).props().get(1);
        Misfits misfits = new Misfits(daisy.reading().places(daisy.prop()), exact, Dimensions.FLAT);
        assertThat(misfits.distance(misfits.worst())).isLessThan(10);
    }
}
