package org.duskloom.engine.format;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/**
 * All that one run writes into a folder: the outputs of the kinds that were asked for, and the manifest that speaks of
 * them. Files are begun before the first frame, so that what cannot be written is known by then, and become final
 * together.
 */
public final class FrameOutputs implements Closeable {
    private final OutputFolder folder;
    private final RunInfo run;
    private final Origin origin;
    private final List<FrameSink> sinks = new ArrayList<>();
    private final DigestSink digest = new DigestSink();
    private final StagedFile manifest;

    /**
     * Begins the files.
     *
     * @param folder where they stand; closed by this
     * @param kinds what is asked for
     * @param run what the frames will be
     * @param origin for the manifest
     * @throws IOException if a file cannot be begun
     */
    public FrameOutputs(OutputFolder folder, List<? extends OutputKind> kinds, RunInfo run, Origin origin)
            throws IOException {
        this.folder = folder;
        this.run = run;
        this.origin = origin;
        try {
            for (OutputKind kind : kinds) {
                sinks.add(kind.open(folder));
            }
            this.manifest = folder.openManifest(FrameManifest.FILE);
        } catch (IOException | RuntimeException refused) {
            close();
            throw refused;
        }
        sinks.add(digest);
    }

    /** Those that take the frames of the run. */
    public List<FrameSink> sinks() {
        return List.copyOf(sinks);
    }

    /**
     * All sinks are finished: writes the manifest and makes the files final.
     *
     * @throws IOException if that fails; then none is
     */
    public void publish() throws IOException {
        List<WrittenFile> files = new ArrayList<>();
        for (FrameSink sink : sinks) {
            if (sink instanceof RecordedSink recorded) {
                files.addAll(recorded.written());
            }
        }
        files.sort(Comparator.comparing(WrittenFile::file));
        new FrameManifest(run, digest.sha256Hex(), files, origin).writeTo(manifest);
        folder.publish();
    }

    /** Abandons what is not final. */
    @Override
    public void close() throws IOException {
        IOException first = null;
        for (FrameSink sink : sinks) {
            try {
                sink.close();
            } catch (IOException fault) {
                if (first == null) {
                    first = fault;
                } else {
                    first.addSuppressed(fault);
                }
            }
        }
        folder.close();
        if (first != null) {
            throw first;
        }
    }
}
