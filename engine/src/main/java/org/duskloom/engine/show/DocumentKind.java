package org.duskloom.engine.show;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.DisplayFields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.TimelineFields;

/** The kinds of files that carry the field {@code duskloom}, to tell one from another. */
public enum DocumentKind {
    /** What is played. */
    TIMELINE("timeline/", "a timeline", TimelineFields.LAYERS.name()),
    /** Where the pixels hang. */
    DISPLAY("display/", "a display", DisplayFields.SHAPES.name(), DisplayFields.PROPS.name()),
    /** What a file of frames holds. */
    FRAMES("frames/", "a description of frames");

    private final String start;
    private final String what;
    /** Fields that files of this kind have, and no others. */
    private final List<String> marks;

    DocumentKind(String start, String what, String... marks) {
        this.start = start;
        this.what = what;
        this.marks = List.of(marks);
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
     * Whether a file is of this kind, or of none at all, which its reader explains. If it is of another kind, or says
     * that it is and has the fields of another, an error says so, so that not each of its fields is reported.
     *
     * @param shownName the file's name as the user would type it
     * @param files knows the names of files as that file has them
     */
    boolean accepts(Node root, String shownName, ShowFiles files, Problems problems) {
        if (isMislabelled(root, shownName, problems)) {
            return false;
        }
        Optional<DocumentKind> kind = of(root).filter(found -> found != this);
        kind.ifPresent(found -> problems.error(
                format(root).orElseThrow().location(),
                "this is " + found.what + ", not " + what,
                found.instead(this, root, shownName, files)));
        return kind.isEmpty();
    }

    private static boolean isMislabelled(Node root, String shownName, Problems problems) {
        Optional<DocumentKind> said = of(root);
        Optional<DocumentKind> meant = Arrays.stream(values())
                .filter(kind -> kind.firstMark(root).isPresent())
                .findFirst()
                .filter(kind -> said.isPresent() && said.get().firstMark(root).isEmpty());
        meant.ifPresent(kind -> problems.error(
                format(root).orElseThrow().location(),
                "the file says that it is " + said.orElseThrow().what + ", but has \""
                        + kind.firstMark(root).orElseThrow() + "\", as " + kind.what + " does",
                "for " + kind.what + " write \"" + ValueKind.Format.FIELD + "\": \"" + kind.start + "1\""
                        + kind.use(shownName)));
        return meant.isPresent();
    }

    private Optional<String> firstMark(Node root) {
        return root instanceof ObjectNode object
                ? marks.stream().filter(mark -> object.value(mark).isPresent()).findFirst()
                : Optional.empty();
    }

    private String use(String shownName) {
        return this == DISPLAY
                ? "; it says where pixels hang, and a timeline names it: " + namingIt(shownName)
                : "; it says what is played when, and names its display";
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
        return this == DISPLAY ? "give a timeline that names it: " + namingIt(shownName) : "";
    }

    private static String namingIt(String shownName) {
        return "\"" + TimelineFields.DISPLAY.name() + "\": \""
                + Path.of(shownName).getFileName() + "\"";
    }

    private static Optional<TextNode> text(Node root, String field) {
        return root instanceof ObjectNode object && object.value(field).orElse(null) instanceof TextNode text
                ? Optional.of(text)
                : Optional.empty();
    }
}
