package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How large and how long films become, worked out by hand. */
class FilmKindsTest {
    /** As wide as high, of 120 dots and 40 for each root of pixels: 160, 200, 320; then 480, which is the most. */
    @ParameterizedTest
    @CsvSource({"1, 160x160", "4, 200x200", "25, 320x320", "81, 480x480", "10000, 480x480"})
    void animationsOfFewPixelsAreSmall(int pixels, String size) {
        int side = (int) Math.sqrt(pixels);
        double[] x = IntStream.range(0, pixels).mapToDouble(i -> i % side).toArray();
        double[] y = IntStream.range(0, pixels).mapToDouble(i -> i / side).toArray();
        assertThat(new AnimationKind(Optional.empty(), 0).size(run(x, y))).hasToString(size);
    }

    /** A line is taken for four times as wide as high, a mast for half as wide. */
    @Test
    void linesHaveRoomRoundThem() {
        double[] along = IntStream.range(0, 400).asDoubleStream().toArray();
        AnimationKind animation = new AnimationKind(Optional.empty(), 0);
        assertThat(animation.size(run(along, new double[400]))).hasToString("640x160");
        assertThat(animation.size(run(new double[400], along))).hasToString("240x480");
        VideoKind video = new VideoKind(Optional.empty());
        assertThat(video.size(run(along, new double[400]))).hasToString("1280x320");
    }

    @Test
    void aGivenSizeIsKept() {
        Optional<FilmSize> given = Optional.of(new FilmSize(64, 32));
        RunInfo run = run(new double[9], new double[9]);
        assertThat(new AnimationKind(given, 1).size(run)).isEqualTo(given.get());
        assertThat(new VideoKind(given).size(run)).isEqualTo(given.get());
    }

    /** "FRAME" and a line feed, and three planes: 6 + 3 * 64 * 32 = 6150 bytes a frame; a day of them needs a long. */
    @Test
    void videoTellsHowLargeItBecomes() {
        VideoKind kind = new VideoKind(Optional.of(new FilmSize(64, 32)));
        RunInfo run = run(new double[1], new double[1]);
        assertThat(kind.bytes(run)).isEqualTo(100 * 6150);
        RunInfo day = RunInfo.ofWhole("", FrameRate.of(40), 3_456_000, run.pixels());
        assertThat(kind.bytes(day)).isEqualTo(21_254_400_000L);
    }

    /** Every fourth frame at 30,000/1001 a second: 4004/30,000 s, reduced. */
    @Test
    void framesThatAreLeftOutMakeLongerSteps() {
        RunInfo run = RunInfo.ofWhole("", new FrameRate(30_000, 1001), 100, FramePixels.unnamed(1));
        assertThat(FrameStep.time(run)).isEqualTo(new ExactTime(1001, 30_000));
        assertThat(FrameStep.time(run.only(FrameList.of(5, 9, 13)))).isEqualTo(new ExactTime(1001, 7500));
        assertThat(FrameStep.frames(FrameList.of(77))).isEqualTo(1);
        assertThat(FrameStep.frames(FrameList.of(new FrameSpan(3, 3)))).isEqualTo(1);
    }

    /** Nine tenths of the 90 frames that seem to fit are 81: 2.025 s at 40 a second, of every third frame 6.075 s. */
    @Test
    void aPageThatIsTooLargeSaysHowMuchFits() {
        RunInfo run = RunInfo.ofWhole("", FrameRate.of(40), 300, FramePixels.unnamed(1));
        assertThat(PageEstimate.refusal(run, 500_000_000, 90))
                .hasMessage("a page holds at most 500 MB, and this film would take more: about 2 s of it fit;"
                        + " take a part with --from and --to, fewer pixels with --on, or --every 2");
        long[] thirds = IntStream.range(0, 100).mapToLong(i -> 3L * i).toArray();
        RunInfo third = run.only(FrameList.of(thirds));
        assertThat(PageEstimate.refusal(third, 7_999_999, 90))
                .hasMessageStartingWith("a page holds at most 7 MB, ")
                .hasMessageContaining("about 6 s of it fit")
                .hasMessageEndingWith("--every 6");
    }

    /** An estimate that is off by far neither leaves the film nor goes below 0. */
    @Test
    void whatFitsIsAPartOfTheFilm() {
        RunInfo run = RunInfo.ofWhole("", FrameRate.of(40), 121, FramePixels.unnamed(1));
        assertThat(PageEstimate.refusal(run, 1_000_000, 1_000_000)).hasMessageContaining("about 3 s of it fit");
        assertThat(PageEstimate.refusal(run, 1_000_000, 0)).hasMessageContaining("about 0 s of it fit");
        assertThat(PageEstimate.refusal(run, 1_000_000, -5)).hasMessageContaining("about 0 s of it fit");
    }

    /** The middle of the box, not the mean: three of four pixels hang at the left. */
    @Test
    void theMiddleIsThatOfTheBox() {
        Positions places = new Positions(
                new double[] {-30, -30, -30, 50}, new double[] {0, 1, 2, 9}, new double[] {-4, -4, -4, -4});
        assertThat(PixelTable.centre(places)).containsExactly(10, 4.5, -4);
    }

    private static RunInfo run(double[] x, double[] y) {
        Positions places = new Positions(x, y, new double[x.length]);
        FramePixels pixels = new FramePixels(x.length, List.of(), Optional.of(places));
        return RunInfo.ofWhole("", FrameRate.of(40), 100, pixels);
    }
}
