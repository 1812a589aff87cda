package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos of which there are too few or too many. */
class SequencesTest {
    private static final FindRun RUN = new FindRun(50, 1);
    private static final int COUNT = RUN.pictures().size();

    private static String refusal(FindRun run, Pictures pictures) {
        PicturesRefusedException refused = catchThrowableOfType(
                PicturesRefusedException.class, () -> Sequences.of(run, pictures, new Plane(pictures.size(0))));
        assertThat(refused).isNotNull();
        assertThat(refused.picture()).isEmpty();
        return DotPictures.said(refused);
    }

    /** Pictures that nobody looks at: their number says it all. */
    private record Counted(int count) implements Pictures {
        @Override
        public String name(int picture) {
            return "p" + (picture + 1);
        }

        @Override
        public PictureSize size(int picture) {
            return new PictureSize(4, 3);
        }

        @Override
        public void read(int picture, byte[] codes) {
            throw new AssertionError("is read");
        }
    }

    /** Of 12 pixels there are 18 in a round, as their words have 8 bits; of 17 to 32 there are 22, as they have 10. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 | 0   | 0 pictures, but a run of 12 pixels has 18
            1 | 1   | 1 picture, but a run of 12 pixels has 18
            1 | 10  | 10 pictures, but a run of 12 pixels has 18; as many as for 1 to 2 pixels
            1 | 22  | 22 pictures, but a run of 12 pixels has 18; as many as for 17 to 32 pixels
            1 | 36  | 36 pictures, but a run of 12 pixels has 18; as many as with --apart 2
            2 | 18  | 18 pictures, but a run of 12 pixels with --apart 2 has 36; as many as without --apart
            2 | 54  | 54 pictures, but a run of 12 pixels with --apart 2 has 36; as many as with --apart 3
            2 | 35  | 35 pictures, but a run of 12 pixels with --apart 2 has 36
            6 | 216 | 216 pictures, but a run of 12 pixels with --apart 6 has 108; as many as with --apart 12
            6 | 234 | 234 pictures, but a run of 12 pixels with --apart 6 has 108
            """)
    void saysHowManyThereShouldBe(int apart, int count, String said) {
        assertThat(refusal(new FindRun(12, apart), new Counted(count)))
                .isEqualTo(said + "; hand over one photo for each step that steps.txt calls a picture, or the pictures"
                        + " of a film, at least six for each step");
    }

    @Test
    void asManyAsThereAreStepsAreTheSteps() throws Exception {
        Sequence photos = Sequences.of(RUN, new Counted(COUNT), new Plane(new PictureSize(4, 3)));
        assertThat(photos.shown()).hasSize(COUNT);
        assertThat(IntStream.range(0, COUNT).map(step -> photos.shown().get(step)[0]))
                .containsExactlyElementsOf(IntStream.range(0, COUNT).boxed().toList());
    }

    private static final String AGAIN =
            "; take what is missing again with the camera where it was, or take all of them again";

    private static DotPictures without(int... missing) {
        DotPictures pictures = new DotPictures(RUN);
        for (int i = missing.length - 1; i >= 0; i--) {
            pictures.shots.remove(missing[i]);
        }
        return pictures;
    }

    private static String few(int count) {
        return count + " pictures, but a run of 50 pixels has 24: ";
    }

    /** Its partner is there, one place to the left where it was the first of the two. */
    @Test
    void anyPhotoMayBeMissing() {
        for (int missing = 2; missing < COUNT; missing++) {
            int partner = missing % 2 == 0 ? missing : missing - 1;
            int first = missing / 2 * 2 + 1;
            assertThat(refusal(RUN, without(missing)))
                    .isEqualTo(few(23) + "the one that belongs to p" + (partner + 1) + " is missing, picture " + first
                            + " or " + (first + 1) + " of steps.txt" + AGAIN);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 8, 12, 16, 32, 50, 64})
    void bothPhotosOfAnyStepMayBeMissing(int pixels) {
        FindRun run = new FindRun(pixels, 1);
        for (int missing = 2; missing < run.pictures().size(); missing += 2) {
            DotPictures pictures = new DotPictures(run);
            pictures.shots.remove(missing + 1);
            pictures.shots.remove(missing);
            assertThat(refusal(run, pictures))
                    .endsWith(": pictures " + (missing + 1) + " and " + (missing + 2) + " of steps.txt are missing"
                            + AGAIN);
        }
    }

    /** Of two that are the same and follow each other it is the second one that nobody wanted. */
    @Test
    void anyPhotoMayBeTwice() {
        for (int twice = 2; twice < COUNT; twice++) {
            DotPictures pictures = new DotPictures(RUN);
            pictures.shots.add(twice, pictures.step(twice));
            assertThat(refusal(RUN, pictures))
                    .isEqualTo(few(25) + "p" + (twice + 2) + " shows the same as p" + (twice + 1)
                            + "; leave out what is too many");
        }
    }

    @Test
    void aPhotoOfABlinkMayBeAnywhere() {
        for (int at = 2; at <= COUNT; at++) {
            DotPictures lit = new DotPictures(RUN);
            lit.shots.add(at, DotPictures.LIT);
            assertThat(refusal(RUN, lit))
                    .isEqualTo(few(25) + "p" + (at + 1) + " shows all lights, as p2 does; leave out what is too many");
            DotPictures dark = new DotPictures(RUN);
            dark.shots.add(at, DotPictures.DARK);
            assertThat(refusal(RUN, dark))
                    .isEqualTo(few(25) + "p" + (at + 1) + " shows no light; leave out what is too many");
        }
    }

    @Test
    void theFirstTwoAreKnownByHowMuchIsLit() {
        String again = "; take it again with the camera where it was, or take all of them again";
        assertThat(refusal(RUN, without(0))).isEqualTo(few(23) + "the dark one, the first, is missing" + again);
        assertThat(refusal(RUN, without(1)))
                .isEqualTo(few(23) + "the one in which all are lit, the second, is missing" + again);
        DotPictures dark = new DotPictures(RUN);
        dark.shots.add(0, DotPictures.DARK);
        assertThat(refusal(RUN, dark)).isEqualTo(few(25) + "p2 is dark, as p1 is; leave one of the two out");
    }
}
