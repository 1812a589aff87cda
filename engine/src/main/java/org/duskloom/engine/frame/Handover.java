package org.duskloom.engine.frame;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** The threads of one run, and the memory that goes round between them. */
final class Handover implements AutoCloseable {
    private static final int CHUNK_BYTES = 2 << 20;

    /** Many, as handing over costs each thread its caches and now and then its sleep. */
    private static final int MANY_FRAMES = 64;

    /** So many where they are small: no more than {@link #NEAR_BYTES}. */
    private static final int MOST_FRAMES_IN_CHUNK = 128;

    private static final int NEAR_BYTES = 1 << 19;

    /** What hangs on it is in files that are compared: this number stays. */
    private static final int FRAMES_THAT_ARE_ONE_PIECE = 32;

    /**
     * How long a thread that was interrupted may take to notice. Only one that waits for a dead device takes longer,
     * and may never come back: whoever started the run is to hear what failed all the same.
     */
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final FrameSource source;
    private final List<FrameSink> sinks;
    private final RunState state;
    private final List<RunChunk> chunks = new ArrayList<>();
    private final List<Lane> lanes = new ArrayList<>();
    private final ExecutorService renderers;
    private final List<ExecutorService> sinkThreads = new ArrayList<>();
    private final Queue<Worker> idleWorkers = new ConcurrentLinkedQueue<>();

    Handover(FrameSource source, RunInfo run, List<FrameSink> sinks, int threads, Progress progress) {
        this.source = source;
        this.sinks = sinks;
        int chunkFrames = chunkFrames(run, sinks, threads);
        this.state = new RunState(run.frames(), chunkFrames, sinks.size(), progress);
        long needed = (run.frames().count() + chunkFrames - 1) / chunkFrames;
        long most = Math.min(2L * threads + sinks.size(), needed);
        for (int i = 0; i < most; i++) {
            chunks.add(new RunChunk(new FrameBatch(run.frames(), chunkFrames, run.frameBytes()), sinks));
        }
        this.renderers = Executors.newFixedThreadPool(threads, new DaemonThreads("frames"));
        for (int i = 0; i < sinks.size(); i++) {
            lanes.add(new Lane(sinks.get(i), i, thread(sinks.size()), state, this::render));
        }
    }

    /**
     * Few enough to fit into a chunk, and for every thread to have work where there are few frames, unless the output
     * would show how many threads there were.
     */
    private static int chunkFrames(RunInfo run, List<FrameSink> sinks, int threads) {
        long frameBytes = run.frameBytes();
        long shared = (run.frames().count() + threads - 1) / threads;
        for (FrameSink sink : sinks) {
            if (sink instanceof EncodingSink encoding) {
                frameBytes = Math.max(frameBytes, encoding.bytesPerFrame());
                shared = encoding.hangsOnBatches() ? FRAMES_THAT_ARE_ONE_PIECE : shared;
            }
        }
        long fitting = Math.max(Math.min(MANY_FRAMES, CHUNK_BYTES / frameBytes), NEAR_BYTES / frameBytes);
        return (int) Math.max(1, Math.min(MOST_FRAMES_IN_CHUNK, Math.min(fitting, shared)));
    }

    private Executor thread(int sinkCount) {
        if (sinkCount == 1) {
            return Runnable::run;
        }
        ExecutorService thread = Executors.newSingleThreadExecutor(new DaemonThreads("sink"));
        sinkThreads.add(thread);
        return thread;
    }

    void handOver() throws IOException, InterruptedException {
        try {
            chunks.forEach(this::render);
            for (RunChunk chunk = state.next(); chunk != null; chunk = state.next()) {
                for (Lane lane : lanes) {
                    lane.take(chunk);
                }
            }
            lanes.forEach(Lane::finish);
            state.awaitFinished();
        } catch (InterruptedException stopped) {
            state.fail(stopped);
            throw stopped;
        }
        Throwable failure = state.failure();
        if (failure != null) {
            throw ThreadFault.of(failure);
        }
    }

    /** Has a free chunk filled with the next frames, if there are any. */
    private void render(RunChunk chunk) {
        if (state.assign(chunk)) {
            renderers.execute(() -> fill(chunk));
        }
    }

    private void fill(RunChunk chunk) {
        try {
            Worker idle = idleWorkers.poll();
            Worker worker = idle == null ? new Worker(source, sinks) : idle;
            try {
                worker.fill(chunk, state);
            } finally {
                idleWorkers.add(worker);
            }
            state.markReady(chunk);
        } catch (IOException fault) {
            state.fail(fault);
        } catch (RuntimeException | Error fault) {
            state.fail(new IllegalStateException("a frame could not be rendered", fault));
        }
    }

    /**
     * Stops all threads and waits for them, so that sinks can be closed safely. One that does not end within
     * {@link #PATIENCE} is left alone; it is none that keeps the program from ending.
     *
     * @throws IOException if one is left, or a reader cannot be closed; all others are closed then
     */
    @Override
    public void close() throws IOException {
        IOException first = null;
        if (!stop(PATIENCE)) {
            first = new IOException("what waits for a device did not stop within " + PATIENCE.toSeconds() + " s");
        }
        for (Worker worker : idleWorkers) {
            try {
                worker.close();
            } catch (IOException fault) {
                if (first == null) {
                    first = fault;
                } else {
                    first.addSuppressed(fault);
                }
            }
        }
        if (first != null) {
            throw first;
        }
    }

    /** Interrupts all threads; tells whether they ended within a time. An interruption is kept until then. */
    boolean stop(Duration patience) {
        List<ExecutorService> all = new ArrayList<>(sinkThreads);
        all.add(renderers);
        all.forEach(ExecutorService::shutdownNow);
        long giveUp = System.nanoTime() + patience.toNanos();
        boolean interrupted = false;
        while (System.nanoTime() < giveUp && !all.stream().allMatch(ExecutorService::isTerminated)) {
            try {
                for (ExecutorService threads : all) {
                    threads.awaitTermination(giveUp - System.nanoTime(), TimeUnit.NANOSECONDS);
                }
            } catch (InterruptedException inHaste) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return all.stream().allMatch(ExecutorService::isTerminated);
    }
}
