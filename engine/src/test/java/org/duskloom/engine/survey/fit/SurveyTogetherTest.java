package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.CommonMotion;
import org.duskloom.engine.survey.Exchange;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;
import org.duskloom.engine.survey.text.SurveyReport;
import org.junit.jupiter.api.Test;

/** Props that changed places, and props that moved as one. */
class SurveyTogetherTest {
    @Test
    void twoPropsChangePlaces() {
        SurveyResult result =
                Gardens.daisies().built().swap("daisy-3", "daisy-5").survey(5, 1);
        assertThat(result.exchanges()).containsExactly(new Exchange(List.of("daisy-3", "daisy-5")));
        Finding third = Built.finding(result, "daisy-3");
        assertThat(third.reading().changes()).containsExactly(new Change.TookThePlace("daisy-5", false));
        assertThat(third.reading().placement().x()).isEqualTo(3500);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(4);
        assertThat(result.motions()).isEmpty();
    }

    /** The third is described upright, the fourth turned by 30 degrees; changed, each has the other's turn. */
    @Test
    void theyMayTakeTheTurnAsWell() {
        SurveyResult result =
                Gardens.daisies().built().swap("daisy-3", "daisy-4").survey(5, 1);
        assertThat(result.exchanges()).hasSize(1);
        assertThat(Built.finding(result, "daisy-3").reading().changes())
                .containsExactly(new Change.TookThePlace("daisy-4", true));
        assertThat(Built.finding(result, "daisy-3").reading().placement().turnDegrees())
                .isEqualTo(30);
    }

    /** Changed, but each of them upright as it is described. */
    @Test
    void theyMayKeepTheirTurn() {
        SurveyResult result = Gardens.daisies()
                .built()
                .move("daisy-3", 700, 0)
                .move("daisy-4", -700, 0)
                .survey(5, 1);
        assertThat(result.exchanges()).containsExactly(new Exchange(List.of("daisy-3", "daisy-4")));
        assertThat(Built.finding(result, "daisy-4").reading().changes())
                .containsExactly(new Change.TookThePlace("daisy-3", false));
    }

    @Test
    void oneOfThemMayBeMirroredOnTop() {
        SurveyResult result = Gardens.daisies()
                .built()
                .swap("daisy-1", "daisy-5")
                .mirrorX("daisy-1", 3500)
                .reverse("daisy-5")
                .survey(5, 1);
        assertThat(result.exchanges()).hasSize(1);
        assertThat(Built.finding(result, "daisy-1").reading().changes())
                .hasSize(2)
                .anyMatch(Change.Mirrored.class::isInstance);
        assertThat(Built.finding(result, "daisy-5").reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
    }

    @Test
    void threePropsChangePlacesInACircle() {
        SurveyResult result = Gardens.daisies()
                .built()
                .swap("daisy-1", "daisy-3")
                .swap("daisy-1", "daisy-5")
                .survey(5, 1);
        // The first hangs where the fifth should, the fifth where the third should, the third where the first should.
        assertThat(result.exchanges()).containsExactly(new Exchange(List.of("daisy-1", "daisy-5", "daisy-3")));
        assertThat(SurveyReport.of(result))
                .contains(
                        "changed places: daisy-1 hangs where daisy-5 should, daisy-5 hangs where daisy-3 should, daisy-3"
                                + " hangs where daisy-1 should");
    }

    /** One that took a place which nobody left did not change it: that is only said. */
    @Test
    void aPlaceTakenAloneIsNoExchange() {
        SurveyResult result = Gardens.daisies().built().move("daisy-3", 1400, 0).survey(5, 1);
        assertThat(result.exchanges()).isEmpty();
        Finding third = Built.finding(result, "daisy-3");
        assertThat(third.reading().changes()).singleElement().isInstanceOf(Change.Moved.class);
        assertThat(third.placeOf()).contains("daisy-5");
        assertThat(Built.finding(result, "daisy-5").placeOf()).isEmpty();
    }

    /** One measured pixel each is enough if both are where the other one should be. */
    @Test
    void onePixelEachTellsAnExchange() {
        SurveyResult result = Gardens.daisies()
                .built()
                .swap("daisy-3", "daisy-5")
                .measure("daisy-3", 14)
                .measure("daisy-5", 30)
                .survey(5, 1);
        assertThat(result.exchanges()).hasSize(1);
        assertThat(Built.finding(result, "daisy-3").shortage()).isPresent();
    }

    /** Props of different shapes change places too: each of its own shape at the other's zero point. */
    @Test
    void propsOfDifferentShapesChangePlaces() {
        SurveyResult result = Gardens.daisies()
                .prop("ring", "ring", 0, 800)
                .prop("post", "post", 900, 700)
                .built()
                .move("ring", 900, -100)
                .move("post", -900, 100)
                .survey(5, 1);
        assertThat(result.exchanges()).containsExactly(new Exchange(List.of("ring", "post")));
    }

    /** A branch with three daisies on it droops by 5 degrees about the point where it is tied. */
    @Test
    void aBranchDroops() {
        Built built = Gardens.daisies().built();
        for (String daisy : List.of("daisy-2", "daisy-3", "daisy-4")) {
            built.turn(daisy, -5, 900, 2300);
        }
        SurveyResult result = built.survey(5, 1);
        CommonMotion motion = result.motions().get(0);
        assertThat(result.motions()).hasSize(1);
        assertThat(motion.props()).containsExactly("daisy-2", "daisy-3", "daisy-4");
        assertThat(motion.isTurn()).isTrue();
        // Sigma of the angle is 5 mm by the root of the sum of squared distances: 123 pixels, 590 mm in the mean.
        assertThat(motion.degrees()).isCloseTo(-5, within(0.25));
        assertThat(motion.errorDegrees()).isBetween(0.03, 0.06);
        assertThat(motion.pivot().x()).isCloseTo(900, within(25.0));
        assertThat(motion.pivot().y()).isCloseTo(2300, within(25.0));
        Finding fourth = Built.finding(result, "daisy-4");
        assertThat(fourth.verdict()).isEqualTo(Verdict.DIFFERENT);
        assertThat(fourth.reading().changes()).containsExactly(new Change.MovedTogether(0));
        assertThat(fourth.reading().placement().turnDegrees()).isCloseTo(25, within(0.25));
        assertThat(fourth.reading().typicalMisfit()).isBetween(5.0, 9.0);
        assertThat(fourth.rivals()).isEmpty();
    }

    /** What droops may be wired from the other end besides. */
    @Test
    void oneOnTheBranchIsWiredFromTheOtherEnd() {
        Built built = Gardens.daisies().built().reverse("daisy-3");
        for (String daisy : List.of("daisy-2", "daisy-3", "daisy-4")) {
            built.turn(daisy, 8, 900, 2300);
        }
        SurveyResult result = built.survey(5, 1);
        assertThat(result.motions()).hasSize(1);
        assertThat(result.motions().get(0).props()).hasSize(3);
        assertThat(Built.finding(result, "daisy-3").reading().changes())
                .hasSize(2)
                .contains(new Change.MovedTogether(0));
    }

    @Test
    void twoBranchesAreTwo() {
        Built built = Gardens.daisies().built();
        for (int i = 1; i <= 6; i++) {
            built.turn("daisy-" + i, i <= 3 ? -6 : 4, i <= 3 ? 0 : 5000, 2200);
        }
        SurveyResult result = built.survey(5, 1);
        assertThat(result.motions()).hasSize(2);
        assertThat(result.motions().get(0).props()).containsExactly("daisy-1", "daisy-2", "daisy-3");
        assertThat(result.motions().get(1).props()).containsExactly("daisy-4", "daisy-5", "daisy-6");
        assertThat(result.motions().get(1).degrees()).isCloseTo(4, within(0.3));
    }

    /** Daisies that each hang wrong in a way of their own are no branch. */
    @Test
    void propsThatMovedEachTheirOwnWayAreNoBranch() {
        Built built = Gardens.daisies().built();
        for (int i = 1; i <= 6; i++) {
            built.turn("daisy-" + i, 7 * i, 700 * i, 2000).move("daisy-" + i, 20 * i, 90 - 25 * i);
        }
        assertThat(built.survey(5, 1).motions()).isEmpty();
    }

    /** Counted from another corner of the garden, everything moved alike. */
    @Test
    void anotherZeroPointMovesEverything() {
        Built built = Gardens.daisies().built();
        for (int i = 1; i <= 6; i++) {
            built.move("daisy-" + i, -250, 40);
        }
        SurveyResult result = built.survey(5, 1);
        CommonMotion motion = result.motions().get(0);
        assertThat(motion.props()).hasSize(6);
        assertThat(motion.isTurn()).isFalse();
        assertThat(motion.move().x()).isCloseTo(-250, within(2.0));
        assertThat(motion.move().y()).isCloseTo(40, within(2.0));
        assertThat(SurveyReport.of(result))
                .contains("that is everything: perhaps the measurements count from another zero point");
    }

    /** In space: a board with three rings falls forward about its lower edge, a line along x. */
    @Test
    void aBoardFallsForward() {
        Gardens garden = new Gardens();
        for (int i = 1; i <= 5; i++) {
            garden.prop("daisy-" + i, "daisy", 700 * i, 1000);
        }
        Built built = garden.built();
        for (int i = 1; i <= 3; i++) {
            built.tilt("daisy-" + i, 20, 400, 0);
        }
        SurveyResult result = built.surveyInSpace(5, 1);
        CommonMotion motion = result.motions().get(0);
        assertThat(motion.props()).containsExactly("daisy-1", "daisy-2", "daisy-3");
        assertThat(Math.abs(motion.degrees())).isCloseTo(20, within(0.5));
        assertThat(Math.abs(motion.axis().x())).isCloseTo(1, within(0.001));
        assertThat(motion.pivot().y()).isCloseTo(400, within(15.0));
        assertThat(motion.pivot().z()).isCloseTo(0, within(15.0));
        Reading second = Built.finding(result, "daisy-2").reading();
        assertThat(second.placement().tiltDegrees()).isCloseTo(20, within(0.5));
        assertThat(second.placement().turnDegrees()).isCloseTo(0, within(0.5));
        assertThat(second.placement().z()).isCloseTo(600 * Math.sin(Math.toRadians(20)), within(5.0));
    }
}
