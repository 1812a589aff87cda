package org.duskloom.engine.render;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.plan.Plan;

/**
 * Renders frames on several threads and hands them over in order. A few chunks of frames are under way at any time, so
 * memory does not depend on how many frames there are; a slow sink holds the threads back.
 */
public final class FrameRenderer {
    private static final int CHUNK_BYTES = 2 << 20;
    private static final int MOST_FRAMES_IN_CHUNK = 32;

    private final Plan plan;
    private final int threads;

    /**
     * A renderer.
     *
     * @param plan what is rendered
     * @param threads how many frames are rendered at a time, at least 1
     */
    public FrameRenderer(Plan plan, int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException(threads + " threads");
        }
        this.plan = plan;
        this.threads = threads;
    }

    /**
     * Renders frames and hands each to the sink, in the order of the list, from the calling thread. Neither finishes nor
     * closes the sink.
     *
     * @throws IOException if the sink fails
     * @throws InterruptedException if the calling thread is interrupted; no more frames are handed over then
     */
    public void render(FrameList frames, FrameSink sink, Progress progress) throws IOException, InterruptedException {
        ExecutorService executor = Executors.newFixedThreadPool(threads, FrameRenderer::thread);
        try {
            new Run(frames, executor).handOver(sink, progress);
        } finally {
            executor.shutdownNow();
        }
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "frames");
        thread.setDaemon(true);
        return thread;
    }

    /** One rendering. */
    private final class Run {
        private final FrameList frames;
        private final ExecutorService executor;
        private final int chunkFrames;
        private final ConcurrentLinkedQueue<FramePainter> idlePainters = new ConcurrentLinkedQueue<>();
        private final ArrayDeque<FrameChunk> idleChunks = new ArrayDeque<>();
        private final ArrayDeque<Future<FrameChunk>> underWay = new ArrayDeque<>();
        private final byte[] handedOver = new byte[3 * plan.pixelCount()];
        private long nextPlace;

        private Run(FrameList frames, ExecutorService executor) {
            this.frames = frames;
            this.executor = executor;
            chunkFrames = chunkFrames();
            long chunks = Math.min(2L * threads + 1, (frames.count() + chunkFrames - 1) / chunkFrames);
            for (int i = 0; i < chunks; i++) {
                idleChunks.add(new FrameChunk(chunkFrames, plan.pixelCount()));
            }
        }

        /** Few enough to fit into a chunk, and for every thread to have work where there are few frames. */
        private int chunkFrames() {
            long fitting = CHUNK_BYTES / (3L * plan.pixelCount());
            long shared = (frames.count() + threads - 1) / threads;
            return (int) Math.max(1, Math.min(MOST_FRAMES_IN_CHUNK, Math.min(fitting, shared)));
        }

        private void handOver(FrameSink sink, Progress progress) throws IOException, InterruptedException {
            submit();
            while (!underWay.isEmpty()) {
                FrameChunk chunk = next();
                handOver(chunk, sink, progress);
                idleChunks.add(chunk);
                submit();
            }
        }

        private void handOver(FrameChunk chunk, FrameSink sink, Progress progress)
                throws IOException, InterruptedException {
            for (int i = 0; i < chunk.count(); i++) {
                // Waiting for a chunk that is done already does not notice an interruption.
                if (Thread.interrupted()) {
                    throw new InterruptedException();
                }
                chunk.copyFrame(i, handedOver);
                sink.frame(frames.frame(chunk.firstPlace() + i), handedOver);
                progress.at(chunk.firstPlace() + i + 1, frames.count());
            }
        }

        private void submit() {
            while (nextPlace < frames.count() && !idleChunks.isEmpty()) {
                int count = (int) Math.min(chunkFrames, frames.count() - nextPlace);
                FrameChunk chunk = idleChunks.remove().set(nextPlace, count);
                underWay.add(executor.submit(() -> rendered(chunk)));
                nextPlace += count;
            }
        }

        private FrameChunk rendered(FrameChunk chunk) {
            FramePainter idle = idlePainters.poll();
            FramePainter painter = idle == null ? new FramePainter(plan) : idle;
            chunk.render(painter, frames);
            idlePainters.add(painter);
            return chunk;
        }

        private FrameChunk next() throws InterruptedException {
            try {
                return underWay.remove().get();
            } catch (ExecutionException e) {
                throw new IllegalStateException("a frame could not be rendered", e.getCause());
            }
        }
    }
}
