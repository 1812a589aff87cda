package org.duskloom.engine.timeline;

import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;

/**
 * Where a timeline's pixels come from.
 *
 * @param kind what the file is
 * @param file its path as written, relative to the timeline
 * @param groups the groups beside a bare map
 */
public record PixelSource(Kind kind, TextNode file, Optional<Node> groups) {
    public PixelSource {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(groups, "groups");
    }

    /** What the file is. */
    public enum Kind {
        /** A display of placed props, JSON. */
        DISPLAY,
        /** A pixel map, CSV. */
        MAP
    }
}
