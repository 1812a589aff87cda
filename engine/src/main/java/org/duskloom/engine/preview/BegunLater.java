package org.duskloom.engine.preview;

import java.io.IOException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/** A picture that can be laid out only when the run is known. Its file is begun before that. */
final class BegunLater implements FrameSink {
    private final StagedFile file;
    private final Begin begin;
    private FrameSink picture;

    /** Lays the picture out. */
    @FunctionalInterface
    interface Begin {
        FrameSink picture(RunInfo run) throws IOException;
    }

    BegunLater(StagedFile file, Begin begin) {
        this.file = file;
        this.begin = begin;
    }

    @Override
    public void begin(RunInfo run) throws IOException {
        picture = begin.picture(run);
    }

    @Override
    public void take(FrameBatch frames) throws IOException {
        picture.take(frames);
    }

    @Override
    public void finish() throws IOException {
        picture.finish();
    }

    @Override
    public void close() {
        file.close();
    }
}
