package org.duskloom.engine.format;

import java.io.IOException;
import java.util.List;
import org.duskloom.engine.file.StagedFolder;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.RunInfo;

/** Writes each frame into a file of its own. Frames may be left out: the names say which are there. */
final class SinglesSink implements RecordedSink {
    /** Enough for four weeks at 40 frames a second; longer shows have longer names. */
    private static final int FEWEST_DIGITS = 8;

    private final StagedFolder folder;
    private final String name;
    private RunInfo run;
    private long bytes;

    /**
     * A sink that has not begun.
     *
     * @param folder takes the files; finished or abandoned by the sink
     * @param name of the folder, for the manifest
     */
    SinglesSink(StagedFolder folder, String name) {
        this.folder = folder;
        this.name = name;
    }

    /** The name of a frame's file. */
    static String fileName(long frame) {
        String digits = Long.toString(frame);
        return "0".repeat(Math.max(0, FEWEST_DIGITS - digits.length())) + digits + ".rgb";
    }

    @Override
    public void begin(RunInfo begun) {
        run = begun;
    }

    @Override
    public void take(FrameBatch frames) throws IOException {
        for (int i = 0; i < frames.count(); i++) {
            folder.write(fileName(frames.frame(i)), frames.rgb(), frames.offset(i), frames.frameBytes());
        }
        bytes += frames.bytes();
    }

    @Override
    public void finish() throws IOException {
        if (folder.files() != run.frames().count()) {
            throw new IllegalStateException(folder.files() + " files for " + run.frames());
        }
        folder.finish();
    }

    @Override
    public void close() {
        folder.close();
    }

    @Override
    public List<WrittenFile> written() {
        return List.of(new WrittenFile(name, bytes));
    }
}
