package org.duskloom.engine.survey.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.CameraStand;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.CommonMotion;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Estimate;
import org.duskloom.engine.survey.Exchange;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Muddle;
import org.duskloom.engine.survey.Noise;
import org.duskloom.engine.survey.Overall;
import org.duskloom.engine.survey.PhotoAlignment;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.Rival;
import org.duskloom.engine.survey.Shortage;
import org.duskloom.engine.survey.Slip;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.fit.Gardens;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Results of surveys made up, so that each of them is said for a reason. */
class ReportWordsTest {
    private static final Display GARDEN = new Gardens()
            .prop("post", "post", 0, 0)
            .prop("ring", "ring", 500, 0)
            .display();

    private static final CommonMotion.Point ZERO = new CommonMotion.Point(0, 0, 0);

    private Dimensions dimensions = Dimensions.FLAT;
    private Noise.Source source = Noise.Source.MEASURED;
    private Optional<PhotoAlignment> photo = Optional.empty();
    private Optional<Overall> overall = Optional.empty();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Exchange> exchanges = new ArrayList<>();
    private final List<CommonMotion> motions = new ArrayList<>();

    private static Reading reading(Change... changes) {
        return new Reading(List.of(changes), Placement.at(7, 0, 0), Wiring.AS_DESCRIBED, 1.25, 4, 2);
    }

    private static Finding finding(Verdict verdict, Reading reading, List<Rival> rivals) {
        return new Finding(
                GARDEN.props().get(0),
                20,
                verdict,
                33,
                reading,
                rivals,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    private static Finding leftOut(List<Slip> slips, List<Muddle> muddles, Optional<Shortage> shortage, double error) {
        return new Finding(
                GARDEN.props().get(0),
                12,
                Verdict.AS_DESCRIBED,
                1,
                reading(),
                List.of(),
                Optional.of(new Estimate(0, 0, 0, 1, 0, error)),
                shortage,
                slips,
                muddles,
                Optional.empty());
    }

    private List<String> lines() {
        Positions places = new Positions(new double[1], new double[1], new double[1]);
        MeasuredProp measured = new MeasuredProp(0, new int[] {0}, places);
        return SurveyReport.of(new SurveyResult(
                        Units.MILLIMETRES,
                        2,
                        dimensions,
                        photo,
                        overall,
                        new Measurements(List.of(measured), dimensions),
                        new Noise(2.5, source, 9),
                        findings,
                        exchanges,
                        motions))
                .lines()
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "MEASURED, worked out from the measurements",
        "FLOOR, 'as much as a pixel of the picture, or 3 mm; the places scatter by less'",
        "TOLERANCE, a third of the tolerance",
        "ASSUMED, 'assumed, because too little was measured to tell'",
        "IMPLAUSIBLE, 'assumed, because no reading comes near; --tolerance says it instead'"
    })
    void saysWhereTheErrorComesFrom(Noise.Source from, String words) {
        source = from;
        assertThat(lines()).contains("measuring error: about 2.5 mm in each coordinate, " + words);
    }

    /** Pixels that were left out were measured as well. */
    @Test
    void countsAllThatWasMeasured() {
        findings.add(leftOut(
                List.of(new Slip(6, 100)), List.of(new Muddle.Exchanged(List.of(3, 4))), Optional.empty(), 0.1));
        dimensions = Dimensions.DEEP;
        assertThat(lines().get(0)).isEqualTo("measured: 15 pixels of 1 of 2 props, with depth");
    }

    @Test
    void saysWhatWasLeftOutAndWhy() {
        findings.add(leftOut(
                List.of(new Slip(6, 123.4)),
                List.of(new Muddle.Exchanged(List.of(3, 4)), new Muddle.OnePlace(List.of(9, 10, 11), 1, 2, 0, 150)),
                Optional.empty(),
                0.1));
        assertThat(lines())
                .contains(
                        "  post: pixels 4 and 5 were left out: their readings seem to be exchanged",
                        "  post: pixels 10, 11 and 12 were left out: all were measured at (1, 2), but are described up to"
                                + " 150 mm apart",
                        "  post: pixel 7 was left out: it was measured 123.4 mm from where the others put it");
    }

    /** A turn shows from four standard deviations on; below ten degrees nobody need be told. */
    @ParameterizedTest
    @CsvSource({"2.4, ''", "2.6, 10.4", "60, 180"})
    void saysWhichTurnsDoNotShow(double error, String degrees) {
        findings.add(leftOut(List.of(), List.of(), Optional.empty(), error));
        String weak = "  post: with 12 measured pixels a turn of less than " + degrees + " degrees does not show";
        assertThat(lines().contains(weak)).isEqualTo(!degrees.isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ONE_PLACE  | measured at one place only, which tells no turn, no mirror image and no wiring: measure pixel 8 and one more as well
            ON_A_LINE  | measured along one line only, which does not tell a mirror image: measure pixel 8 as well
            IN_A_PLANE | measured in one plane only, which does not tell a mirror image: measure pixel 8 as well
            TOO_FEW    | too few pixels: measure pixel 8 as well, and some more
            """)
    void saysWhatToMeasureMore(Shortage.Kind kind, String words) {
        findings.add(leftOut(List.of(), List.of(), Optional.of(new Shortage(kind, 7)), 99));
        assertThat(lines()).contains("  post: " + words).noneMatch(line -> line.contains("does not show"));
    }

    @Test
    void saysHowToTellRivalsApart() {
        Rival.Test test = new Rival.Test(4, 80, 10, 20, 0, 90, 20, 0);
        findings.add(finding(
                Verdict.DIFFERENT,
                reading(new Change.Turned(90, true, 0)),
                List.of(
                        new Rival(reading(new Change.Turned(180, true, 0)), 80, Optional.of(test)),
                        new Rival(reading(), 0.04, Optional.empty()),
                        new Rival(reading(), 3, Optional.empty()))));
        assertThat(lines())
                .containsSequence(
                        "1 prop differs:",
                        "post: a quarter turn to the left: 90 degrees counter-clockwise",
                        "  20 pixels, 33 mm from where they are described; left over: 1.2 mm, at most 4 mm at pixel 3",
                        "  or just as well: upside down: turned by 180 degrees",
                        "    measure pixel 5 to tell: it would be at (90, 20) instead of (10, 20)",
                        "  or just as well: as described",
                        "    no pixel tells them apart: both put all pixels at the same places",
                        "  or just as well: as described",
                        "    no pixel tells them apart: they put none farther apart than 3 mm, which errors hide");
    }

    @Test
    void saysWhatNothingExplains() {
        findings.add(finding(Verdict.UNEXPLAINED, reading(), List.of()));
        assertThat(lines())
                .containsSequence(
                        "1 prop differs in a way of its own:",
                        "post: bent, or wired in an order of its own",
                        "  20 pixels, 33 mm from where they are described")
                .noneMatch(line -> line.contains("paste"));
    }

    @Test
    void saysThatThreeWentRound() {
        exchanges.add(new Exchange(List.of("a", "b", "c")));
        assertThat(lines())
                .contains("changed places: a hangs where b should, b hangs where c should, c hangs where a should");
    }

    @Test
    void saysHowPropsMovedTogether() {
        motions.add(new CommonMotion(List.of("a", "b"), false, 0, 0, ZERO, ZERO, new CommonMotion.Point(-3, 4, 0)));
        dimensions = Dimensions.DEEP;
        motions.add(new CommonMotion(
                List.of("c", "d"),
                true,
                -12.5,
                0.3,
                new CommonMotion.Point(1, 2, 3),
                new CommonMotion.Point(0, 0.6, 0.8),
                ZERO));
        assertThat(lines())
                .contains(
                        "moved together: a, b",
                        "  all of them 3 mm to the left and 4 mm up",
                        "moved together: c, d",
                        "  turned by 12.5 degrees clockwise (give or take 0.3 degrees) about (1, 2, 3), round the axis (0,"
                                + " 0.6, 0.8)");
    }

    /** Everything moved alike: it may be the tape that began elsewhere. */
    @Test
    void asksWhereZeroIsIfEverythingMoved() {
        findings.add(finding(Verdict.DIFFERENT, reading(new Change.MovedTogether(0)), List.of()));
        findings.add(finding(Verdict.DIFFERENT, reading(new Change.MovedTogether(0)), List.of()));
        motions.add(new CommonMotion(List.of("post", "ring"), false, 0, 0, ZERO, ZERO, ZERO));
        assertThat(lines()).contains("  that is everything: perhaps the measurements count from another zero point");
        findings.add(leftOut(List.of(), List.of(), Optional.empty(), 0.1));
        assertThat(lines()).noneMatch(line -> line.contains("zero point"));
    }

    /** Six of twenty agree: less than a third. */
    @Test
    void doubtsAPictureOfSomethingElse() {
        CameraStand camera =
                new CameraStand(20, 0, OptionalDouble.of(9000), OptionalDouble.of(3000), OptionalDouble.of(0));
        findings.add(finding(Verdict.UNDETERMINED, reading(), List.of()));
        photo = Optional.of(new PhotoAlignment(2.34567, -3, true, 6, Optional.of(camera)));
        assertThat(lines())
                .contains(
                        "from a photo: one unit of the picture is 2.3457 mm, turned by 3 degrees clockwise, y counts down;"
                                + " 6 of 20 pixels agree with that",
                        "a photo does not show whether the whole display is moved, turned or of another size")
                .anyMatch(line -> line.startsWith("taken from 20 degrees to the right, 9000 mm away"))
                .anyMatch(line -> line.endsWith("then nothing below is true"));
        photo = Optional.of(new PhotoAlignment(2.34567, 0, false, 7, Optional.empty()));
        assertThat(lines())
                .anyMatch(line -> line.contains("upright, y counts up; 7 of 20"))
                .noneMatch(line -> line.endsWith("then nothing below is true"));
    }

    /** What is wrong with all measurements comes first, and entries only once that is put right. */
    @Test
    void writesNoEntriesWhileEverythingIsWrong() {
        findings.add(finding(Verdict.DIFFERENT, reading(new Change.Turned(90, true, 0)), List.of()));
        assertThat(lines()).contains("to paste into \"props\":");
        overall = Optional.of(new Overall(Overall.Cause.READING, 0.1, Optional.of("cm"), Overall.Flip.NONE, false));
        assertThat(lines())
                .contains("everything is a tenth as large as described: was it measured in cm?")
                .doesNotContain("to paste into \"props\":");
    }
}
