package org.duskloom.engine.frame;

import java.io.IOException;
import java.util.List;

/**
 * Hands frames of a source to sinks. Threads that render get a few frames at a time and encode them for the sinks that
 * ask for it; the finished frames go to the sinks in order. A single sink is fed from the calling thread, several from
 * a thread each, so that they work beside each other on the same memory. So many frames are under way at any time and
 * no more: memory does not depend on how many there are, and a slow sink holds everything back.
 */
public final class FrameRun {
    private final FrameSource source;
    private final FrameList frames;
    private final int threads;

    /**
     * A run that has not begun.
     *
     * @param source where the frames come from
     * @param frames which frames are wanted
     * @param threads how many threads render, at least 1
     */
    public FrameRun(FrameSource source, FrameList frames, int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException(threads + " threads");
        }
        this.source = source;
        this.frames = frames;
        this.threads = threads;
    }

    /** What the sinks are told. */
    public RunInfo info() {
        return source.info().only(frames);
    }

    /**
     * Begins all sinks, hands each of them all frames, and finishes them; closing is left to the caller. When something
     * fails the run ends: no sink is finished after that, whatever it is waiting for is interrupted, and none is used
     * any more when this method returns. The exception is a sink that stays for more than ten seconds in something that
     * cannot be interrupted, such as a write to a device that does not answer: it is left there, and the failure says
     * so among those it suppressed.
     *
     * @param sinks those that take the frames, at least one
     * @param progress is told when frames have gone to all sinks
     * @throws IOException if a sink or the source fails: the first failure that was noticed
     * @throws InterruptedException if the calling thread is interrupted; no more frames are handed over then
     */
    public void into(List<? extends FrameSink> sinks, Progress progress) throws IOException, InterruptedException {
        if (sinks.isEmpty()) {
            throw new IllegalArgumentException("no sink");
        }
        RunInfo run = info();
        for (FrameSink sink : sinks) {
            sink.begin(run);
        }
        try (Handover handover = new Handover(source, run, List.copyOf(sinks), threads, progress)) {
            handover.handOver();
        }
    }

    /** The same for one sink. */
    public void into(FrameSink sink, Progress progress) throws IOException, InterruptedException {
        into(List.of(sink), progress);
    }
}
