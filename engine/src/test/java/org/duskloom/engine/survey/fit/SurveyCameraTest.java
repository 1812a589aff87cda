package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.duskloom.engine.camera.Displays;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.CameraStand;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.CommonMotion;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Exchange;
import org.duskloom.engine.survey.FoundMap;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Noise;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;
import org.duskloom.engine.survey.text.SurveyReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Measured in a photo that was taken from anywhere, by the test camera: with a lens that bends, one in twenty lights
 * hidden, places known to 0.06 picture pixels.
 */
class SurveyCameraTest {
    private static final String BRANCH = "daisy-11, daisy-12, daisy-13, daisy-14";

    /** Nearly half of the props hang or are wired wrong. */
    private static Built muddledGarden() {
        Built built = new Built(Displays.garden())
                .turn("daisy-3", 90, -2820, 1750)
                .swap("daisy-7", "daisy-8")
                .reverse("fence");
        for (String daisy : BRANCH.split(", ")) {
            built.turn(daisy, -4, 1710, 2590);
        }
        return built;
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0, 2", "0, 3", "25, 1", "25, 2", "25, 3", "45, 1", "45, 2", "45, 3", "-35, 4"})
    void findsWhatIsWrongAndNothingElse(double aside, long seed) {
        Shot shot = Shot.of(
                muddledGarden(),
                seed,
                evening -> evening.aside(aside).near(16).roll(seed - 2).distance(9000 + 2500 * seed));
        SurveyResult result = shot.survey();
        assertThat(result.exchanges()).containsExactly(new Exchange(List.of("daisy-7", "daisy-8")));
        assertThat(result.motions()).hasSize(1);
        CommonMotion branch = result.motions().get(0);
        assertThat(branch.props()).containsExactly(BRANCH.split(", "));
        assertThat(branch.degrees()).isCloseTo(-4, within(0.05));
        assertThat(branch.pivot().x()).isCloseTo(1710, within(10.0));
        assertThat(branch.pivot().y()).isCloseTo(2590, within(10.0));
        assertThat(Built.finding(result, "daisy-3").reading().changes())
                .containsExactly(new Change.Turned(90, true, 0));
        assertThat(Built.finding(result, "fence").reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
        assertThat(result.findings(Verdict.DIFFERENT)).hasSize(8);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(10);

        CameraStand stand = result.photo().orElseThrow().camera().orElseThrow();
        double focal = shot.camera().pinhole().focal();
        assertThat(stand.asideDegrees()).isCloseTo(aside, within(0.05));
        assertThat(stand.focalLength().orElseThrow()).isCloseTo(focal, within(0.005 * focal));
        assertThat(stand.lensBend().orElseThrow()).isCloseTo(-0.05, within(0.003));
        assertThat(result.photo().orElseThrow().turnDegrees()).isCloseTo(seed - 2.0, within(0.05));
        assertThat(result.noise().source()).isEqualTo(Noise.Source.FLOOR);
    }

    /** The places would tell a tenth of a millimetre; nobody hangs lights so well. */
    @Test
    void noPictureTellsLessThanOneOfItsPixels() {
        Built built = new Built(Displays.garden());
        Random random = new Random(5);
        built.display().map().props().forEach(prop -> {
            for (int pixel = 1; pixel <= prop.pixelCount(); pixel++) {
                built.shift(prop.name(), pixel, 2 * random.nextGaussian(), 2 * random.nextGaussian());
            }
        });
        SurveyResult result = Shot.of(built, 3, evening -> evening.near(12)).survey();
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(18);
        assertThat(result.findings())
                .allSatisfy(finding -> assertThat(finding.slips()).isEmpty());
        // 12 picture pixels are 49 mm or so of a daisy, some of which is lost from aside.
        assertThat(result.noise().sigma()).isBetween(3.5, 6.0);
    }

    /** The pond lies on the water, where every wiring of it is told by the plane that it lies in. */
    @Test
    void tellsTheWiringOfWhatIsTilted() {
        SurveyResult result = Shot.of(new Built(Displays.garden()).reverse("pond"), 2, evening -> evening.near(16))
                .survey();
        assertThat(Built.finding(result, "pond").reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(17);
    }

    /** Of a flat display from the front nobody can tell a short lens from one that is near. */
    @Test
    void doesNotClaimAFocalLengthThatNoPictureShows() {
        Shot shot = Shot.of(
                Gardens.daisies().built().turn("daisy-4", 90, 2800, 2000),
                1,
                evening -> evening.aside(0).eyeHeight(0).near(20));
        SurveyResult result = shot.survey();
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(5);
        assertThat(Built.finding(result, "daisy-4").reading().placement().turnDegrees())
                .isEqualTo(120);
        assertThat(result.photo()
                        .orElseThrow()
                        .camera()
                        .flatMap(camera -> camera.focalLength().stream().boxed().findFirst()))
                .isEmpty();
    }

    @Test
    void seesAFlatDisplayFromTheSide() {
        Built built = Gardens.daisies().built().move("daisy-2", 60, 0).reverse("daisy-5");
        SurveyResult result =
                Shot.of(built, 6, evening -> evening.aside(-30).near(20)).survey();
        Change.Moved moved = (Change.Moved)
                Built.finding(result, "daisy-2").reading().changes().get(0);
        assertThat(moved.dx()).isCloseTo(60, within(3.0));
        assertThat(Built.finding(result, "daisy-5").reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(4);
        assertThat(result.photo().orElseThrow().camera().orElseThrow().asideDegrees())
                .isCloseTo(-30, within(3.0));
    }

    /** Three rows, one behind the other: what stands farther back is seen where its depth puts it. */
    @Test
    void depthIsNoError() {
        Built built = new Built(Built.display(Gardens.DAISY, rows()));
        SurveyResult result =
                Shot.of(built, 2, evening -> evening.aside(25).near(14)).survey();
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(9);
        CameraStand stand = result.photo().orElseThrow().camera().orElseThrow();
        assertThat(stand.asideDegrees()).isCloseTo(25, within(0.1));
        assertThat(stand.distance()).isPresent();
    }

    /** From aside, what hangs farther back than described is seen elsewhere; laid there, it is in the other's place. */
    @Test
    void findsAnExchangeAcrossDepths() {
        Built built = new Built(Built.display(Gardens.DAISY, rows())).swap("daisy-2", "daisy-9");
        SurveyResult result =
                Shot.of(built, 2, evening -> evening.aside(25).near(14)).survey();
        assertThat(result.exchanges()).containsExactly(new Exchange(List.of("daisy-2", "daisy-9")));
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(7);
        assertThat(Built.finding(result, "daisy-2").reading().typicalMisfit()).isLessThan(1);
        Positions found = FoundMap.of(built.display(), result).map().stage();
        Positions hung = Shot.hung(built);
        for (int i = 0; i < hung.size(); i++) {
            assertThat(new double[] {found.x(i), found.y(i), found.z(i)})
                    .as("%s", i)
                    .containsExactly(new double[] {hung.x(i), hung.y(i), hung.z(i)}, within(3.0));
        }
    }

    private static String rows() {
        List<String> props = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            props.add("{\"name\": \"daisy-" + (i + 1) + "\", \"shape\": \"daisy\", \"at\": [" + 900 * (i % 3) + ", "
                    + (800 + 150 * (i % 2)) + ", " + 1200 * (i / 3) + "]}");
        }
        return String.join(",", props);
    }

    /** Places that were read in a program where y counts up. */
    @Test
    void takesPicturesThatCountUp() {
        Shot shot = Shot.of(new Built(Displays.garden()), 3, evening -> evening.near(16));
        Measurements up = changed(shot.measurements(), 1, -1);
        SurveyResult result = Survey.compare(Displays.garden(), up, OptionalDouble.empty());
        assertThat(result.photo().orElseThrow().countsDown()).isFalse();
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(18);
    }

    /** Shares of the picture's width have no pixels that an error could be as large as. */
    @Test
    void takesSharesOfThePicture() {
        Shot shot = Shot.of(new Built(Displays.garden()), 3, evening -> evening.near(16));
        Measurements shares = changed(shot.measurements(), 1 / 4000.0, 1 / 4000.0);
        SurveyResult result = Survey.compare(Displays.garden(), shares, OptionalDouble.empty());
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(18);
        assertThat(result.noise().sigma()).isEqualTo(3);
    }

    /** Whatever these places are, it is not this display. */
    @Test
    void saysWhereHardlyAnythingAgrees() {
        Random random = new Random(8);
        List<MeasuredProp> props = new ArrayList<>();
        for (MeasuredProp prop : Shot.of(new Built(Displays.garden()), 1, evening -> evening.near(16))
                .measurements()
                .props()) {
            double[] x = random.doubles(prop.count(), 0, 3000).toArray();
            double[] y = random.doubles(prop.count(), 0, 2000).toArray();
            props.add(prop.at(new Positions(x, y, new double[x.length])));
        }
        SurveyResult result = Survey.compare(
                Displays.garden(), new Measurements(props, Dimensions.FLAT, true), OptionalDouble.empty());
        assertThat(result.findings(Verdict.AS_DESCRIBED)).isEmpty();
        assertThat(SurveyReport.of(result))
                .contains("the picture is of another display, mirrored, or taken from behind");
    }

    @Test
    void saysInWordsWhereItWasTakenFrom() {
        Shot shot = Shot.of(new Built(Displays.garden()), 3, evening -> evening.near(16));
        assertThat(SurveyReport.of(shot.survey()))
                .contains("upright, y counts down; ")
                .contains("\ntaken from 25 degrees to the right and 2.7 degrees above the middle, 14")
                .contains(" mm away, with a focal length of ")
                .contains(" units of the picture and a lens bend of -0.05\n")
                .contains("depth is taken as described: what hangs nearer or farther seems moved aside")
                .contains("as much as a pixel of the picture, or 3 mm; the places scatter by less")
                .contains("18 props as described");
    }

    /** Read by hand from a picture: three pixels of each prop, each wrong by one and a half picture pixels. */
    @Test
    void fewPlacesDo() {
        Built built = new Built(Displays.garden())
                .turn("daisy-3", 90, -2820, 1750)
                .swap("daisy-7", "daisy-8")
                .reverse("fence");
        Random random = new Random(3);
        List<MeasuredProp> few = new ArrayList<>();
        for (MeasuredProp prop :
                Shot.of(built, 3, evening -> evening.near(16)).measurements().props()) {
            int[] which = {0, prop.count() / 2, prop.count() - 1};
            double[] x = new double[3];
            double[] y = new double[3];
            int[] pixels = new int[3];
            for (int i = 0; i < 3; i++) {
                pixels[i] = prop.pixel(which[i]);
                x[i] = prop.places().x(which[i]) + 1.5 * random.nextGaussian();
                y[i] = prop.places().y(which[i]) + 1.5 * random.nextGaussian();
            }
            few.add(new MeasuredProp(prop.propIndex(), pixels, new Positions(x, y, new double[3])));
        }
        SurveyResult result =
                Survey.compare(Displays.garden(), new Measurements(few, Dimensions.FLAT, true), OptionalDouble.empty());
        assertThat(result.findings(Verdict.DIFFERENT))
                .extracting(finding -> finding.prop().prop().name())
                .containsExactly("daisy-3", "daisy-7", "daisy-8", "fence");
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(14);
    }

    /** A mast is no plane: each of its pixels is looked for at its own depth. */
    @Test
    void seesWhatIsNoPlane() throws IOException {
        Built mast = new Built(Displays.of(Files.readString(Path.of("../demos/mast/display.json"))));
        SurveyResult result =
                Shot.of(mast, 3, evening -> evening.aside(-40).near(10)).survey();
        assertThat(result.findings(Verdict.AS_DESCRIBED))
                .hasSize(result.findings().size());
    }

    private static Measurements changed(Measurements photo, double timesX, double timesY) {
        List<MeasuredProp> props = new ArrayList<>();
        for (MeasuredProp prop : photo.props()) {
            double[] x = new double[prop.count()];
            double[] y = new double[prop.count()];
            for (int i = 0; i < x.length; i++) {
                x[i] = timesX * prop.places().x(i);
                y[i] = timesY * prop.places().y(i);
            }
            props.add(prop.at(new Positions(x, y, new double[x.length])));
        }
        return new Measurements(props, Dimensions.FLAT, true);
    }
}
