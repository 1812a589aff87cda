package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;

class FilmPiecesTest {
    private static final FrameRate RATE = new FrameRate(40, 1);

    /** In any order, and from several threads, the frames are those of the source. */
    @Test
    void holdTheFramesOfTheShow() {
        FilmPieces pieces = new FilmPieces(Films.show(RATE, 75));
        assertThat(pieces.pieceFrames()).isEqualTo(32);
        assertThat(pieces.count()).isEqualTo(3);
        List<Integer> order = List.of(2, 0, 1, 2, 1, 0);
        order.parallelStream().forEach(piece -> assertFrames(pieces, piece, piece == 2 ? 11 : 32));
    }

    private static void assertFrames(FilmPieces pieces, int piece, int frames) {
        byte[] series = inflated(pieces, piece);
        assertThat(series).hasSize(3 * Films.PIXELS * frames);
        for (int value = 0; value < 3 * Films.PIXELS; value++) {
            int row = (value % 3 * Films.PIXELS + value / 3) * frames;
            byte sum = 0;
            for (int i = 0; i < frames; i++) {
                sum += series[row + i];
                assertThat(sum).isEqualTo(Films.frame(32L * piece + i)[value]);
            }
        }
    }

    private static byte[] inflated(FilmPieces pieces, int piece) {
        try {
            byte[] packed = pieces.packed(piece);
            ByteArrayInputStream in =
                    new ByteArrayInputStream(packed, PieceEncoder.HEAD_BYTES, packed.length - PieceEncoder.HEAD_BYTES);
            try (InflaterInputStream series = new InflaterInputStream(in, new Inflater(true))) {
                return series.readAllBytes();
            }
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }

    @Test
    void areNoMoreThanThereAre() {
        FilmPieces pieces = new FilmPieces(Films.show(RATE, 64));
        assertThat(pieces.count()).isEqualTo(2);
        for (int piece : new int[] {-1, 2, Integer.MAX_VALUE}) {
            assertThatThrownBy(() -> pieces.packed(piece)).isInstanceOf(IndexOutOfBoundsException.class);
        }
    }

    /** Two MB at most, where a frame is not more; and in a day at 100 frames a second not millions of pieces. */
    @Test
    void areNeitherLargeNorVeryMany() {
        assertThat(new FilmPieces(show(100_000, 4000)).pieceFrames()).isEqualTo(6);
        assertThat(new FilmPieces(show(1_000_000, 4000)).pieceFrames()).isEqualTo(1);
        assertThat(new FilmPieces(show(100, 8_640_000)).count()).isEqualTo(10_000);
        assertThat(new FilmPieces(show(1, 1)).count()).isEqualTo(1);
    }

    /** A reader that has failed is in no state to be asked again. */
    @Test
    void readAnewAfterAFault() throws IOException {
        int[] readers = {0};
        RunInfo info = show(1, 40).info();
        FilmPieces pieces = new FilmPieces(new FrameSource() {
            @Override
            public RunInfo info() {
                return info;
            }

            @Override
            public FrameReader reader() {
                boolean isFirst = readers[0]++ == 0;
                return (frame, rgb, offset) -> {
                    if (isFirst) {
                        throw new IOException("gone");
                    }
                };
            }
        });
        assertThatThrownBy(() -> pieces.packed(0)).hasMessage("gone");
        IntStream.range(0, 3).forEach(again -> inflated(pieces, 1));
        assertThat(readers[0]).isEqualTo(2);
    }

    private static FrameSource show(int pixels, long frames) {
        RunInfo info = RunInfo.ofWhole("", RATE, frames, FramePixels.unnamed(pixels));
        return new FrameSource() {
            @Override
            public RunInfo info() {
                return info;
            }

            @Override
            public FrameReader reader() {
                return (frame, rgb, offset) -> {};
            }
        };
    }
}
