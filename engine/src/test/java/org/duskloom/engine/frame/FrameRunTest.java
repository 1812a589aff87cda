package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One run, many sinks. What a frame holds is worked out from its number here, so nothing is compared with itself. */
@Timeout(60)
class FrameRunTest {
    private static final int PIXELS = 7;
    private static final int FRAMES = 500;
    private static final int MOST_FRAMES_IN_CHUNK = 64;

    private final Counted source = new Counted();

    /** An interruption that a test has caused must not reach the next. */
    @AfterEach
    void forgetInterruptions() {
        Thread.interrupted();
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "1, 3", "2, 2", "3, 5", "9, 1"})
    void everySinkGetsEveryFrameInOrder(int threads, int sinks) throws Exception {
        List<Kept> kept = kept(sinks);
        new FrameRun(source, all(), threads).into(kept, Progress.SILENT);
        for (Kept sink : kept) {
            assertThat(sink.numbers).hasSize(FRAMES);
            for (int frame = 0; frame < FRAMES; frame++) {
                assertThat(sink.numbers.get(frame)).isEqualTo(frame);
                assertThat(sink.frames.get(frame)).as("frame %s", frame).isEqualTo(expected(frame));
            }
            assertThat(sink.calls).startsWith("begin").endsWith("finish");
        }
    }

    @Test
    void tellsTheSinksWhatComes() throws Exception {
        Kept sink = new Kept();
        new FrameRun(source, FrameList.of(3, 9, 40), 2).into(sink, Progress.SILENT);
        assertThat(sink.numbers).containsExactly(3L, 9L, 40L);
        assertThat(sink.run.frames().count()).isEqualTo(3);
        assertThat(sink.run.showFrames()).isEqualTo(FRAMES);
        assertThat(sink.run.rate()).isEqualTo(FrameRate.of(40));
        assertThat(sink.run.pixelCount()).isEqualTo(PIXELS);
        assertThat(sink.run.title()).isEqualTo("Pond");
    }

    /** All sinks begin before any frame is made: what one refuses costs nothing. */
    @Test
    void aSinkThatRefusesToBeginEndsTheRunBeforeItStarts() {
        IOException tooLarge = new IOException("too large");
        Kept refusing = new Kept() {
            @Override
            public void begin(RunInfo run) throws IOException {
                throw tooLarge;
            }
        };
        Kept other = new Kept();
        assertThatThrownBy(() -> new FrameRun(source, all(), 2).into(List.of(other, refusing), Progress.SILENT))
                .isSameAs(tooLarge);
        assertThat(other.calls).containsExactly("begin");
        assertThat(source.read.get()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "1, 40", "3, 0", "3, 40", "3, 499"})
    void aFailingSinkEndsTheRunCleanly(int sinks, long failsAt) {
        IOException full = new IOException("no space left on device");
        List<Kept> others = kept(sinks - 1);
        Kept failing = new Kept() {
            @Override
            void keep(long frame, byte[] rgb) throws IOException {
                super.keep(frame, rgb);
                if (frame == failsAt) {
                    throw full;
                }
            }
        };
        List<Kept> all = new ArrayList<>(others);
        all.add(failing);
        assertThatThrownBy(() -> new FrameRun(source, all(), 2).into(all, Progress.SILENT))
                .isSameAs(full);
        assertThat(failing.numbers).hasSize((int) failsAt + 1);
        assertThat(failing.calls).doesNotContain("finish");
        others.forEach(other -> assertThat(other.calls).doesNotContain("close"));
        assertNothingGoesOn(all);
    }

    /** A full disk is often told of only when the last bytes are brought to it. */
    @Test
    void aSinkThatCannotFinishEndsTheRun() {
        IOException late = new IOException("told late");
        Kept failing = new Kept() {
            @Override
            public void finish() throws IOException {
                throw late;
            }
        };
        assertThatThrownBy(() -> new FrameRun(source, all(), 2).into(List.of(new Kept(), failing), Progress.SILENT))
                .isSameAs(late);
    }

    /** A reader that stands still holds its sink back for ever; the failure of another must end that too. */
    @Test
    void aFailureInterruptsWhatOtherSinksWaitFor() throws Exception {
        CountDownLatch stuck = new CountDownLatch(1);
        AtomicBoolean interrupted = new AtomicBoolean();
        Kept waiting = new Kept() {
            @Override
            void keep(long frame, byte[] rgb) throws IOException {
                if (frame == 64) {
                    stuck.countDown();
                    try {
                        new CountDownLatch(1).await();
                    } catch (InterruptedException expected) {
                        interrupted.set(true);
                        throw new IOException("interrupted");
                    }
                }
            }
        };
        IOException broken = new IOException("broken");
        Kept failing = new Kept() {
            @Override
            void keep(long frame, byte[] rgb) throws IOException {
                if (frame == 70) {
                    await(stuck);
                    throw broken;
                }
            }
        };
        assertThatThrownBy(() -> new FrameRun(source, all(), 2).into(List.of(waiting, failing), Progress.SILENT))
                .isSameAs(broken);
        assertThat(interrupted).isTrue();
    }

    /** A write to a device that does not answer cannot be interrupted: those who wait are to hear what failed. */
    @Test
    void whatDoesNotStopIsLeftAfterAWhileAndSaidSo() throws Exception {
        CountDownLatch stuck = new CountDownLatch(1);
        CountDownLatch answered = new CountDownLatch(1);
        Kept waiting = new Kept() {
            @Override
            void keep(long frame, byte[] rgb) {
                stuck.countDown();
                while (answered.getCount() > 0) {
                    Thread.onSpinWait();
                }
            }
        };
        Handover handover = new Handover(source, source.info(), List.of(waiting, new Kept()), 1, Progress.SILENT);
        Thread run = new Thread(() -> assertThatThrownBy(handover::handOver).isInstanceOf(InterruptedException.class));
        run.start();
        await(stuck);
        run.interrupt();
        run.join();
        assertThat(handover.stop(Duration.ofMillis(100))).isFalse();
        assertThat(waiting.calls).doesNotContain("close");
        answered.countDown();
        Thread.currentThread().interrupt();
        assertThat(handover.stop(Duration.ofSeconds(30))).isTrue();
        assertThat(Thread.interrupted()).isTrue();
        handover.close();
        assertThat(source.closed.get()).isEqualTo(source.opened.get());
    }

    @Test
    void faultsInTheProgramAreNotSwallowed() {
        ArithmeticException fault = new ArithmeticException("in a sink");
        Kept failing = new Kept() {
            @Override
            void keep(long frame, byte[] rgb) {
                throw fault;
            }
        };
        assertThatThrownBy(() -> new FrameRun(source, all(), 2).into(List.of(new Kept(), failing), Progress.SILENT))
                .isSameAs(fault);
    }

    @Test
    void aSourceThatFailsEndsTheRunWithItsOwnWords() {
        source.failure = new IOException("became shorter");
        Kept sink = new Kept();
        assertThatThrownBy(() -> new FrameRun(source, all(), 3).into(List.of(sink, new Kept()), Progress.SILENT))
                .isSameAs(source.failure);
        assertThat(sink.calls).doesNotContain("finish");
    }

    /**
     * However many frames and however slow the slowest, a few chunks are under way: 2 for each thread and one for each
     * sink.
     */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "1, 3", "2, 2"})
    void aSlowSinkHoldsAllBack(int threads, int sinks) throws Exception {
        AtomicLong ahead = new AtomicLong();
        List<Kept> all = new ArrayList<>(kept(sinks - 1));
        all.add(new Kept() {
            @Override
            void keep(long frame, byte[] rgb) {
                if (frame % 50 == 0) {
                    pause(4);
                }
                ahead.accumulateAndGet(source.read.get() - frame, Math::max);
            }
        });
        new FrameRun(source, all(), threads).into(all, Progress.SILENT);
        assertThat(ahead.get()).isBetween(1L, (2L * threads + sinks) * MOST_FRAMES_IN_CHUNK);
    }

    /** Each of two sinks waits until the other is at work as well: one after the other, they would wait for ever. */
    @Test
    void sinksWorkBesideEachOther() throws Exception {
        CountDownLatch bothAtWork = new CountDownLatch(2);
        List<Kept> meeting = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            meeting.add(new Kept() {
                @Override
                void keep(long frame, byte[] rgb) {
                    if (frame == 0) {
                        bothAtWork.countDown();
                        await(bothAtWork);
                    }
                }
            });
        }
        new FrameRun(source, all(), 1).into(meeting, Progress.SILENT);
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
        new FrameRun(source, all(), 2).into(sinks, Progress.SILENT);
        assertThat(arrays).hasSizeBetween(1, 2 * 2 + 3);
        assertThat(arrays).isSubsetOf(source.arrays);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void encodingIsDoneWhereFramesAreRendered(int sinks) throws Exception {
        Backwards encoding = new Backwards();
        List<FrameSink> all = new ArrayList<>(kept(sinks - 1));
        all.add(encoding);
        new FrameRun(source, all(), 4).into(all, Progress.SILENT);
        assertThat(encoding.threads).isSubsetOf(source.threads);
        assertThat(encoding.encoders.get()).isBetween(1, 4);
        byte[] written = encoding.written.array();
        assertThat(encoding.written.length()).isEqualTo(FRAMES * 3 * PIXELS);
        for (int frame = 0; frame < FRAMES; frame++) {
            byte[] rgb = expected(frame);
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
        new FrameRun(source, all(), 3).into(kept(3), (done, total) -> {
            assertThat(total).isEqualTo(FRAMES);
            told.add(done);
        });
        assertThat(told).isSorted().endsWith((long) FRAMES).doesNotHaveDuplicates();
    }

    @Test
    void aCallerThatIsInterruptedStopsAllSinks() {
        List<Kept> sinks = kept(2);
        Thread caller = Thread.currentThread();
        sinks.add(new Kept() {
            @Override
            void keep(long frame, byte[] rgb) throws IOException {
                super.keep(frame, rgb);
                if (frame == 5) {
                    caller.interrupt();
                    pause(50);
                }
            }
        });
        assertThatThrownBy(() -> new FrameRun(source, all(), 2).into(sinks, Progress.SILENT))
                .isInstanceOf(InterruptedException.class);
        sinks.forEach(sink -> assertThat(sink.calls).doesNotContain("finish"));
        assertNothingGoesOn(sinks);
    }

    @Test
    void readersAreClosedAlways() throws Exception {
        new FrameRun(source, all(), 3).into(new Kept(), Progress.SILENT);
        source.failure = new IOException("gone");
        assertThatThrownBy(() -> new FrameRun(source, all(), 3).into(new Kept(), Progress.SILENT))
                .isSameAs(source.failure);
        assertThat(source.opened.get()).isPositive().isEqualTo(source.closed.get());
    }

    /** One that cannot be closed, as of a file on a drive that is gone, is no reason to leave the others open. */
    @Test
    void aReaderThatCannotBeClosedKeepsNoOtherOpen() throws Exception {
        source.closeFailures = true;
        Handover handover = new Handover(source, source.info(), List.of(new Kept()), 3, Progress.SILENT);
        // The first frame waits for another reader's, so there are two at least.
        source.together = new CountDownLatch(2);
        handover.handOver();
        assertThatThrownBy(handover::close)
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith("reader ")
                .satisfies(first -> assertThat(first.getSuppressed()).hasSize(source.opened.get() - 1));
        assertThat(source.opened.get()).isGreaterThan(1).isEqualTo(source.closed.get());
    }

    @Test
    void framesThatAShowDoesNotHaveAreRefused() {
        FrameRun beyond = new FrameRun(source, FrameList.of(FRAMES - 1L, FRAMES), 1);
        assertThatThrownBy(() -> beyond.into(new Kept(), Progress.SILENT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("499..501");
    }

    @Test
    void aRunNeedsASink() {
        assertThatThrownBy(() -> new FrameRun(source, all(), 1).into(List.of(), Progress.SILENT))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static FrameList all() {
        return FrameList.of(new FrameSpan(0, FRAMES));
    }

    private static List<Kept> kept(int count) {
        List<Kept> sinks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sinks.add(new Kept());
        }
        return sinks;
    }

    private static byte[] expected(long frame) {
        byte[] rgb = new byte[3 * PIXELS];
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = (byte) (31 * frame + 7 * i);
        }
        return rgb;
    }

    /** What sinks hold stays as it is once a run is over. */
    private static void assertNothingGoesOn(List<Kept> sinks) {
        List<Integer> before = sinks.stream().map(sink -> sink.numbers.size()).toList();
        pause(20);
        assertThat(sinks.stream().map(sink -> sink.numbers.size()).toList()).isEqualTo(before);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Keeps copies of what it is handed. */
    private static class Kept implements FrameSink {
        final List<Long> numbers = Collections.synchronizedList(new ArrayList<>());
        final List<byte[]> frames = new ArrayList<>();
        final List<String> calls = Collections.synchronizedList(new ArrayList<>());
        RunInfo run;

        @Override
        public void begin(RunInfo begun) throws IOException {
            calls.add("begin");
            run = begun;
        }

        @Override
        public void take(FrameBatch batch) throws IOException {
            for (int i = 0; i < batch.count(); i++) {
                int from = batch.offset(i);
                keep(batch.frame(i), Arrays.copyOfRange(batch.rgb(), from, from + batch.frameBytes()));
            }
        }

        void keep(long frame, byte[] rgb) throws IOException {
            numbers.add(frame);
            frames.add(rgb);
        }

        @Override
        public void finish() throws IOException {
            calls.add("finish");
        }

        @Override
        public void close() {
            calls.add("close");
        }
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

    /** Frames that follow from their numbers. */
    private static final class Counted implements FrameSource {
        final AtomicLong read = new AtomicLong();
        final AtomicInteger opened = new AtomicInteger();
        final AtomicInteger closed = new AtomicInteger();
        final Set<Thread> threads = ConcurrentHashMap.newKeySet();
        final Set<Integer> arrays = ConcurrentHashMap.newKeySet();
        volatile IOException failure;
        volatile boolean closeFailures;
        volatile CountDownLatch together = new CountDownLatch(0);

        @Override
        public RunInfo info() {
            return RunInfo.ofWhole("Pond", FrameRate.of(40), FRAMES, FramePixels.unnamed(PIXELS));
        }

        @Override
        public FrameReader reader() {
            int number = opened.incrementAndGet();
            return new FrameReader() {
                @Override
                public void read(long frame, byte[] rgb, int offset) throws IOException {
                    if (failure != null) {
                        throw failure;
                    }
                    together.countDown();
                    FrameRunTest.await(together);
                    threads.add(Thread.currentThread());
                    arrays.add(System.identityHashCode(rgb));
                    System.arraycopy(expected(frame), 0, rgb, offset, 3 * PIXELS);
                    read.incrementAndGet();
                }

                @Override
                public void close() throws IOException {
                    closed.incrementAndGet();
                    if (closeFailures) {
                        throw new IOException("reader " + number);
                    }
                }
            };
        }
    }
}
