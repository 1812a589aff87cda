package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips of two pixels with cells of 8 dots: 48 dots of edges, and 8 for each of 30 columns or more. */
class TimeStripKindTest {
    @TempDir
    private Path folder;

    /** Every frame, or every n-th: as many columns as frames come, if there may be so many; else half, or a third. */
    @ParameterizedTest
    @CsvSource({"60, 1, 100, 60", "60, 4, 100, 60", "120, 4, 60, 60", "120, 1, 119, 60", "121, 7, 60, 41"})
    void hasAColumnForEachFrameThatComes(int frames, int apart, int mostColumns, int columns) throws IOException {
        long[] numbers = new long[frames];
        for (int i = 0; i < frames; i++) {
            numbers[i] = 5 + (long) i * apart;
        }
        Path file = folder.resolve("time.png");
        RunInfo run = run().only(FrameList.of(numbers));
        try (FrameSink sink = sink(file, mostColumns)) {
            sink.begin(run);
            for (long number : numbers) {
                sink.frame(number, new byte[6]);
            }
            sink.finish();
        }
        assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(48 + 8 * columns);
    }

    /**
     * Of a million pixels 16,130 are shown, and 25 million cells at most: 1,549 columns. So 4,800 frames have one in
     * four. Where all pixels are shown up to 4,800 fit.
     */
    @Test
    void fewerPixelsLeaveRoomForColumns() {
        TimeStripKind kind = new TimeStripKind(OptionalInt.empty(), 4_800);
        FrameList frames = FrameList.of(new FrameSpan(100, 4_900));
        assertThat(kind.columns(scene(1_000_000), frames))
                .hasSize(1_200)
                .startsWith(100, 104)
                .endsWith(4_896);
        assertThat(kind.columns(scene(10_000), frames)).hasSize(4_800);
        assertThat(TimeStripKind.pixelsPerRow(1_000_000)).isEqualTo(62);
        assertThat(TimeStripKind.pixelsPerRow(65_535)).isEqualTo(1);
    }

    private static PreviewScene scene(int pixels) {
        double[] x = new double[pixels];
        return new PreviewScene("", x, x, List.of(), frame -> frame / 40.0);
    }

    /** Its file is begun before the run is known, and goes if the picture is then refused, or never begun. */
    @Test
    void leavesNothingWhereThereIsNoPicture() throws IOException {
        try (FrameSink sink = sink(folder.resolve("time.png"), 100)) {
            RunInfo nowhere = RunInfo.ofWhole("", FrameRate.of(40), 9, FramePixels.unnamed(2));
            assertThatThrownBy(() -> sink.begin(nowhere)).isInstanceOf(IllegalArgumentException.class);
        }
        sink(folder.resolve("other.png"), 100).close();
        assertThat(folder).isEmptyDirectory();
    }

    private static FrameSink sink(Path file, int mostColumns) throws IOException {
        return new TimeStripKind(OptionalInt.of(8), mostColumns).into(StagedFile.open(file, IfExists.REFUSE));
    }

    private static RunInfo run() {
        Positions places = new Positions(new double[] {0, 1}, new double[2], new double[2]);
        return RunInfo.ofWhole("", FrameRate.of(40), 1000, new FramePixels(2, List.of(), Optional.of(places)));
    }
}
