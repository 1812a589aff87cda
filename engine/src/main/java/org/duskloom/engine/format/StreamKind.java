package org.duskloom.engine.format;

import java.io.IOException;
import java.util.List;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameSink;

/** A kind of output that is a single file written from front to back, so that it can go into a pipe as well. */
public interface StreamKind extends OutputKind {
    /** The name of its file in a folder. */
    String file();

    /** A sink that writes into a file, which it finishes or abandons. */
    FrameSink into(StagedFile file);

    @Override
    default List<String> files() {
        return List.of(file());
    }

    @Override
    default FrameSink open(OutputFolder folder) throws IOException {
        return into(folder.open(file()));
    }
}
