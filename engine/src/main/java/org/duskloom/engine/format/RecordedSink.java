package org.duskloom.engine.format;

import java.util.List;
import org.duskloom.engine.frame.FrameSink;

/** A sink whose files are listed in the manifest. */
public interface RecordedSink extends FrameSink {
    /** The files it has written; all of them once it is finished. */
    List<WrittenFile> written();
}
