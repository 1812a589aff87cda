package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A run of which a sink, the source or the caller fails. */
@Timeout(60)
class FrameRunFailureTest {
    private final CountedFrames source = new CountedFrames();

    /** An interruption that a test has caused must not reach the next. */
    @AfterEach
    void forgetInterruptions() {
        Thread.interrupted();
    }

    /** All sinks begin before any frame is made: what one refuses costs nothing. */
    @Test
    void aSinkThatRefusesToBeginEndsTheRunBeforeItStarts() {
        IOException tooLarge = new IOException("too large");
        KeptSink refusing = new KeptSink() {
            @Override
            public void begin(RunInfo run) throws IOException {
                throw tooLarge;
            }
        };
        KeptSink other = new KeptSink();
        assertThatThrownBy(() ->
                        new FrameRun(source, CountedFrames.all(), 2).into(List.of(other, refusing), Progress.SILENT))
                .isSameAs(tooLarge);
        assertThat(other.calls).containsExactly("begin");
        assertThat(source.read.get()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "1, 40", "3, 0", "3, 40", "3, 999"})
    void aFailingSinkEndsTheRunCleanly(int sinks, long failsAt) {
        IOException full = new IOException("no space left on device");
        List<KeptSink> others = KeptSink.several(sinks - 1);
        KeptSink failing = new KeptSink() {
            @Override
            void keep(long frame, byte[] rgb) throws IOException {
                super.keep(frame, rgb);
                if (frame == failsAt) {
                    throw full;
                }
            }
        };
        List<KeptSink> all = new ArrayList<>(others);
        all.add(failing);
        assertThatThrownBy(() -> new FrameRun(source, CountedFrames.all(), 2).into(all, Progress.SILENT))
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
        KeptSink failing = new KeptSink() {
            @Override
            public void finish() throws IOException {
                throw late;
            }
        };
        assertThatThrownBy(() -> new FrameRun(source, CountedFrames.all(), 2)
                        .into(List.of(new KeptSink(), failing), Progress.SILENT))
                .isSameAs(late);
    }

    /** A reader that stands still holds its sink back for ever; the failure of another must end that too. */
    @Test
    void aFailureInterruptsWhatOtherSinksWaitFor() throws Exception {
        CountDownLatch stuck = new CountDownLatch(1);
        AtomicBoolean interrupted = new AtomicBoolean();
        KeptSink waiting = new KeptSink() {
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
        KeptSink failing = new KeptSink() {
            @Override
            void keep(long frame, byte[] rgb) throws IOException {
                if (frame == 70) {
                    Waits.await(stuck);
                    throw broken;
                }
            }
        };
        assertThatThrownBy(() ->
                        new FrameRun(source, CountedFrames.all(), 2).into(List.of(waiting, failing), Progress.SILENT))
                .isSameAs(broken);
        assertThat(interrupted).isTrue();
    }

    /** A write to a device that does not answer cannot be interrupted: those who wait are to hear what failed. */
    @Test
    void whatDoesNotStopIsLeftAfterAWhileAndSaidSo() throws Exception {
        CountDownLatch stuck = new CountDownLatch(1);
        CountDownLatch answered = new CountDownLatch(1);
        KeptSink waiting = new KeptSink() {
            @Override
            void keep(long frame, byte[] rgb) {
                stuck.countDown();
                while (answered.getCount() > 0) {
                    Thread.onSpinWait();
                }
            }
        };
        Handover handover = new Handover(source, source.info(), List.of(waiting, new KeptSink()), 1, Progress.SILENT);
        Thread run = new Thread(() -> assertThatThrownBy(handover::handOver).isInstanceOf(InterruptedException.class));
        run.start();
        Waits.await(stuck);
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
        KeptSink failing = new KeptSink() {
            @Override
            void keep(long frame, byte[] rgb) {
                throw fault;
            }
        };
        assertThatThrownBy(() -> new FrameRun(source, CountedFrames.all(), 2)
                        .into(List.of(new KeptSink(), failing), Progress.SILENT))
                .isSameAs(fault);
    }

    @Test
    void aSourceThatFailsEndsTheRunWithItsOwnWords() {
        source.failure = new IOException("became shorter");
        KeptSink sink = new KeptSink();
        assertThatThrownBy(() -> new FrameRun(source, CountedFrames.all(), 3)
                        .into(List.of(sink, new KeptSink()), Progress.SILENT))
                .isSameAs(source.failure);
        assertThat(sink.calls).doesNotContain("finish");
    }

    @Test
    void aCallerThatIsInterruptedStopsAllSinks() {
        List<KeptSink> sinks = KeptSink.several(2);
        Thread caller = Thread.currentThread();
        sinks.add(new KeptSink() {
            @Override
            void keep(long frame, byte[] rgb) throws IOException {
                super.keep(frame, rgb);
                if (frame == 5) {
                    caller.interrupt();
                    Waits.pause(50);
                }
            }
        });
        assertThatThrownBy(() -> new FrameRun(source, CountedFrames.all(), 2).into(sinks, Progress.SILENT))
                .isInstanceOf(InterruptedException.class);
        sinks.forEach(sink -> assertThat(sink.calls).doesNotContain("finish"));
        assertNothingGoesOn(sinks);
    }

    @Test
    void readersAreClosedAlways() throws Exception {
        new FrameRun(source, CountedFrames.all(), 3).into(new KeptSink(), Progress.SILENT);
        source.failure = new IOException("gone");
        assertThatThrownBy(() -> new FrameRun(source, CountedFrames.all(), 3).into(new KeptSink(), Progress.SILENT))
                .isSameAs(source.failure);
        assertThat(source.opened.get()).isPositive().isEqualTo(source.closed.get());
    }

    /** One that cannot be closed, as of a file on a drive that is gone, is no reason to leave the others open. */
    @Test
    void aReaderThatCannotBeClosedKeepsNoOtherOpen() throws Exception {
        source.closeFailures = true;
        Handover handover = new Handover(source, source.info(), List.of(new KeptSink()), 3, Progress.SILENT);
        // The first frame waits for another reader's, so there are two at least.
        source.together = new CountDownLatch(2);
        handover.handOver();
        assertThatThrownBy(handover::close)
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith("reader ")
                .satisfies(first -> assertThat(first.getSuppressed()).hasSize(source.opened.get() - 1));
        assertThat(source.opened.get()).isGreaterThan(1).isEqualTo(source.closed.get());
    }

    /** What sinks hold stays as it is once a run is over. */
    private static void assertNothingGoesOn(List<KeptSink> sinks) {
        List<Integer> before = sinks.stream().map(sink -> sink.numbers.size()).toList();
        Waits.pause(20);
        assertThat(sinks.stream().map(sink -> sink.numbers.size()).toList()).isEqualTo(before);
    }
}
