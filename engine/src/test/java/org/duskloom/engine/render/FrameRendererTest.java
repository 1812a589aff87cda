package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrameRendererTest {
    private static final int MOST_FRAMES_IN_CHUNK = 128;

    private final Counting counting = new Counting();
    private final TestShow show = TestShow.withCue(
                    Maps.map("prop,pixel,x,y\na,1,0,0\na,2,1,0\n"), "{\"on\": \"a\", \"effect\": \"counting\"}")
            .with(counting);
    private final Plan plan = show.plan();

    /** An interruption that a test has caused must not reach the next. */
    @AfterEach
    void forgetInterruptions() {
        Thread.interrupted();
    }

    @Test
    void tellsHowFarItIs() throws Exception {
        List<String> progress = new ArrayList<>();
        new FrameRun(new FrameRenderer(plan), FrameList.of(2, 5, 11), 3)
                .into(new Frames.Kept(), (done, total) -> progress.add(done + "/" + total));
        assertThat(progress).containsExactly("1/3", "2/3", "3/3");
    }

    @Test
    void rendersNothingWhereNothingIsAsked() throws Exception {
        Frames.Kept kept = new Frames.Kept();
        new FrameRun(new FrameRenderer(plan), FrameList.of(new FrameSpan(3, 3)), 2).into(kept, Progress.SILENT);
        assertThat(kept.numbers).isEmpty();
    }

    /** However long the show and however slow the sink, only a few chunks are under way. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void doesNotRunAheadOfASlowSink(int threads) throws Exception {
        long most = (2L * threads + 2) * MOST_FRAMES_IN_CHUNK;
        AtomicLong ahead = new AtomicLong();
        Frames.Kept slow = new Frames.Kept() {
            @Override
            void keep(long frameNumber, byte[] rgb) {
                if (frameNumber % 40 == 0) {
                    pause(2);
                }
                ahead.accumulateAndGet(counting.frames.get() - frameNumber, Math::max);
            }
        };
        Plan ofFortySeconds =
                new TestShow(show.map(), show.timeline().replace("\"10s\"", "\"40s\""), show.effects()).plan();
        new FrameRun(new FrameRenderer(ofFortySeconds), FrameList.of(new FrameSpan(0, 1600)), threads)
                .into(slow, Progress.SILENT);
        assertThat(counting.frames.get()).isEqualTo(1600);
        assertThat(ahead.get()).isBetween(1L, most);
    }

    /** Every thread gets frames even where there are few, as for a strip of some moments. */
    @Test
    void sharesFewFramesAmongAllThreads() throws Exception {
        counting.pauseMillis = 20;
        new FrameRun(new FrameRenderer(plan), FrameList.of(new FrameSpan(0, 8)), 4)
                .into(new Frames.Kept(), Progress.SILENT);
        assertThat(counting.threads).hasSizeGreaterThan(1);
    }

    @Test
    void stopsWhenTheSinkFails() {
        IOException full = new IOException("no space left on device");
        Frames.Kept failing = new Frames.Kept() {
            @Override
            void keep(long frameNumber, byte[] rgb) throws IOException {
                super.keep(frameNumber, rgb);
                if (frameNumber == 40) {
                    throw full;
                }
            }
        };
        assertThatThrownBy(() -> run(FrameList.of(new FrameSpan(0, 400)), 2).into(failing, Progress.SILENT))
                .isSameAs(full);
        assertThat(failing.numbers).hasSize(41);
        assertNoThreadsAreLeft();
    }

    @Test
    void stopsWhenItIsInterruptedAlthoughFramesAreReady() {
        Frames.Kept interrupting = new Frames.Kept() {
            @Override
            void keep(long frameNumber, byte[] rgb) throws IOException {
                super.keep(frameNumber, rgb);
                if (frameNumber == 5) {
                    Thread.currentThread().interrupt();
                }
            }
        };
        assertThatThrownBy(() -> run(FrameList.of(new FrameSpan(0, 400)), 2).into(interrupting, Progress.SILENT))
                .isInstanceOf(InterruptedException.class);
        assertThat(interrupting.numbers).hasSize(MOST_FRAMES_IN_CHUNK);
        assertNoThreadsAreLeft();
    }

    @Test
    void saysWhyAFrameCouldNotBeRendered() {
        counting.failure = new ArithmeticException("in the brush");
        Frames.Kept kept = new Frames.Kept();
        assertThatThrownBy(() -> run(FrameList.of(0, 1), 2).into(kept, Progress.SILENT))
                .isInstanceOf(IllegalStateException.class)
                .hasCause(counting.failure);
        assertThat(kept.numbers).isEmpty();
        assertNoThreadsAreLeft();
    }

    @Test
    void leavesNoThreadsBehind() throws Exception {
        new FrameRun(new FrameRenderer(plan), FrameList.of(new FrameSpan(0, 100)), 5)
                .into(new Frames.Kept(), Progress.SILENT);
        assertNoThreadsAreLeft();
    }

    @Test
    void needsAThread() {
        assertThatThrownBy(() -> run(FrameList.of(0), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    private FrameRun run(FrameList frames, int threads) {
        return new FrameRun(new FrameRenderer(plan), frames, threads);
    }

    /** Waits for threads that are just ending; fails if one goes on. */
    private static void assertNoThreadsAreLeft() {
        for (int wait = 0; wait < 2_000 && liveThreads() > 0; wait++) {
            pause(5);
        }
        assertThat(liveThreads()).isZero();
    }

    private static long liveThreads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("frames") && thread.isAlive())
                .count();
    }

    private static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** Paints nothing and counts the frames begun, and the threads that began them. */
    private static final class Counting implements Effect {
        private final AtomicLong frames = new AtomicLong();
        private final Set<Thread> threads = ConcurrentHashMap.newKeySet();
        private volatile RuntimeException failure;
        private volatile int pauseMillis;

        @Override
        public String name() {
            return "counting";
        }

        @Override
        public String summary() {
            return "";
        }

        @Override
        public String formula() {
            return "";
        }

        @Override
        public List<Setting<?>> settings() {
            return List.of();
        }

        @Override
        public Kernel prepare(Settings settings, Canvas canvas) {
            return () -> new Brush() {
                @Override
                public void begin(CueTime time) {
                    frames.incrementAndGet();
                    threads.add(Thread.currentThread());
                    pause(pauseMillis);
                    if (failure != null) {
                        throw failure;
                    }
                }

                @Override
                public void paint(int firstPixel, Patch patch) {
                    patch.clear();
                }
            };
        }
    }
}
