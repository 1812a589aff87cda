package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How frames are put together for who encodes several at a time, and what is freed when that goes wrong. */
@Timeout(60)
class EncodedBatchesTest {
    private static final int FRAMES = 140;

    private final AtomicInteger open = new AtomicInteger();

    /** Frames of so many pixels, all dark. */
    private FrameSource dark(int pixels) {
        return new FrameSource() {
            @Override
            public RunInfo info() {
                return RunInfo.ofWhole("Dark", FrameRate.of(40), FRAMES, FramePixels.unnamed(pixels));
            }

            @Override
            public FrameReader reader() {
                open.incrementAndGet();
                return new FrameReader() {
                    @Override
                    public void read(long frame, byte[] rgb, int offset) {}

                    @Override
                    public void close() {
                        open.decrementAndGet();
                    }
                };
            }
        };
    }

    /** How many frames came at a time. */
    private static final class Sizes implements EncodingSink {
        final List<Integer> sizes = new ArrayList<>();
        private final boolean hangs;
        private final long bytesPerFrame;

        Sizes(boolean hangs, long bytesPerFrame) {
            this.hangs = hangs;
            this.bytesPerFrame = bytesPerFrame;
        }

        @Override
        public FrameEncoder encoder() {
            return (frames, into) -> into.put(new byte[] {(byte) frames.count()}, 0, 1);
        }

        @Override
        public long bytesPerFrame() {
            return bytesPerFrame;
        }

        @Override
        public boolean hangsOnBatches() {
            return hangs;
        }

        @Override
        public void take(FrameBatch frames, EncodedBytes encoded) {
            assertThat(encoded.length()).as("bytes of the batch before").isEqualTo(1);
            assertThat(encoded.array()[0]).isEqualTo((byte) frames.count());
            sizes.add(frames.count());
        }
    }

    private List<Integer> sizes(int pixels, int threads, boolean hangs, long bytesPerFrame) throws Exception {
        Sizes sink = new Sizes(hangs, bytesPerFrame);
        new FrameRun(dark(pixels), FrameList.of(new FrameSpan(0, FRAMES)), threads).into(sink, Progress.SILENT);
        assertThat(sink.sizes.stream().mapToInt(Integer::intValue).sum()).isEqualTo(FRAMES);
        return sink.sizes;
    }

    /** Else a file would tell how many threads the computer had: of two computers each would write another. */
    @ParameterizedTest
    @CsvSource({"5, 0, 32", "30000, 0, 23", "5, 400000, 5"})
    void whatHangsOnBatchesGetsTheSameOnAnyNumberOfThreads(int pixels, long bytesPerFrame, int most) throws Exception {
        List<Integer> alone = sizes(pixels, 1, true, bytesPerFrame);
        assertThat(alone.get(0)).isEqualTo(most);
        for (int threads : new int[] {2, 3, 8, 100}) {
            assertThat(sizes(pixels, threads, true, bytesPerFrame))
                    .as("%s threads", threads)
                    .isEqualTo(alone);
        }
    }

    /** Where nobody sees it, each thread has work: of 140 frames 18 for eight; for one more than go together. */
    @ParameterizedTest
    @CsvSource({"1, 128", "2, 70", "8, 18", "140, 1", "200, 1"})
    void othersShareTheFramesAmongTheThreads(int threads, int most) throws Exception {
        List<Integer> sizes = sizes(5, threads, false, 0);
        assertThat(sizes).allMatch(size -> size <= most);
        assertThat(sizes.get(0)).isEqualTo(most);
    }

    /** More than 64 go together only where they take half a mebibyte at most. */
    @ParameterizedTest
    @CsvSource({"1000, 128", "2000, 87", "2730, 64", "2800, 64", "10922, 64", "20000, 34"})
    void manyFramesAreSmall(int pixels, int atATime) throws Exception {
        assertThat(sizes(pixels, 1, false, 0).get(0)).isEqualTo(atATime);
    }

    /** Two mebibytes are under way at a time at most, before and after encoding; a larger frame goes alone. */
    @ParameterizedTest
    @CsvSource({"69905, 0, 10", "5, 209715, 10", "700000, 0, 1", "5, 5000000, 1"})
    void largeFramesAreFewAtATime(int pixels, long bytesPerFrame, int atATime) throws Exception {
        assertThat(sizes(pixels, 1, true, bytesPerFrame).get(0)).isEqualTo(atATime);
    }

    /** A thread that cannot encode must leave no reader open: files would run out. */
    @Test
    void aReaderIsClosedWhereNoEncoderCanBeMade() {
        EncodingSink broken = new EncodingSink() {
            @Override
            public FrameEncoder encoder() {
                throw new IllegalStateException("no memory for it");
            }

            @Override
            public void take(FrameBatch frames, EncodedBytes encoded) throws IOException {
                throw new IOException("nothing comes here");
            }
        };
        FrameRun run = new FrameRun(dark(5), FrameList.of(new FrameSpan(0, FRAMES)), 3);
        assertThatThrownBy(() -> run.into(broken, Progress.SILENT)).hasRootCauseMessage("no memory for it");
        assertThat(open.get()).isZero();
    }
}
