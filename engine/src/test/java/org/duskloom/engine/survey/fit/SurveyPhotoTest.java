package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.PhotoAlignment;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;
import org.duskloom.engine.survey.text.SurveyReport;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measured in a photo of the whole garden. */
class SurveyPhotoTest {
    /**
     * The photo: 0.4 picture units for a millimetre, held askew by some degrees, counted from a corner of the picture.
     *
     * @param down whether y counts down
     */
    private static Measurements photo(Measurements stage, double degrees, boolean down) {
        double cosine = 0.4 * Math.cos(Math.toRadians(degrees));
        double sine = 0.4 * Math.sin(Math.toRadians(degrees));
        List<MeasuredProp> props = new ArrayList<>();
        for (MeasuredProp prop : stage.props()) {
            double[] x = new double[prop.count()];
            double[] y = new double[prop.count()];
            for (int i = 0; i < x.length; i++) {
                double stageX = prop.places().x(i);
                double stageY = prop.places().y(i);
                x[i] = 120 + cosine * stageX - sine * stageY;
                double up = sine * stageX + cosine * stageY - 300;
                y[i] = down ? 3000 - up : up;
            }
            props.add(prop.at(new Positions(x, y, new double[x.length])));
        }
        return new Measurements(props, Dimensions.FLAT, true);
    }

    private static SurveyResult survey(Built built, Measurements photo) {
        return Survey.compare(built.display(), photo, OptionalDouble.empty());
    }

    @ParameterizedTest
    @CsvSource({"0, true", "0, false", "3, true", "-10, false", "170, true"})
    void findsHowThePhotoLies(double degrees, boolean down) {
        Built built = Gardens.daisies().built();
        SurveyResult result = survey(built, photo(built.flat(5, 1), degrees, down));
        PhotoAlignment photo = result.photo().orElseThrow();
        assertThat(photo.unitsPerPictureUnit()).isCloseTo(2.5, within(0.005));
        assertThat(Rotations.normalized(photo.turnDegrees() + degrees)).isCloseTo(0, within(0.1));
        assertThat(photo.countsDown()).isEqualTo(down);
        // Chance leaves out one pixel in 450.
        assertThat(photo.agreeingPixels()).isBetween(240, 246);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(6);
        assertThat(result.noise().sigma()).isCloseTo(5, within(0.8));
    }

    /** Two of six daisies hang wrong and a third is wired wrong: the others tell how the photo lies. */
    @Test
    void isNotPulledByPropsThatHangWrong() {
        Built built = Gardens.daisies()
                .built()
                .move("daisy-1", -200, 150)
                .turn("daisy-4", 90, 2800, 2000)
                .reverse("daisy-6");
        SurveyResult result = survey(built, photo(built.flat(5, 1), 4, true));
        Change.Moved moved = (Change.Moved)
                Built.finding(result, "daisy-1").reading().changes().get(0);
        // The photo itself is known to some millimetres at its ends.
        assertThat(moved.dx()).isCloseTo(-200, within(6.0));
        assertThat(moved.dy()).isCloseTo(150, within(6.0));
        assertThat(Built.finding(result, "daisy-4").reading().placement().turnDegrees())
                .isEqualTo(120);
        assertThat(Built.finding(result, "daisy-6").reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(3);
        assertThat(result.photo().orElseThrow().agreeingPixels()).isBetween(115, 130);
    }

    /** A fence of many pixels, wrong, is one prop and has no more to say than a daisy. */
    @Test
    void aLongPropDoesNotOutvoteTheOthers() {
        Built built = new Built(Built.display(
                        Gardens.DAISY
                                + ", \"fence\": {\"build\": [{\"line\": {\"count\": 400, \"from\": [0, 0], \"to\": [4000,"
                                + " 0]}}]}",
                        "{\"name\": \"fence\", \"shape\": \"fence\", \"at\": [300, 0]},"
                                + "{\"name\": \"daisy-1\", \"shape\": \"daisy\", \"at\": [700, 2000]},"
                                + "{\"name\": \"daisy-2\", \"shape\": \"daisy\", \"at\": [1700, 2100]},"
                                + "{\"name\": \"daisy-3\", \"shape\": \"daisy\", \"at\": [3700, 1500]}"))
                .reverse("fence");
        SurveyResult result = survey(built, photo(built.flat(5, 1), -2, true));
        assertThat(Built.finding(result, "fence").reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(3);
    }

    @Test
    void saysSoInTheReport() {
        Built built = Gardens.daisies().built();
        assertThat(SurveyReport.of(survey(built, photo(built.flat(5, 1), 3, true))))
                .contains("from a photo: one unit of the picture is 2.")
                .contains("3 degrees clockwise, y counts down")
                .contains("a photo does not show whether the whole display is moved, turned or of another size");
    }

    @Test
    void needsThreePixelsAtDifferentPlaces() {
        Built built = new Gardens().prop("post", "post", 0, 0).built();
        assertThat(PhotoFit.of(
                        built.measure("post", 1, 20).flat(0, 0), built.display().map()))
                .isEmpty();
        assertThat(PhotoFit.of(
                        built.measure("post", 1, 7, 20).flat(0, 0),
                        built.display().map()))
                .isPresent();
    }

    /**
     * Through exact points the similarity with the least median leaves nothing, though two of five points are far off.
     */
    @Test
    void theLeastMedianPassesByOutliers() {
        Positions from = Points.flat(0, 0, 10, 0, 10, 10, 0, 10, 5, 5, 3, 8, 7, 2);
        Similarity made = new Similarity(Rotations.aboutZ(0.6, 0.8), 3, new Vector3d(-7, 40, 0));
        Positions exact = made.of(from);
        double[] x = new double[7];
        double[] y = new double[7];
        for (int i = 0; i < 7; i++) {
            x[i] = exact.x(i) + (i < 2 ? 500 : 0);
            y[i] = exact.y(i) - (i == 1 ? 300 : 0);
        }
        LeastMedian found = LeastMedian.of(from, new Positions(x, y, new double[7]), new int[] {0, 1, 2, 3, 4, 5, 6});
        assertThat(found.median()).isCloseTo(0, within(1e-18));
        assertThat(found.similarity().scale()).isCloseTo(3, within(1e-12));
        assertThat(found.similarity().shift().x()).isCloseTo(-7, within(1e-11));
    }
}
