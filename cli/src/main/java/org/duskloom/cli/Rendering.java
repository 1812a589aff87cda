package org.duskloom.cli;

import java.io.IOException;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.render.FrameList;
import org.duskloom.engine.render.FrameRenderer;
import org.duskloom.engine.render.Progress;

/**
 * Renders and says so: a bar on a terminal while it goes on, and a line when the results are final.
 *
 * @param plan what is rendered
 * @param frames which frames
 * @param threads on how many threads
 */
record Rendering(Plan plan, FrameList frames, int threads) {
    /** The threads that a machine runs at a time. */
    static int usualThreads() {
        return Runtime.getRuntime().availableProcessors();
    }

    /** Hands all frames to a sink, which is neither finished nor closed. */
    void into(FrameSink sink, Streams streams) throws IOException, InterruptedException {
        FrameRenderer renderer = new FrameRenderer(plan, threads);
        if (!streams.traits().errLive()) {
            renderer.render(frames, sink, Progress.SILENT);
            return;
        }
        try (ProgressBar bar = new ProgressBar(streams.err(), System::nanoTime)) {
            Runtime.getRuntime().addShutdownHook(new Thread(bar::close));
            renderer.render(frames, sink, bar);
        }
    }

    /** {@code out: 1920 frames, 1234 pixels, 0.8 s}. */
    String summary(Object output, long nanos) {
        return output + ": " + Words.counted(frames.count(), "frame") + ", " + Words.counted(plan.pixelCount(), "pixel")
                + ", " + Words.duration(nanos / 1e9);
    }
}
