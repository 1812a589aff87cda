package org.duskloom.engine.frame;

import java.util.ArrayDeque;
import java.util.Queue;

/** What the threads of a run tell each other: which frames are next, which are ready, and whether anything failed. */
final class RunState {
    private final FrameList frames;
    private final int chunkFrames;
    private final int sinks;
    private final Progress progress;

    /** Chunks that are rendered or ready, in the order of their frames. */
    private final Queue<RunChunk> underWay = new ArrayDeque<>();

    private long nextPlace;
    private int sinksFinished;
    private Throwable failure;

    RunState(FrameList frames, int chunkFrames, int sinks, Progress progress) {
        this.frames = frames;
        this.chunkFrames = chunkFrames;
        this.sinks = sinks;
        this.progress = progress;
    }

    /** Gives a free chunk the next frames; says whether there are any. */
    synchronized boolean assign(RunChunk chunk) {
        if (failure != null || nextPlace == frames.count()) {
            return false;
        }
        int count = (int) Math.min(chunkFrames, frames.count() - nextPlace);
        chunk.frames().set(nextPlace, count);
        chunk.ready = false;
        chunk.sinksLeft = sinks;
        nextPlace += count;
        underWay.add(chunk);
        return true;
    }

    /** The chunk can go to the sinks, once those before it have. */
    synchronized void markReady(RunChunk chunk) {
        chunk.ready = true;
        notifyAll();
    }

    /**
     * Waits for the next chunk in order.
     *
     * @return null after the last, or when something has failed
     */
    synchronized RunChunk next() throws InterruptedException {
        // A chunk that is ready already does not wait, and so would not notice an interruption.
        if (Thread.interrupted()) {
            throw new InterruptedException();
        }
        while (failure == null && !isNextReady()) {
            if (underWay.isEmpty() && nextPlace == frames.count()) {
                return null;
            }
            wait();
        }
        return failure == null ? underWay.remove() : null;
    }

    private boolean isNextReady() {
        return !underWay.isEmpty() && underWay.peek().ready;
    }

    /** One sink has taken the chunk; says whether it was the last to do so, and the chunk is free. */
    synchronized boolean release(RunChunk chunk) {
        chunk.sinksLeft--;
        if (chunk.sinksLeft > 0) {
            return false;
        }
        FrameBatch taken = chunk.frames();
        progress.at(taken.place(taken.count()), frames.count());
        return true;
    }

    /** One sink is finished. */
    synchronized void markFinished() {
        sinksFinished++;
        notifyAll();
    }

    /** Waits until all sinks are finished, or something has failed. */
    synchronized void awaitFinished() throws InterruptedException {
        while (failure == null && sinksFinished < sinks) {
            wait();
        }
    }

    /** Ends the run. Only the first failure counts: others mostly follow from it. */
    synchronized void fail(Throwable fault) {
        if (failure == null) {
            failure = fault;
        }
        notifyAll();
    }

    /** What failed first; null if nothing did. */
    synchronized Throwable failure() {
        return failure;
    }

    /** Whether the run has ended early. */
    synchronized boolean hasFailed() {
        return failure != null;
    }
}
