package org.duskloom.engine.format;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.file.StagedFolder;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.EncodingSink;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameEncoder;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortEncoder;
import org.duskloom.engine.wire.PortFrames;
import org.duskloom.engine.wire.PortMap;

/**
 * Writes the bytes of each port into a file of its own, straight from where they were encoded: port after port in each
 * batch.
 */
final class PortsSink implements RecordedSink, EncodingSink {
    /** Where the files of ports stand. */
    static final String FOLDER = "ports/";

    /** What the names of files in it look like. */
    static final Pattern MEMBERS = Pattern.compile("[^/]+\\.bin");

    private static final String EXTENSION = ".bin";

    private final List<PortEncoder> encoders;
    private final StagedFolder folder;
    private final List<StagedFile> files = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private Continuity continuity;

    private PortsSink(PortMap wiring, StagedFolder folder) {
        this.encoders = PortFrames.encoders(wiring);
        this.folder = folder;
    }

    static PortsSink open(PortMap wiring, OutputFolder folder, String patchName, CsvStyle style) throws IOException {
        // As a whole, so that no file is left of a port that is there no more.
        StagedFolder ports = folder.openFolder(FOLDER, MEMBERS);
        PortsSink sink = new PortsSink(wiring, ports);
        for (Port port : wiring.ports().ports()) {
            String file = port.name() + EXTENSION;
            sink.add(ports.open(file), FOLDER + file);
        }
        byte[] patch = PatchTable.of(wiring, style);
        sink.add(folder.open(patchName), patchName).write(patch, 0, patch.length);
        return sink;
    }

    /** Whether a file of that name has the bytes of a port. */
    static boolean isFile(String name) {
        return name.startsWith(FOLDER)
                && MEMBERS.matcher(name.substring(FOLDER.length())).matches();
    }

    private StagedFile add(StagedFile file, String name) {
        files.add(file);
        names.add(name);
        return file;
    }

    @Override
    public void begin(RunInfo run) {
        continuity = new Continuity(run);
    }

    @Override
    public FrameEncoder encoder() {
        return this::encode;
    }

    private void encode(FrameBatch frames, EncodedBytes into) {
        for (int port = 0; port < encoders.size(); port++) {
            PortEncoder encoder = encoders.get(port);
            int at = into.reserve(frames.count() * encoder.byteCount());
            Arrays.fill(into.array(), at, into.length(), (byte) 0);
            for (int i = 0; i < frames.count(); i++) {
                encoder.encode(
                        frames.frame(i), frames.rgb(), frames.offset(i), into.array(), at + i * encoder.byteCount());
            }
        }
    }

    @Override
    public void take(FrameBatch frames, EncodedBytes encoded) throws IOException {
        continuity.check(frames);
        int at = 0;
        for (int port = 0; port < encoders.size(); port++) {
            int count = frames.count() * encoders.get(port).byteCount();
            files.get(port).write(encoded.array(), at, count);
            at += count;
        }
    }

    @Override
    public void finish() throws IOException {
        continuity.checkComplete();
        for (StagedFile file : files) {
            file.finish();
        }
        folder.finish();
    }

    @Override
    public void close() {
        files.forEach(StagedFile::close);
        folder.close();
    }

    @Override
    public List<WrittenFile> written() {
        List<WrittenFile> written = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            written.add(new WrittenFile(names.get(i), files.get(i).bytesTaken()));
        }
        return written;
    }
}
