package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.sound.LabelTrack;

/** Reads the label tracks that a timeline names. */
public interface LabelFiles {
    /** No files, for timelines that name none. */
    LabelFiles NONE = file -> {
        throw new IllegalStateException("there are no files to read " + file.value() + " from");
    };

    /** A track; nothing if an error was added. */
    Optional<LabelTrack> read(TextNode file);
}
