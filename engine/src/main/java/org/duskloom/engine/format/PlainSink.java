package org.duskloom.engine.format;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.RunInfo;

/**
 * Writes the bytes of all frames as they are, after a header. A frame that is left out would move all later ones, so
 * none may be.
 */
final class PlainSink implements RecordedSink {
    private final StagedFile file;
    private final String name;
    private final Function<RunInfo, byte[]> header;
    private Continuity continuity;

    /**
     * A sink that has not begun.
     *
     * @param file takes the bytes; finished or abandoned by the sink
     * @param name of the file, for the manifest
     * @param header what stands before the frames of a run
     */
    PlainSink(StagedFile file, String name, Function<RunInfo, byte[]> header) {
        this.file = file;
        this.name = name;
        this.header = header;
    }

    @Override
    public void begin(RunInfo run) throws IOException {
        continuity = new Continuity(run);
        byte[] bytes = header.apply(run);
        file.write(bytes, 0, bytes.length);
    }

    @Override
    public void take(FrameBatch frames) throws IOException {
        continuity.check(frames);
        file.write(frames.rgb(), 0, frames.bytes());
    }

    @Override
    public void finish() throws IOException {
        continuity.checkComplete();
        file.finish();
    }

    @Override
    public void close() {
        file.close();
    }

    @Override
    public List<WrittenFile> written() {
        return List.of(new WrittenFile(name, file.bytesTaken()));
    }
}
