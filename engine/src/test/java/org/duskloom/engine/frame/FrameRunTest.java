package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One run, many sinks. What a frame holds is worked out from its number here, so nothing is compared with itself. */
@Timeout(60)
class FrameRunTest {
    private static final int MOST_FRAMES_IN_CHUNK = 128;

    private final CountedFrames source = new CountedFrames();

    @ParameterizedTest
    @CsvSource({"1, 1", "1, 3", "2, 2", "3, 5", "9, 1"})
    void everySinkGetsEveryFrameInOrder(int threads, int sinks) throws Exception {
        List<KeptSink> kept = KeptSink.several(sinks);
        new FrameRun(source, CountedFrames.all(), threads).into(kept, Progress.SILENT);
        for (KeptSink sink : kept) {
            assertThat(sink.numbers).hasSize(CountedFrames.FRAMES);
            for (int frame = 0; frame < CountedFrames.FRAMES; frame++) {
                assertThat(sink.numbers.get(frame)).isEqualTo(frame);
                assertThat(sink.frames.get(frame)).as("frame %s", frame).isEqualTo(CountedFrames.expected(frame));
            }
            assertThat(sink.calls).startsWith("begin").endsWith("finish");
        }
    }

    @Test
    void tellsTheSinksWhatComes() throws Exception {
        KeptSink sink = new KeptSink();
        new FrameRun(source, FrameList.of(3, 9, 40), 2).into(sink, Progress.SILENT);
        assertThat(sink.numbers).containsExactly(3L, 9L, 40L);
        assertThat(sink.run.frames().count()).isEqualTo(3);
        assertThat(sink.run.showFrames()).isEqualTo(CountedFrames.FRAMES);
        assertThat(sink.run.rate()).isEqualTo(FrameRate.of(40));
        assertThat(sink.run.pixelCount()).isEqualTo(CountedFrames.PIXELS);
        assertThat(sink.run.title()).isEqualTo("Pond");
    }

    /**
     * However many frames and however slow the slowest, a few chunks are under way: 2 for each thread and one for each
     * sink.
     */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "1, 3", "2, 2"})
    void aSlowSinkHoldsAllBack(int threads, int sinks) throws Exception {
        AtomicLong ahead = new AtomicLong();
        List<KeptSink> all = new ArrayList<>(KeptSink.several(sinks - 1));
        all.add(new KeptSink() {
            @Override
            void keep(long frame, byte[] rgb) {
                if (frame % 50 == 0) {
                    Waits.pause(4);
                }
                ahead.accumulateAndGet(source.read.get() - frame, Math::max);
            }
        });
        new FrameRun(source, CountedFrames.all(), threads).into(all, Progress.SILENT);
        assertThat(ahead.get()).isBetween(1L, (2L * threads + sinks) * MOST_FRAMES_IN_CHUNK);
    }

    /** Each of two sinks waits until the other is at work as well: one after the other, they would wait for ever. */
    @Test
    void sinksWorkBesideEachOther() throws Exception {
        CountDownLatch bothAtWork = new CountDownLatch(2);
        List<KeptSink> meeting = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            meeting.add(new KeptSink() {
                @Override
                void keep(long frame, byte[] rgb) {
                    if (frame == 0) {
                        bothAtWork.countDown();
                        Waits.await(bothAtWork);
                    }
                }
            });
        }
        new FrameRun(source, CountedFrames.all(), 1).into(meeting, Progress.SILENT);
        assertThat(bothAtWork.getCount()).isZero();
    }

    /** One array for all: nothing is copied on the way to the sinks. */
    @Test
    void sinksReadTheSameMemory() throws Exception {
        Set<Integer> arrays = ConcurrentHashMap.newKeySet();
        List<FrameSink> sinks = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            sinks.add(frames -> arrays.add(System.identityHashCode(frames.rgb())));
        }
        new FrameRun(source, CountedFrames.all(), 2).into(sinks, Progress.SILENT);
        assertThat(arrays).hasSizeBetween(1, 2 * 2 + 3);
        assertThat(arrays).isSubsetOf(source.arrays);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void encodingIsDoneWhereFramesAreRendered(int sinks) throws Exception {
        Backwards encoding = new Backwards();
        List<FrameSink> all = new ArrayList<>(KeptSink.several(sinks - 1));
        all.add(encoding);
        new FrameRun(source, CountedFrames.all(), 4).into(all, Progress.SILENT);
        assertThat(encoding.threads).isSubsetOf(source.threads);
        assertThat(encoding.encoders.get()).isBetween(1, 4);
        byte[] written = encoding.written.array();
        assertThat(encoding.written.length()).isEqualTo(CountedFrames.FRAMES * 3 * CountedFrames.PIXELS);
        for (int frame = 0; frame < CountedFrames.FRAMES; frame++) {
            byte[] rgb = CountedFrames.expected(frame);
            for (int i = 0; i < rgb.length; i++) {
                assertThat(written[frame * rgb.length + i]).isEqualTo(rgb[rgb.length - 1 - i]);
            }
        }
    }

    @Test
    void anEncodingSinkTakesFramesThatNobodyEncoded() throws IOException {
        Backwards encoding = new Backwards();
        encoding.frame(0, new byte[] {1, 2, 3});
        assertThat(Arrays.copyOf(encoding.written.array(), encoding.written.length()))
                .containsExactly(3, 2, 1);
    }

    @Test
    void progressRisesAndComesToTheEnd() throws Exception {
        List<Long> told = Collections.synchronizedList(new ArrayList<>());
        new FrameRun(source, CountedFrames.all(), 3).into(KeptSink.several(3), (done, total) -> {
            assertThat(total).isEqualTo(CountedFrames.FRAMES);
            told.add(done);
        });
        assertThat(told).isSorted().endsWith((long) CountedFrames.FRAMES).doesNotHaveDuplicates();
    }

    @Test
    void framesThatAShowDoesNotHaveAreRefused() {
        FrameRun beyond = new FrameRun(source, FrameList.of(CountedFrames.FRAMES - 1L, CountedFrames.FRAMES), 1);
        assertThatThrownBy(() -> beyond.into(new KeptSink(), Progress.SILENT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("999..1001");
    }

    @Test
    void aRunNeedsASink() {
        assertThatThrownBy(() -> new FrameRun(source, CountedFrames.all(), 1).into(List.of(), Progress.SILENT))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Turns every frame round, byte by byte. */
    private static final class Backwards implements EncodingSink {
        final Set<Thread> threads = ConcurrentHashMap.newKeySet();
        final AtomicInteger encoders = new AtomicInteger();
        final EncodedBytes written = new EncodedBytes();

        @Override
        public FrameEncoder encoder() {
            encoders.incrementAndGet();
            return (frames, into) -> {
                threads.add(Thread.currentThread());
                int start = into.reserve(frames.bytes());
                for (int i = 0; i < frames.count(); i++) {
                    for (int k = 0; k < frames.frameBytes(); k++) {
                        into.array()[start + frames.offset(i) + k] =
                                frames.rgb()[frames.offset(i) + frames.frameBytes() - 1 - k];
                    }
                }
            };
        }

        @Override
        public void take(FrameBatch frames, EncodedBytes encoded) {
            written.put(encoded.array(), 0, encoded.length());
        }
    }
}
