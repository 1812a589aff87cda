package org.duskloom.engine.show;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.TimelineFields;

/** The kinds of files that carry the field {@code duskloom}, to tell one from another. */
public enum DocumentKind {
    /** What is played. */
    TIMELINE("timeline/", "a timeline"),
    /** Where the pixels hang. */
    DISPLAY("display/", "a display"),
    /** What a file of frames holds. */
    FRAMES("frames/", "a description of frames");

    private final String start;
    private final String what;

    DocumentKind(String start, String what) {
        this.start = start;
        this.what = what;
    }

    /** The kind that a file says it is of, in any version; nothing if it says none that is known. */
    public static Optional<DocumentKind> of(Node root) {
        return format(root)
                .flatMap(format -> Arrays.stream(values())
                        .filter(kind -> format.value().startsWith(kind.start))
                        .findFirst());
    }

    /** What a file says that it is, word for word; nothing if it says nothing. */
    public static Optional<TextNode> format(Node root) {
        return text(root, ValueKind.Format.FIELD);
    }

    /**
     * Whether a file is of this kind, or of none at all, which its reader explains. If it is of another kind an error
     * says so, so that not each of its fields is reported.
     *
     * @param shownName the file's name as the user would type it
     * @param files knows the names of files as that file has them
     */
    boolean accepts(Node root, String shownName, ShowFiles files, Problems problems) {
        Optional<DocumentKind> kind = of(root).filter(found -> found != this);
        kind.ifPresent(found -> problems.error(
                format(root).orElseThrow().location(),
                "this is " + found.what + ", not " + what,
                found.instead(this, root, shownName, files)));
        return kind.isEmpty();
    }

    /** What to give instead of a file of this kind. */
    private String instead(DocumentKind wanted, Node root, String shownName, ShowFiles files) {
        if (this == TIMELINE && wanted == DISPLAY) {
            return text(root, TimelineFields.DISPLAY.name())
                    .map(display -> "its display is " + files.shown(display.value()))
                    .orElseGet(() -> text(root, TimelineFields.MAP.name())
                            .map(map -> "it has no display, only the map " + files.shown(map.value()))
                            .orElse(""));
        }
        return this == DISPLAY
                ? "give a timeline that names it: \"display\": \""
                        + Path.of(shownName).getFileName() + "\""
                : "";
    }

    private static Optional<TextNode> text(Node root, String field) {
        return root instanceof ObjectNode object && object.value(field).orElse(null) instanceof TextNode text
                ? Optional.of(text)
                : Optional.empty();
    }
}
