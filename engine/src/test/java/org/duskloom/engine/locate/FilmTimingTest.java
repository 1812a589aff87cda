package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.find.FindStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Films of a dot for each pixel, of which it is known what was lit when. */
class FilmTimingTest {
    private static final FindRun RUN = new FindRun(12, 1);
    private static final PictureSize SIZE = new PictureSize(16, 8);

    /** What is seen from a time of the film to another one, in pictures. */
    private record Film(FindRun run, double start, double hold, int count, int lamps) implements Pictures {
        @Override
        public String name(int picture) {
            return "film-" + picture;
        }

        @Override
        public PictureSize size(int picture) {
            return SIZE;
        }

        /** The step that is played in the middle of a picture, or null. */
        FindStep step(int picture) {
            double halves = (picture + 0.5 - start) / hold * 2;
            return run.steps().stream()
                    .filter(step -> halves >= step.startHalves() && halves < step.startHalves() + step.halves())
                    .findFirst()
                    .orElse(null);
        }

        @Override
        public void read(int picture, byte[] codes) {
            Arrays.fill(codes, (byte) 5);
            FindStep step = step(picture);
            for (int pixel = 0; step != null && pixel < run.code().pixelCount(); pixel++) {
                codes[pixel] = (byte) (run.isLit(step, pixel) ? 200 : 5);
            }
            Random flicker = new Random(picture);
            for (int lamp = 0; lamp < lamps; lamp++) {
                codes[40 + lamp] = (byte) (flicker.nextDouble() < 0.85 ? 220 : 10);
            }
        }
    }

    private static Film film(double start, double hold, int lamps) {
        int count = (int) Math.ceil(start + hold * RUN.halves() / 2 + 7);
        return new Film(RUN, start, hold, count, lamps);
    }

    /** Each picture that is taken for a step was taken while that step was played. */
    @ParameterizedTest
    @CsvSource({"0, 6, 0", "13.3, 7.5, 0", "40, 12, 0", "5.5, 30, 0", "8, 9.9, 30", "2.25, 25, 60"})
    void findsTheRunInAFilm(double start, double hold, int lamps) throws Exception {
        Film film = film(start, hold, lamps);
        Sequence sequence = Sequences.of(RUN, film, new Plane(SIZE));
        assertThat(sequence.shown()).hasSameSizeAs(RUN.pictures());
        for (int i = 0; i < sequence.shown().size(); i++) {
            for (int picture : sequence.shown().get(i)) {
                assertThat(film.step(picture))
                        .as("picture %s", picture)
                        .isEqualTo(RUN.pictures().get(i));
            }
        }
    }

    /** Of a step that is held for long several pictures are taken, which lessens their noise. */
    @Test
    void takesSeveralPicturesOfALongStep() throws Exception {
        List<int[]> shown = Sequences.of(RUN, film(3, 20, 0), new Plane(SIZE)).shown();
        assertThat(shown).allSatisfy(pictures -> assertThat(pictures).hasSizeBetween(2, 3));
    }

    /** A film that ends before the run does, or in which nothing blinks, is refused and not guessed at. */
    @Test
    void refusesHalfARun() {
        Film half = new Film(RUN, 5, 10, 90, 0);
        assertThatThrownBy(() -> Sequences.of(RUN, half, new Plane(SIZE)))
                .isInstanceOf(PicturesRefusedException.class)
                .hasMessageContaining("no whole run of 12 pixels is seen in these 90 pictures");
        Film nothing = new Film(RUN, 1e6, 10, 200, 0);
        assertThatThrownBy(() -> Sequences.of(RUN, nothing, new Plane(SIZE)))
                .isInstanceOf(PicturesRefusedException.class);
    }

    /** Lamps are lit for most of the time, lights for half of it: they are left out of what is counted. */
    @Test
    void anOverviewCountsWhatIsLitButNoLamps() throws Exception {
        Film film = film(0, 6, 50);
        Overview overview = Overview.of(film, new Plane(SIZE));
        assertThat(overview.count()).isEqualTo(film.count());
        for (int picture = 0; picture < film.count(); picture++) {
            FindStep step = film.step(picture);
            int lit = 0;
            for (int pixel = 0; step != null && pixel < 12; pixel++) {
                lit += RUN.isLit(step, pixel) ? 1 : 0;
            }
            assertThat(overview.lit(picture)).as("picture %s", picture).isEqualTo(lit);
        }
    }

    /** What is not lit whenever all should be, or is lit when none should, is no light of the run. */
    @Test
    void keepsWhatFollowsTheBlinks() throws Exception {
        byte[][] dots = {{0, 0, 0, 0}, {100, 100, 0, 0}, {100, 0, 100, 0}, {0, 0, 100, 0}, {100, 100, 0, 0}};
        Pictures pictures = new Pictures() {
            @Override
            public int count() {
                return dots.length;
            }

            @Override
            public String name(int picture) {
                return "";
            }

            @Override
            public PictureSize size(int picture) {
                return new PictureSize(4, 1);
            }

            @Override
            public void read(int picture, byte[] codes) {
                System.arraycopy(dots[picture], 0, codes, 0, 4);
            }
        };
        Overview overview = Overview.of(pictures, new Plane(new PictureSize(4, 1)));
        assertThat(overview.lit(1)).isEqualTo(2);
        assertThat(overview.lit(2)).isEqualTo(2);
        overview.keepFollowing(new int[] {1, 2, 4}, new int[] {0, 3});
        assertThat(overview.lit(1)).as("the first and the second follow").isEqualTo(2);
        assertThat(overview.lit(2)).as("the third is lit in a dark picture").isEqualTo(1);
    }

    @Test
    void photosAreTheirSteps() throws Exception {
        FindRun rounds = new FindRun(12, 3);
        Sequence photos = Sequence.ofPhotos(rounds);
        int each = rounds.pictures().size() / 3;
        assertThat(photos.round(2)).hasSize(each);
        assertThat(photos.round(2).get(0)).containsExactly(2 * each);
        assertThat(photos.round(0).get(each - 1)).containsExactly(each - 1);
        assertThat(Sequence.middle(new int[] {7})).isEqualTo(7);
        assertThat(Sequence.middle(new int[] {7, 8, 9})).isEqualTo(8);
    }
}
