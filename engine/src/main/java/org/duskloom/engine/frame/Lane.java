package org.duskloom.engine.frame;

import java.io.IOException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** The way of the frames to one sink, one chunk after the other. */
final class Lane {
    private final FrameSink sink;
    private final int number;
    private final Executor thread;
    private final RunState state;
    private final Consumer<RunChunk> whenFree;

    /**
     * A lane.
     *
     * @param number of the sink among those of the run
     * @param thread does what it is given in order, and one thing at a time
     * @param whenFree takes chunks that all sinks are done with
     */
    Lane(FrameSink sink, int number, Executor thread, RunState state, Consumer<RunChunk> whenFree) {
        this.sink = sink;
        this.number = number;
        this.thread = thread;
        this.state = state;
        this.whenFree = whenFree;
    }

    void take(RunChunk chunk) {
        thread.execute(() -> attempt(() -> {
            hand(chunk);
            if (state.release(chunk)) {
                whenFree.accept(chunk);
            }
        }));
    }

    void finish() {
        thread.execute(() -> attempt(() -> {
            sink.finish();
            state.markFinished();
        }));
    }

    private void hand(RunChunk chunk) throws IOException {
        if (sink instanceof EncodingSink encoding) {
            encoding.take(chunk.frames(), chunk.encoded(number));
        } else {
            sink.take(chunk.frames());
        }
    }

    private void attempt(Step step) {
        if (state.hasFailed()) {
            return;
        }
        try {
            step.run();
        } catch (IOException | RuntimeException | Error fault) {
            state.fail(fault);
        }
    }

    /** Something that a sink does. */
    @FunctionalInterface
    private interface Step {
        void run() throws IOException;
    }
}
