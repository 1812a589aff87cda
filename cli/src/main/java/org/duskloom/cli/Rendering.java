package org.duskloom.cli;

import java.io.IOException;
import java.util.List;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.TimeTiles;
import org.duskloom.engine.text.Counted;

/**
 * Renders and says so: a bar on a terminal while it goes on, and a line when the results are final.
 *
 * @param source where the frames come from
 * @param frames which frames
 * @param threads on how many threads
 */
record Rendering(FrameSource source, FrameList frames, int threads) {
    /** The threads that a machine runs at a time. */
    static int usualThreads() {
        return Runtime.getRuntime().availableProcessors();
    }

    /** On the usual threads. */
    Rendering(FrameSource source, FrameList frames) {
        this(source, frames, usualThreads());
    }

    /** What the sinks are told. */
    RunInfo info() {
        return run().info();
    }

    /** Hands all frames to sinks, which are finished then but not closed. */
    void into(List<FrameSink> sinks, Streams streams) throws IOException, InterruptedException {
        ProgressBar.during(streams, progress -> {
            run().into(sinks, progress);
            return true;
        });
    }

    /** Draws the pictures that are drawn when a run is over: those of the sinks that have been handed its frames. */
    void drawTiles(List<FrameSink> sinks, Streams streams) throws IOException, InterruptedException {
        for (FrameSink sink : sinks) {
            if (sink instanceof TimeTiles tiles) {
                ProgressBar.during(streams, "pixel", progress -> {
                    tiles.draw(source, threads, progress);
                    return true;
                });
            }
        }
    }

    /** {@code out: 1920 frames, 1234 pixels, 0.8 s}. */
    String summary(Object output, long nanos) {
        return summary(output, frames.count(), nanos);
    }

    /** The same where so many frames are shown, out of those that were rendered. */
    String summary(Object output, long shown, long nanos) {
        return output + ": " + Counted.of(shown, "frame") + ", "
                + Counted.of(source.info().pixelCount(), "pixel") + ", " + Words.duration(nanos / 1e9);
    }

    private FrameRun run() {
        return new FrameRun(source, frames, threads);
    }
}
