package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;

/** Reads the files that a display names; their paths are relative to the display. */
@FunctionalInterface
public interface ShapeFiles {
    /** The text of a file; nothing if an error was added. */
    Optional<SourceText> text(TextNode written, Problems problems);
}
