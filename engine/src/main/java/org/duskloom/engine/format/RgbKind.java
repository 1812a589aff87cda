package org.duskloom.engine.format;

import java.util.Optional;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/**
 * {@code frames.rgb}: frame after frame without a header, what readers of raw video take as rgb24, as wide as there are
 * pixels and one line high.
 */
public final class RgbKind implements StreamKind {
    /** The name of its file. */
    public static final String FILE = "frames.rgb";

    /** There is nothing to choose. */
    public RgbKind() {}

    @Override
    public String word() {
        return "rgb";
    }

    @Override
    public String help() {
        return "frame after frame, pixel after pixel in wiring order, a byte each of red, green and blue";
    }

    @Override
    public String file() {
        return FILE;
    }

    @Override
    public long bytes(RunInfo run) {
        return Math.multiplyExact(run.frames().count(), (long) run.frameBytes());
    }

    @Override
    public Optional<Seam> seam(String name) {
        return name.equals(FILE) ? Optional.of(new Seam.Bodies(run -> new byte[0], true)) : Optional.empty();
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new PlainSink(file, FILE, run -> new byte[0]);
    }
}
