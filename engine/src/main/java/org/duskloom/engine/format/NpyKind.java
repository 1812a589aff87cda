package org.duskloom.engine.format;

import java.util.Optional;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/** {@code frames.npy}: an array of bytes for NumPy, of the shape (frames, pixels, 3). */
public final class NpyKind implements StreamKind {
    /** There is nothing to choose. */
    public NpyKind() {}

    @Override
    public String word() {
        return "npy";
    }

    @Override
    public String help() {
        return "an array for NumPy, of the shape (frames, pixels, 3)";
    }

    @Override
    public String file() {
        return "frames.npy";
    }

    @Override
    public long bytes(RunInfo run) {
        return Math.addExact(
                NpyHeader.of(run).length, Math.multiplyExact(run.frames().count(), (long) run.frameBytes()));
    }

    @Override
    public Optional<Seam> seam(String name) {
        return name.equals(file()) ? Optional.of(new Seam.Bodies(NpyHeader::of, true)) : Optional.empty();
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new PlainSink(file, file(), NpyHeader::of);
    }
}
