package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photos of a round with a fault in any place of it: the one that is to blame is named, and what to do. */
class RoundReaderTest {
    private static final FindRun RUN = new FindRun(50, 1);
    private static final int COUNT = RUN.pictures().size();

    private static String refusal(Pictures pictures) {
        PicturesRefusedException refused = catchThrowableOfType(
                PicturesRefusedException.class,
                () -> RoundReader.read(pictures, Sequence.ofPhotos(RUN), 0, new Plane(pictures.size(0))));
        assertThat(refused).isNotNull();
        return DotPictures.said(refused);
    }

    private static DotPictures pictures() {
        return new DotPictures(RUN);
    }

    private static String again(int picture) {
        return "; play that step alone with --step \"" + RUN.name(RUN.pictures().get(picture))
                + "\" and take it again, with the camera where it was; or take all of them again";
    }

    @Test
    void goodPhotosAreRead() throws Exception {
        DotPictures pictures = pictures();
        Readings readings = RoundReader.read(pictures, Sequence.ofPhotos(RUN), 0, new Plane(pictures.size));
        WordReader words = new WordReader(readings, RUN.code());
        for (int pixel = 0; pixel < 50; pixel++) {
            int dot = readings.reference.dots.at(DotPictures.left(pixel), DotPictures.top(pixel));
            assertThat(words.pixel(dot)).isEqualTo(pixel);
        }
    }

    @Test
    void anyPhotoMayShowNoLightOrAll() {
        for (int picture = 2; picture < COUNT; picture++) {
            assertThat(refusal(pictures().set(picture, DotPictures.DARK)))
                    .isEqualTo("p" + (picture + 1) + " shows no light at all" + again(picture));
            assertThat(refusal(pictures().set(picture, DotPictures.LIT)))
                    .isEqualTo("p" + (picture + 1) + " shows all lights, as p2 does" + again(picture));
        }
    }

    /** The button was pressed twice in one step and not in the next. */
    @Test
    void anyPhotoMayBeThatOfTheStepBefore() {
        for (int picture = 3; picture < COUNT; picture += 2) {
            DotPictures pictures = pictures();
            assertThat(refusal(pictures.set(picture, pictures.step(picture - 1))))
                    .isEqualTo("p" + (picture + 1) + " shows the same as p" + picture
                            + "; the step between two others is missing" + again(picture));
        }
    }

    private static final String ORDER =
            "; put the photos in the order of steps.txt, one for each step that is called a picture, and try again";

    private static void swap(DotPictures pictures, int one, int other) {
        IntToDoubleFunction shot = pictures.shots.get(one);
        pictures.set(one, pictures.shots.get(other)).set(other, shot);
    }

    @Test
    void thePhotosOfAnyStepMayBeTurnedRound() {
        for (int picture = 2; picture < COUNT; picture += 2) {
            DotPictures pictures = pictures();
            swap(pictures, picture, picture + 1);
            assertThat(refusal(pictures))
                    .isEqualTo("p" + (picture + 1) + " seems to be exchanged with p" + (picture + 2) + ORDER);
        }
    }

    /** In whichever of two steps: the one photo is told with the other one. */
    @Test
    void anyTwoPhotosMayBeExchanged() {
        for (int one = 2; one < COUNT; one += 3) {
            for (int other = (one | 1) + 1; other < COUNT; other += 3) {
                DotPictures pictures = pictures();
                swap(pictures, one, other);
                assertThat(refusal(pictures))
                        .isEqualTo("p" + (one + 1) + " seems to be exchanged with p" + (other + 1) + ORDER);
            }
        }
    }

    /** Half of the lights are on already, or still. */
    @Test
    void anyPhotoMayBeLate() {
        for (int picture = 2; picture < COUNT; picture++) {
            DotPictures pictures = pictures();
            IntToDoubleFunction shot = pictures.step(picture);
            assertThat(refusal(pictures.set(picture, pixel -> 0.5 * shot.applyAsDouble(pixel))))
                    .isEqualTo("p" + (picture + 1) + " does not give all lights together with p"
                            + ((picture ^ 1) + 1) + ", as the two should: it was made too early, too late or with"
                            + " another exposure; take it again while nothing changes; --hold makes the steps longer");
        }
    }

    @Test
    void theFirstTwoMayBeWrong() {
        DotPictures swapped = pictures();
        swap(swapped, 0, 1);
        assertThat(refusal(swapped))
                .isEqualTo("p1 should be dark, but shows more light than p2, in which all should be lit; put the photos"
                        + " in the order of steps.txt and try again");
        assertThat(refusal(pictures().set(1, DotPictures.DARK)))
                .isEqualTo("p2 shows hardly any light, but all lights should be lit in it; is it the right picture, and"
                        + " is the exposure long enough to see the lights?");
        assertThat(refusal(pictures().set(0, pixel -> 0.4)))
                .isEqualTo("p1 should be dark, and shows lights that are dark in later pictures; take it again while"
                        + " nothing is lit");
        DotPictures third = pictures();
        assertThat(refusal(third.set(1, pixel -> 0.5 + 0.5 * third.step(2).applyAsDouble(pixel))))
                .startsWith("p2 should show all lights, but the pairs that follow give together something else; take it"
                        + " again while all are lit");
    }

    /** A run of 50 pixels has three lights in a picture at least; one in twenty may be dark, as on a bad wire. */
    @ParameterizedTest
    @CsvSource({"2, true", "3, false"})
    void aFewLightsAreEnough(int lights, boolean refused) {
        DotPictures pictures = pictures();
        for (int picture = 0; picture < COUNT; picture++) {
            IntToDoubleFunction shot = pictures.step(picture);
            pictures.set(picture, pixel -> pixel < lights ? shot.applyAsDouble(pixel) : 0);
        }
        PicturesRefusedException found = catchThrowableOfType(
                PicturesRefusedException.class,
                () -> RoundReader.read(pictures, Sequence.ofPhotos(RUN), 0, new Plane(pictures.size)));
        assertThat(found != null).isEqualTo(refused);
    }

    /** By daylight: from more than a quarter of white dots on nothing is looked for. */
    @ParameterizedTest
    @CsvSource({"0.24, false", "0.26, true"})
    void whiteDotsAreNoEvening(double share, boolean refused) {
        DotPictures pictures = pictures();
        Pictures daylight = new Pictures() {
            @Override
            public int count() {
                return COUNT;
            }

            @Override
            public String name(int picture) {
                return pictures.name(picture);
            }

            @Override
            public PictureSize size(int picture) {
                return pictures.size;
            }

            @Override
            public void read(int picture, byte[] codes) {
                pictures.read(picture, codes);
                for (int dot = 0; picture == 9 && dot < share * codes.length; dot++) {
                    codes[codes.length - 1 - dot] = (byte) 250;
                }
            }
        };
        String white = "p10 is white all over; take all pictures again with a shorter exposure, set by hand, when it is"
                + " dark";
        PicturesRefusedException found = catchThrowableOfType(
                PicturesRefusedException.class,
                () -> RoundReader.read(daylight, Sequence.ofPhotos(RUN), 0, new Plane(pictures.size)));
        assertThat(found != null && DotPictures.said(found).equals(white)).isEqualTo(refused);
    }

    /** Several pictures of a film show a step: the one in the middle is named. */
    @Test
    void ofAFilmTheMiddleOneIsNamed() {
        DotPictures pictures = pictures();
        pictures.shots.clear();
        for (int picture = 0; picture < COUNT; picture++) {
            for (int same = 0; same < 3; same++) {
                pictures.shots.add(picture == 7 ? DotPictures.DARK : pictures.step(picture));
            }
        }
        List<int[]> shown = IntStream.range(0, COUNT)
                .mapToObj(picture -> new int[] {3 * picture, 3 * picture + 1, 3 * picture + 2})
                .toList();
        PicturesRefusedException refused = catchThrowableOfType(
                PicturesRefusedException.class,
                () -> RoundReader.read(pictures, new Sequence(RUN, shown), 0, new Plane(pictures.size)));
        assertThat(refused.picture()).isEqualTo("p23");
        assertThat(refused).hasMessage("shows no light at all");
    }
}
