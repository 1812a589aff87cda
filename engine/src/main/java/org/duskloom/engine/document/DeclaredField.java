package org.duskloom.engine.document;

import java.util.Objects;
import java.util.Optional;

/**
 * One field that objects of a kind may hold. It is declared once: readers ask for it by its declaration, and what is
 * allowed, the hints, the reference and the schema come from there.
 *
 * @param <T> what its value is to the reader
 */
public final class DeclaredField<T> {
    /** What any file may carry so that an editor knows what it may hold; the readers leave it alone. */
    public static final DeclaredField<Node> SCHEMA =
            optional("$schema", ValueKind.Own.of("text"), "", "where an editor finds the JSON Schema of the file");

    private final String name;
    private final ValueKind<T> kind;
    private final boolean required;
    private final T standard;
    private final String standardText;
    private final String otherwise;
    private final String meaning;
    /** The label that was asked for last: files say the same of thousands of objects. */
    private Label last = new Label(null, "");

    /** What a field is called that belongs to something. */
    private record Label(String what, String text) {}

    private DeclaredField(
            String name,
            ValueKind<T> kind,
            boolean required,
            T standard,
            String standardText,
            String otherwise,
            String meaning) {
        this.name = Objects.requireNonNull(name, "name");
        this.kind = Objects.requireNonNull(kind, "kind");
        this.required = required;
        this.standard = standard;
        this.standardText = standardText;
        this.otherwise = Objects.requireNonNull(otherwise, "otherwise");
        this.meaning = Objects.requireNonNull(meaning, "meaning");
    }

    /** A field that must be there. */
    public static <T> DeclaredField<T> required(String name, ValueKind<T> kind, String meaning) {
        return new DeclaredField<>(name, kind, true, null, null, "", meaning);
    }

    /** A field with a default. */
    public static <T> DeclaredField<T> of(String name, ValueKind<T> kind, T standard, String meaning) {
        return new DeclaredField<>(
                name, kind, false, Objects.requireNonNull(standard), kind.written(standard), "", meaning);
    }

    /**
     * A field whose default only its reader knows.
     *
     * @param standardText the default as it would be written in a file
     */
    public static <T> DeclaredField<T> written(String name, ValueKind<T> kind, String standardText, String meaning) {
        return new DeclaredField<>(name, kind, false, null, Objects.requireNonNull(standardText), "", meaning);
    }

    /**
     * A field without a default.
     *
     * @param otherwise what holds where it is not written, as a phrase; empty where that goes without saying
     */
    public static <T> DeclaredField<T> optional(String name, ValueKind<T> kind, String otherwise, String meaning) {
        return new DeclaredField<>(name, kind, false, null, null, otherwise, meaning);
    }

    /** The word that stands in a file. */
    public String name() {
        return name;
    }

    /** What it may hold. */
    public ValueKind<T> kind() {
        return kind;
    }

    /** Whether it must be there. */
    public boolean isRequired() {
        return required;
    }

    /** The default as it would be written in a file; nothing where there is none. */
    public Optional<String> standardText() {
        return Optional.ofNullable(standardText);
    }

    /**
     * What holds where it is not written, as a phrase; empty where there is a default, or where that goes without
     * saying.
     */
    public String otherwise() {
        return otherwise;
    }

    /** What it says, in one phrase. */
    public String meaning() {
        return meaning;
    }

    /** The default. */
    T standard() {
        if (standard == null) {
            throw new IllegalStateException(name + " has no default");
        }
        return standard;
    }

    /** What it is called in messages: {@code "count" of a ring}. Threads that ask at once get the same. */
    String labelOf(String what) {
        Label known = last;
        if (!what.equals(known.what())) {
            known = new Label(what, "\"" + name + "\" of " + what);
            last = known;
        }
        return known.text();
    }

    @Override
    public String toString() {
        return name;
    }
}
