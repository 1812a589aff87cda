package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Overall;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.text.SurveyReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** All measurements are wrong alike: in another unit, from behind, in a photo. */
class SurveyOverallTest {
    private static Measurements scaled(Measurements measured, double x, double y, double z) {
        List<MeasuredProp> props = measured.props().stream()
                .map(prop -> prop.at(scaled(prop.places(), x, y, z)))
                .toList();
        return new Measurements(props, measured.dimensions());
    }

    private static Positions scaled(Positions places, double x, double y, double z) {
        double[][] at = new double[3][places.size()];
        for (int i = 0; i < places.size(); i++) {
            at[0][i] = x * places.x(i);
            at[1][i] = y * places.y(i);
            at[2][i] = z * places.z(i);
        }
        return new Positions(at[0], at[1], at[2]);
    }

    private static SurveyResult survey(Built built, Measurements measured) {
        return Survey.compare(built.display(), measured, OptionalDouble.empty());
    }

    private static Built garden() {
        return Gardens.daisies()
                .built()
                .move("daisy-1", 300, 0)
                .turn("daisy-4", 90, 2800, 2000)
                .measure("daisy-2", 1, 5, 13, 20, 30, 41);
    }

    private static void assertGarden(SurveyResult result) {
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(4);
        assertThat(Built.finding(result, "daisy-1").reading().changes())
                .singleElement()
                .satisfies(change -> assertThat(((Change.Moved) change).dx()).isCloseTo(300, within(5.0)));
        assertThat(SurveyReport.of(result)).doesNotContain("to paste into");
    }

    /** An inch is 25.4 mm and a foot 304.8 mm exactly: international yard and pound agreement of 1959. */
    @ParameterizedTest
    @CsvSource({
        "0.1, cm, a tenth as large",
        "0.001, m, a thousandth as large",
        "0.03937007874, inches, 0.0394 times as large",
        "0.00328083990, feet, 0.00328 times as large"
    })
    void tellsTheUnit(double factor, String unit, String words) {
        Built built = garden();
        SurveyResult result = survey(built, scaled(built.flat(5, 1), factor, factor, 1));
        Overall overall = result.overall().orElseThrow();
        assertThat(overall.unit()).contains(unit);
        assertThat(overall.factor()).isCloseTo(factor, within(1e-9));
        assertThat(overall.flip()).isEqualTo(Overall.Flip.NONE);
        assertGarden(result);
        assertThat(SurveyReport.of(result))
                .contains("everything is " + words + " as described: was it measured in " + unit + "?\n")
                .contains("if so, write the measurements in mm instead of " + unit + ", and survey again\n");
    }

    /** The display counts in that unit, and was measured in millimetres. */
    @ParameterizedTest
    @CsvSource({"cm, 10", "m, 1000", "in, 25.4"})
    void tellsMillimetres(String units, double factor) {
        String ring = "\"ring\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": " + 150 / factor + "}}]}";
        String prop = "{\"name\": \"%s\", \"shape\": \"ring\", \"at\": [%s, %s]}";
        Built built = new Built(Built.displayIn(
                units,
                ring,
                String.format(Locale.ROOT, prop, "a", 0, 500 / factor) + ","
                        + String.format(Locale.ROOT, prop, "b", 700 / factor, 450 / factor)));
        SurveyResult result = survey(built, scaled(built.flat(3 / factor, 1), factor, factor, 1));
        assertThat(result.overall().orElseThrow().unit()).contains("mm");
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(2);
        assertThat(SurveyReport.of(result)).contains("everything is " + plain(factor) + " times as large");
    }

    /** Of a single prop too, though it is turned besides. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 90, -20})
    void tellsTheUnitOfASingleProp(double turn) {
        Built built = new Gardens().prop("daisy", "daisy", 900, 1500).built().turn("daisy", turn, 900, 1500);
        built.measure("daisy", 1, 4, 9, 15, 22, 31, 38, 41);
        SurveyResult result = survey(built, scaled(built.flat(3, 1), 0.1, 0.1, 1));
        assertThat(result.overall().orElseThrow().unit()).contains("cm");
        assertThat(result.findings(turn == 0 ? Verdict.AS_DESCRIBED : Verdict.DIFFERENT))
                .hasSize(1);
        assertThat(SurveyReport.of(result)).doesNotContain("paste into");
    }

    /** Seen from behind the display, its right is the left. */
    @Test
    void tellsThatItWasMeasuredFromBehind() {
        Built built = garden();
        SurveyResult result = survey(built, scaled(built.flat(5, 1), -1, 1, 1));
        Overall overall = result.overall().orElseThrow();
        assertThat(overall)
                .isEqualTo(new Overall(Overall.Cause.READING, 1, Optional.empty(), Overall.Flip.LEFT_RIGHT, false));
        assertGarden(result);
        assertThat(result.exchanges()).isEmpty();
        assertThat(SurveyReport.of(result))
                .contains("everything is mirrored, left and right change places: was it measured from behind?\n")
                .contains("if so, change the sign of every x, and survey again\n");
    }

    /** From behind and in centimetres; counted from the right end of the row, which is another zero point besides. */
    @Test
    void tellsAllOfIt() {
        Built built = Gardens.daisies().built();
        SurveyResult both = survey(built, scaled(built.flat(5, 1), -0.1, 0.1, 1));
        assertThat(SurveyReport.of(both))
                .contains(
                        "everything is a tenth as large as described, and mirrored, left and right change places: was it"
                                + " measured in cm, from behind?")
                .contains("write the measurements in mm instead of cm and change the sign of every x, and");
        for (int i = 1; i <= 6; i++) {
            built.move("daisy-" + i, -4900, 0);
        }
        SurveyResult moved = survey(built, scaled(built.flat(5, 1), -1, 1, 1));
        assertThat(moved.overall().orElseThrow().flip()).isEqualTo(Overall.Flip.LEFT_RIGHT);
        assertThat(SurveyReport.of(moved)).contains("perhaps the measurements count from another zero point");
    }

    /** Who measures depth from behind counts it toward himself too. */
    @ParameterizedTest
    @ValueSource(ints = {-1, 1})
    void tellsWhichWayDepthCounts(int sign) {
        Built built = new Built(Built.display(
                Gardens.DAISY,
                "{\"name\": \"a\", \"shape\": \"daisy\", \"at\": [0, 900], \"tilt\": -40},"
                        + "{\"name\": \"b\", \"shape\": \"daisy\", \"at\": [800, 900, 300]},"
                        + "{\"name\": \"c\", \"shape\": \"daisy\", \"at\": [1700, 1000], \"yaw\": 30}"));
        SurveyResult result = survey(built, scaled(built.deep(4, 1), -1, 1, sign));
        Overall overall = result.overall().orElseThrow();
        assertThat(overall.isDepthFlipped()).isEqualTo(sign < 0);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(3);
    }

    /** A beam that y is counted down from. */
    @Test
    void tellsThatYCountsDown() {
        Built built = garden();
        SurveyResult result = survey(built, scaled(built.flat(5, 1), 1, -1, 1));
        assertThat(result.overall().orElseThrow().flip()).isEqualTo(Overall.Flip.TOP_BOTTOM);
        assertThat(SurveyReport.of(result)).contains("change the sign of every y, or add --photo");
    }

    /** 0.4 picture units for a millimetre. */
    @ParameterizedTest
    @ValueSource(ints = {-1, 1})
    void suggestsAPhoto(int sign) {
        Built built = garden();
        SurveyResult result = survey(built, scaled(built.flat(5, 1), 0.4, sign * 0.4, 1));
        Overall overall = result.overall().orElseThrow();
        assertThat(overall.cause()).isEqualTo(Overall.Cause.PHOTO);
        assertThat(overall.factor()).isCloseTo(0.4, within(0.002));
        assertGarden(result);
        assertThat(SurveyReport.of(result))
                .contains("as large as described")
                .contains("are these places in a photo?\n  then add --photo");
    }

    /** Each is of that size at its own place: that is the display. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 1.5, 3})
    void isNotTakenFromPropsThatAreResizedEachForItself(double factor) {
        Built built = Gardens.daisies().built();
        for (int i = 1; i <= 6; i++) {
            built.resize("daisy-" + i, factor, 700 * i, 2000);
        }
        SurveyResult result = built.survey(2, 1);
        assertThat(result.overall()).isEmpty();
        assertThat(result.findings(Verdict.DIFFERENT)).hasSize(6);
    }

    /**
     * Two props, or six pairs of lamps, can be brought nearly anywhere: what they were moved by is no photo and no
     * unit.
     */
    @Test
    void isNotTakenFromPropsThatMoved() {
        Random random = new Random(7);
        for (int trial = 0; trial < 200; trial++) {
            Built two = new Gardens()
                    .prop("a", "daisy", 0, 0)
                    .prop("b", "daisy", 700, 0)
                    .built()
                    .move("a", random.nextInt(1000) - 500, random.nextInt(1000) - 500)
                    .move("b", random.nextInt(1000) - 500, random.nextInt(1000) - 500);
            assertThat(two.survey(3, trial).overall()).isEmpty();
            Gardens pairs = new Gardens();
            for (int i = 0; i < 6; i++) {
                pairs.prop("post-" + i, "post", 900 * i, 0);
            }
            Built built = pairs.built();
            for (int i = 0; i < 6; i++) {
                built.measure("post-" + i, 1, 2)
                        .move("post-" + i, random.nextInt(800) - 400, random.nextInt(800) - 400);
            }
            assertThat(built.survey(3, trial).overall()).isEmpty();
        }
    }

    /**
     * One prop that is mirrored, in truth of another size, or straight where a serpentine is described, is that and no
     * more.
     */
    @Test
    void isNotTakenFromASingleProp() {
        Built mirrored = new Gardens().prop("daisy", "daisy", 900, 1500).built().mirrorX("daisy", 900);
        assertThat(mirrored.survey(3, 1).overall()).isEmpty();
        Built resized = new Gardens().prop("daisy", "daisy", 900, 1500).built().resize("daisy", 0.6, 900, 1500);
        assertThat(resized.survey(3, 1).overall()).isEmpty();
        assertThat(resized.survey(3, 1).findings(Verdict.DIFFERENT)).hasSize(1);
    }

    /** With one decimal at most. */
    private static String plain(double factor) {
        return new BigDecimal(factor)
                .setScale(1, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
