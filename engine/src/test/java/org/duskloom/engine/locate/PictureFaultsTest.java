package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.duskloom.engine.camera.Evening;
import org.duskloom.engine.camera.Exposure;
import org.duskloom.engine.camera.Lighting;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photos that are not what they should be: a sentence says which, and no number is told. */
class PictureFaultsTest {
    /** 6 bits, 4 of the remainder and one of parity: 24 pictures. */
    private static final PixelMap MAP = LocateTableTest.rings(50);

    private static final FindRun RUN = new FindRun(50, 1);
    private static final Exposure DARK = Exposure.of(1000);

    private static CameraShots shots(List<Exposure> exposures) {
        return shots(exposures, 0.8);
    }

    /** @param peak level of a light's middle; 1 burns out */
    private static CameraShots shots(List<Exposure> exposures, double peak) {
        Lighting lighting = (step, pixel) ->
                step < RUN.pictures().size() && RUN.isLit(RUN.pictures().get(step), pixel) ? 1 : 0;
        Evening evening =
                new Evening(MAP.stage(), 3).aside(20).hideShare(0.05).near(8).peak(peak);
        return new CameraShots(evening.camera(), lighting, exposures);
    }

    private static String refusal(Pictures pictures) {
        return refusal(pictures, MAP);
    }

    private static String refusal(Pictures pictures, PixelMap map) {
        FindRun run = new FindRun(map.pixelCount(), 1);
        PicturesRefusedException refused = catchThrowableOfType(
                PicturesRefusedException.class, () -> new Locator(pictures, run, map, true).locate());
        assertThat(refused).isNotNull();
        assertThat(refused.hint()).isNotEmpty();
        return (refused.picture().isEmpty() ? "" : refused.picture() + " ") + refused.getMessage();
    }

    private static String refusal(Consumer<List<Exposure>> fault) {
        List<Exposure> exposures =
                new ArrayList<>(Exposure.photos(RUN.pictures().size()));
        fault.accept(exposures);
        return refusal(shots(exposures));
    }

    @Test
    void photosWithoutAFaultAreTaken() throws Exception {
        Located located = new Locator(shots(Exposure.photos(24)), RUN, MAP, true).locate();
        assertThat(located.seen()).hasSizeGreaterThan(40);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | the dark one, the first, is missing",
                "1 | the one in which all are lit, the second, is missing",
                "2 | the one that belongs to photo-3.jpg is missing, picture 3 or 4 of steps.txt",
                "9 | the one that belongs to photo-9.jpg is missing, picture 9 or 10 of steps.txt",
                "23 | the one that belongs to photo-23.jpg is missing, picture 23 or 24 of steps.txt"
            })
    void aPhotoIsMissed(int missing, String said) {
        assertThat(refusal(exposures -> exposures.remove(missing)))
                .isEqualTo("23 pictures, but a run of 50 pixels has 24: " + said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5 | 14 | the one that belongs to photo-5.jpg is missing, picture 5 or 6 of steps.txt, and the one that"
                        + " belongs to photo-14.jpg is missing, picture 15 or 16 of steps.txt",
                "6 | 7 | pictures 7 and 8 of steps.txt are missing",
                "22 | 23 | pictures 23 and 24 of steps.txt are missing",
                "0 | 9 | the dark one, the first, is missing"
            })
    void twoPhotosAreMissed(int one, int other, String said) {
        assertThat(refusal(exposures -> {
                    exposures.remove(other);
                    exposures.remove(one);
                }))
                .isEqualTo("22 pictures, but a run of 50 pixels has 24: " + said);
    }

    @ParameterizedTest
    @CsvSource({"2, 4, 3", "10, 12, 11", "23, 25, 24"})
    void aPhotoIsDoubled(int doubled, int second, int first) {
        assertThat(refusal(exposures -> exposures.add(doubled, exposures.get(doubled))))
                .isEqualTo("25 pictures, but a run of 50 pixels has 24: photo-" + second
                        + ".jpg shows the same as photo-" + first + ".jpg");
    }

    /** The button was pressed twice in one step and not in the next. */
    @Test
    void aPhotoIsDoubledAndTheNextMissed() {
        assertThat(refusal(exposures -> exposures.set(7, exposures.get(6))))
                .isEqualTo("photo-8.jpg shows the same as photo-7.jpg; the step between two others is missing");
    }

    @Test
    void theDarkOrTheLitPhotoIsDoubled() {
        assertThat(refusal(exposures -> exposures.add(0, exposures.get(0))))
                .isEqualTo("25 pictures, but a run of 50 pixels has 24: photo-2.jpg is dark, as photo-1.jpg is");
        assertThat(refusal(exposures -> exposures.add(1, exposures.get(1))))
                .isEqualTo(
                        "25 pictures, but a run of 50 pixels has 24: photo-3.jpg shows all lights, as photo-2.jpg does");
    }

    /** As a copy that a browser or a telephone has made, with a name that sorts elsewhere. */
    @Test
    void aPhotoIsDoubledFarFromWhereItBelongs() {
        assertThat(refusal(exposures -> exposures.add(17, exposures.get(4))))
                .isEqualTo("25 pictures, but a run of 50 pixels has 24: photo-18.jpg shows the same as photo-5.jpg");
        assertThat(refusal(exposures -> exposures.set(17, exposures.get(4))))
                .isEqualTo("photo-18.jpg shows the same as photo-5.jpg, and not the step \"check 2 turned round\"");
    }

    /** All between is where something else should be. */
    @Test
    void aPhotoIsMissedAndAnotherDoubledLater() {
        assertThat(refusal(exposures -> {
                    exposures.add(19, exposures.get(18));
                    exposures.remove(5);
                }))
                .isEqualTo("photo-19.jpg shows the same as photo-18.jpg, and the one that belongs to photo-5.jpg is"
                        + " missing, picture 5 or 6 of steps.txt");
    }

    /** Of a blink, for instance. */
    @Test
    void aPhotoIsOfNoStep() {
        assertThat(refusal(exposures -> exposures.add(9, exposures.get(1))))
                .isEqualTo("25 pictures, but a run of 50 pixels has 24: photo-10.jpg shows all lights, as photo-2.jpg"
                        + " does");
        assertThat(refusal(exposures -> exposures.add(9, DARK)))
                .isEqualTo("25 pictures, but a run of 50 pixels has 24: photo-10.jpg shows no light");
        assertThat(refusal(exposures -> exposures.set(9, exposures.get(1))))
                .isEqualTo("photo-10.jpg shows all lights, as photo-2.jpg does");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | 1 | photo-1.jpg should be dark, but shows more light than photo-2.jpg, in which all should be lit",
                "6 | 7 | photo-7.jpg seems to be exchanged with photo-8.jpg",
                "6 | 11 | photo-7.jpg seems to be exchanged with photo-12.jpg",
                "6 | 10 | photo-7.jpg seems to be exchanged with photo-11.jpg",
                "7 | 11 | photo-8.jpg seems to be exchanged with photo-12.jpg",
                "7 | 10 | photo-8.jpg seems to be exchanged with photo-11.jpg"
            })
    void twoPhotosAreSwapped(int one, int other, String said) {
        assertThat(refusal(exposures -> Collections.swap(exposures, one, other)))
                .isEqualTo(said);
    }

    @Test
    void twoPairsAreSwapped() {
        assertThat(refusal(exposures -> {
                    Collections.swap(exposures, 4, 8);
                    Collections.swap(exposures, 5, 9);
                }))
                .isEqualTo("photo-5.jpg and photo-6.jpg seem to be exchanged with photo-9.jpg and photo-10.jpg");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | photo-1.jpg should be dark, and shows lights that are dark in later pictures",
                "1 | photo-2.jpg should show all lights, but the pairs that follow give together something else",
                "4 | photo-5.jpg does not give all lights together with photo-6.jpg, as the two should: it was made"
                        + " too early, too late or with another exposure",
                "11 | photo-12.jpg does not give all lights together with photo-11.jpg, as the two should: it was made"
                        + " too early, too late or with another exposure"
            })
    void aPhotoIsLateBySixtyPercent(int late, String said) {
        assertThat(refusal(exposures -> exposures.set(late, Exposure.late(late, 0.6))))
                .isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | photo-2.jpg shows hardly any light, but all lights should be lit in it",
                "8 | photo-9.jpg shows no light at all"
            })
    void aPhotoIsDark(int dark, String said) {
        assertThat(refusal(exposures -> exposures.set(dark, DARK))).isEqualTo(said);
    }

    @Test
    void allPhotosAreDark() {
        assertThat(refusal(exposures -> exposures.replaceAll(exposure -> DARK)))
                .isEqualTo("photo-2.jpg shows hardly any light, but all lights should be lit in it");
    }

    @Test
    void thereAreFarTooFew() {
        assertThat(refusal(exposures -> exposures.subList(3, 24).clear()))
                .isEqualTo("3 pictures, but a run of 50 pixels has 24");
        assertThat(refusal(exposures -> exposures.subList(18, 24).clear()))
                .isEqualTo("18 pictures, but a run of 50 pixels has 24; as many as for 9 to 16 pixels");
    }

    /** Two rounds of 24 photos, or one where there should be two. */
    @Test
    void theRoundsAreOthers() {
        assertThat(refusal(exposures -> exposures.addAll(List.copyOf(exposures))))
                .isEqualTo("48 pictures, but a run of 50 pixels has 24; as many as with --apart 2");
        assertThatThrownBy(() -> new Locator(shots(Exposure.photos(24)), new FindRun(50, 2), MAP, true).locate())
                .hasMessage("24 pictures, but a run of 50 pixels with --apart 2 has 48; as many as without --apart");
    }

    /** Pictures in an order that no run has. */
    @Test
    void noRunIsInTheFilm() {
        assertThat(refusal(exposures -> {
                    exposures.clear();
                    for (int i = 0; i < 200; i++) {
                        exposures.add(Exposure.of(i * 7 % 24));
                    }
                }))
                .isEqualTo("no whole run of 50 pixels is seen in these 200 pictures");
    }

    /** Three pictures a step are a film, but its run would have to be held for longer. */
    @Test
    @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void aFilmIsTooShortForAnyRun() {
        assertThat(refusal(exposures -> {
                    for (int i = 24; i < 72; i++) {
                        exposures.add(Exposure.of(i % 24));
                    }
                }))
                .isEqualTo("no whole run of 50 pixels is seen in these 72 pictures; as many as with --apart 3");
    }

    /** With 33 to 64 pixels a run has as many pictures; but where one was taken away, all behind it count anew. */
    @ParameterizedTest
    @CsvSource({"33", "40", "48", "49"})
    void theRunIsThatOfALongerDisplay(int pixels) throws Exception {
        assertThat(refusal(shots(Exposure.photos(24)), LocateTableTest.rings(pixels)))
                .isEqualTo("lights blink numbers up to 50, and there should be " + pixels + " pixels");
    }

    private static Pictures changed(int changed, PictureSize size, boolean white) {
        CameraShots shots = shots(Exposure.photos(24));
        return new Pictures() {
            @Override
            public int count() {
                return 24;
            }

            @Override
            public String name(int picture) {
                return shots.name(picture);
            }

            @Override
            public PictureSize size(int picture) {
                return picture == changed && size != null ? size : shots.size(picture);
            }

            @Override
            public void read(int picture, byte[] codes) throws java.io.IOException {
                shots.read(picture, codes);
                if (picture == changed && white) {
                    Arrays.fill(codes, (byte) 255);
                }
            }
        };
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "12"})
    void aPhotoIsWhite(int white) {
        assertThat(refusal(changed(white, null, true))).isEqualTo("photo-" + (white + 1) + ".jpg is white all over");
    }

    /** As a phone exposes by itself: what can be read of a light is its rim, which is not where it is. */
    @ParameterizedTest
    @CsvSource({"60", "70"})
    void lightsAreBurntOutTogether(double peak) {
        String said = refusal(shots(Exposure.photos(24), peak));
        assertThat(said)
                .isEqualTo("photo-2.jpg shows lights that are burnt out and run into each other, so that places would"
                        + " be wrong");
    }

    /** Dots that several of them light do not add up, which is no fault of the time. */
    @Test
    void lightsThatAreBurntOutArePutDownToTheExposure() {
        Evening evening = new Evening(MAP.stage(), 3).aside(20).near(6).peak(25);
        CameraShots burnt = CameraShots.photos(evening.camera(), RUN);
        assertThatThrownBy(() -> new Locator(burnt, RUN, MAP, true).locate())
                .isInstanceOfSatisfying(
                        PicturesRefusedException.class,
                        refused -> assertThat(refused.hint())
                                .isEqualTo(
                                        "take it again while nothing changes; --hold makes the steps longer; or all of them"
                                                + " with a shorter exposure, as the lights are burnt out"));
    }

    @Test
    void aPhotoHasAnotherSizeOrStandsUpright() {
        PictureSize usual = shots(Exposure.photos(24)).size(0);
        PictureSize half = new PictureSize(usual.width() / 2, usual.height() / 2);
        assertThat(refusal(changed(5, half, false)))
                .isEqualTo("photo-6.jpg has " + half + " dots, and the others " + usual);
        PictureSize turned = new PictureSize(usual.height(), usual.width());
        assertThat(refusal(changed(5, turned, false)))
                .isEqualTo("photo-6.jpg is upright, " + turned + ", and the others are wider than high, " + usual);
    }
}
