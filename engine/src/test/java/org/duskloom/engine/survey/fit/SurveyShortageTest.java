package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Muddle;
import org.duskloom.engine.survey.Noise;
import org.duskloom.engine.survey.Shortage;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.junit.jupiter.api.Test;

/** Too little was measured: what is missing is said, and nothing is guessed. */
class SurveyShortageTest {
    private static final String DAISY = "daisy-2";

    /** The other five daisies are wholly measured, so that the measuring error is known. */
    private static Finding survey(Built built, int... pixels) {
        return Built.finding(built.measure(DAISY, pixels).survey(5, 1), DAISY);
    }

    @Test
    void onePixelInItsPlaceTellsThatMuch() {
        Finding daisy = survey(Gardens.daisies().built(), 20);
        assertThat(daisy.verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        assertThat(daisy.shortage().orElseThrow().kind()).isEqualTo(Shortage.Kind.ONE_PLACE);
        // Pixel 20 is the eighth of 24 clockwise from the top, at 105 degrees; 300 mm off, opposite to it, is pixel 32.
        assertThat(daisy.shortage().orElseThrow().pixelToMeasure()).isEqualTo(31);
        assertThat(daisy.estimate()).isEmpty();
    }

    @Test
    void onePixelElsewhereTellsNotWhy() {
        Finding daisy = survey(Gardens.daisies().built().move(DAISY, 60, 0), 20);
        assertThat(daisy.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(daisy.reading().changes()).isEmpty();
        assertThat(daisy.misfitAsDescribed()).isCloseTo(60, within(15.0));
        assertThat(daisy.shortage().orElseThrow().kind()).isEqualTo(Shortage.Kind.ONE_PLACE);
        assertThat(daisy.rivals()).isEmpty();
    }

    /** Two pixels that moved alike moved; what the daisy does round the line through them stays open. */
    @Test
    void twoPixelsTellAMove() {
        Finding daisy = survey(Gardens.daisies().built().move(DAISY, 60, 0), 13, 25);
        assertThat(daisy.verdict()).isEqualTo(Verdict.DIFFERENT);
        assertThat(daisy.reading().changes()).singleElement().isInstanceOf(Change.Moved.class);
        assertThat(daisy.shortage().orElseThrow().kind()).isEqualTo(Shortage.Kind.ON_A_LINE);
    }

    /** Turned by 90 degrees, mirrored or wired otherwise: two pixels cannot say. */
    @Test
    void twoPixelsTellNoTurn() {
        Finding daisy = survey(Gardens.daisies().built().turn(DAISY, 90, 1400, 2000), 13, 25);
        assertThat(daisy.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(daisy.shortage().orElseThrow().kind()).isEqualTo(Shortage.Kind.ON_A_LINE);
    }

    /**
     * The stem's five pixels are on a line: the pixel to measure is off it, in the outer ring at a right angle to it.
     */
    @Test
    void pixelsOnALineTellNoTurn() {
        Finding daisy = survey(Gardens.daisies().built().turn(DAISY, 90, 1400, 2000), 37, 38, 39, 40, 41);
        assertThat(daisy.verdict()).isEqualTo(Verdict.UNDETERMINED);
        Shortage shortage = daisy.shortage().orElseThrow();
        assertThat(shortage.kind()).isEqualTo(Shortage.Kind.ON_A_LINE);
        assertThat(shortage.pixelToMeasure()).isBetween(12, 35);
    }

    @Test
    void thatPixelIsEnough() {
        Built built = Gardens.daisies().built().turn(DAISY, 90, 1400, 2000);
        int missing = survey(built, 37, 38, 39, 40, 41).shortage().orElseThrow().pixelToMeasure() + 1;
        Finding daisy = survey(built, missing, 37, 38, 39, 40, 41);
        assertThat(daisy.verdict()).isEqualTo(Verdict.DIFFERENT);
        assertThat(daisy.shortage()).isEmpty();
        assertThat(((Change.Turned) daisy.reading().changes().get(0)).degrees()).isEqualTo(90);
    }

    /** A post has no more than a line: three of its pixels tell all that its pixels can. */
    @Test
    void aLineIsAllThatAPostHas() {
        Built built = Gardens.daisies().prop("post", "post", 0, 0).built().turn("post", 30, 0, 0);
        Finding post = Built.finding(built.measure("post", 1, 10, 20).survey(5, 1), "post");
        assertThat(post.verdict()).isEqualTo(Verdict.DIFFERENT);
        assertThat(post.shortage()).isEmpty();
        assertThat(((Change.Turned) post.reading().changes().get(0)).degrees()).isCloseTo(30, within(2.0));
    }

    /** A single lamp can only be moved. */
    @Test
    void aLampIsMoved() {
        Built built = Gardens.daisies()
                .prop("lamp", "lamp", 0, 0)
                .prop("other", "lamp", 500, 0)
                .built()
                .move("lamp", -70, 20);
        SurveyResult result = built.survey(5, 1);
        Finding lamp = Built.finding(result, "lamp");
        assertThat(lamp.verdict()).isEqualTo(Verdict.DIFFERENT);
        assertThat(((Change.Moved) lamp.reading().changes().get(0)).dx()).isCloseTo(-70, within(15.0));
        assertThat(lamp.shortage()).isEmpty();
        assertThat(Built.finding(result, "other").verdict()).isEqualTo(Verdict.AS_DESCRIBED);
    }

    /** One pixel of one prop is all: the error is assumed, and nothing divides by nothing. */
    @Test
    void oneMeasurementIsAllThereIs() {
        Built built = new Gardens().prop("daisy", "daisy", 0, 0).built().measure("daisy", 3);
        SurveyResult result = built.survey(5, 1);
        assertThat(result.noise().source()).isEqualTo(Noise.Source.ASSUMED);
        assertThat(result.noise().sigma()).isEqualTo(5);
        assertThat(result.findings().get(0).verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        Built lamp = new Gardens().prop("lamp", "lamp", 0, 0).built();
        assertThat(lamp.survey(1, 1).findings().get(0).verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        assertThat(lamp.move("lamp", 100, 0).survey(1, 1).findings().get(0).verdict())
                .isEqualTo(Verdict.DIFFERENT);
    }

    /** Pixels that are all measured at one place, as when a column is filled down: no reading, no crash. */
    @Test
    void takesManyPixelsAtOnePlace() {
        Built built = Gardens.daisies().built();
        MeasuredProp heap = new MeasuredProp(1, new int[] {0, 5, 9, 20, 30}, Points.flat(7, 7, 7, 7, 7, 7, 7, 7, 7, 7));
        Measurements measured =
                new Measurements(List.of(built.flat(5, 1).props().get(0), heap), Dimensions.FLAT);
        SurveyResult result = Survey.compare(built.display(), measured, OptionalDouble.empty());
        Finding daisy = Built.finding(result, DAISY);
        assertThat(daisy.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(daisy.measuredPixels()).isZero();
        assertThat(daisy.muddles()).singleElement().isInstanceOf(Muddle.OnePlace.class);
        assertThat(daisy.misfitAsDescribed()).isFinite();
    }

    /** In space a plane is not enough for a prop that has depth. */
    @Test
    void aPlaneIsNotEnoughForATree() {
        Built built = new Built(Built.display(
                        "\"tree\": {\"build\": [{\"points\": [[0, 0, 0], [400, 0, 0], [0, 500, 0], [100, 100, 0], [0,"
                                + " 0, 300], [200, 100, 350]]}]}",
                        "{\"name\": \"tree\", \"shape\": \"tree\", \"at\": [0, 0]}, {\"name\": \"other\", \"shape\":"
                                + " \"tree\", \"at\": [2000, 0]}"))
                .tilt("tree", 30, 0, 0)
                .measure("tree", 1, 2, 3, 4);
        Finding tree = Built.finding(built.surveyInSpace(3, 1), "tree");
        assertThat(tree.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(tree.shortage().orElseThrow().kind()).isEqualTo(Shortage.Kind.IN_A_PLANE);
        assertThat(tree.shortage().orElseThrow().pixelToMeasure()).isIn(4, 5);
    }
}
