package org.duskloom.engine.film;

import java.io.IOException;
import java.util.function.Function;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.EncodingSink;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameEncoder;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.png.AnimationWriter;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.time.ExactTime;

/** Draws on the threads that render, and compresses what changes in order. */
final class AnimationSink implements EncodingSink {
    private static final int LEVEL = 6;

    private final StagedFile file;
    private final Function<RunInfo, FilmSize> sizeOf;
    private final int plays;
    private PreviewScene scene;
    private FilmSize size;
    private FrameDelays delays;
    private AnimationWriter png;

    AnimationSink(StagedFile file, Function<RunInfo, FilmSize> sizeOf, int plays) {
        this.file = file;
        this.sizeOf = sizeOf;
        this.plays = plays;
    }

    @Override
    public void begin(RunInfo run) throws IOException {
        scene = PreviewScene.of(run);
        size = sizeOf.apply(run);
        delays = new FrameDelays(FrameStep.time(run), FrameStep.frames(run.frames()));
        int frames = Math.toIntExact(run.frames().count());
        png = new AnimationWriter(file.stream(), size.width(), size.height(), frames, plays, LEVEL);
    }

    @Override
    public long bytesPerFrame() {
        return 3L * size.dots();
    }

    @Override
    public FrameEncoder encoder() {
        return new DrawnFrames(scene, size);
    }

    @Override
    public void take(FrameBatch frames, EncodedBytes encoded) throws IOException {
        for (int i = 0; i < frames.count(); i++) {
            ExactTime delay = delays.of(frames.place(i));
            int numerator = (int) delay.numerator();
            png.frame(encoded.array(), 3 * size.dots() * i, numerator, (int) delay.denominator());
        }
    }

    @Override
    public void finish() throws IOException {
        png.finish();
        file.finish();
    }

    @Override
    public void close() {
        if (png != null) {
            png.close();
        }
        file.close();
    }
}
