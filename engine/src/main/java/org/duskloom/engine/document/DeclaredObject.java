package org.duskloom.engine.document;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The fields that objects of a kind may hold, and which of them exclude each other.
 *
 * @param name what such an object is called in the reference: {@code "layer"}
 * @param fields in the order of the reference and of hints; names are unique
 * @param choices fields of which one only may be there
 */
public record DeclaredObject(String name, List<DeclaredField<?>> fields, List<Choice> choices) {
    public DeclaredObject {
        Objects.requireNonNull(name, "name");
        fields = List.copyOf(fields);
        choices = List.copyOf(choices);
        if (fields.stream().map(DeclaredField::name).distinct().count() != fields.size()) {
            throw new IllegalArgumentException("two fields of " + name + " have one name");
        }
    }

    /**
     * Fields of which one only may be there.
     *
     * @param fields two or more
     * @param needed whether one must be there
     * @param hint what to do about none or several
     */
    public record Choice(List<DeclaredField<?>> fields, boolean needed, String hint) {
        public Choice {
            fields = List.copyOf(fields);
            Objects.requireNonNull(hint, "hint");
        }
    }

    /** An object of these fields. */
    public static DeclaredObject of(String name, DeclaredField<?>... fields) {
        return new DeclaredObject(name, Arrays.asList(fields), List.of());
    }

    /** The same, where exactly one of these fields must be there. */
    public DeclaredObject needsOne(String hint, DeclaredField<?>... among) {
        return with(new Choice(Arrays.asList(among), true, hint));
    }

    /** The same, where one at most of these fields may be there. */
    public DeclaredObject allowsOne(String hint, DeclaredField<?>... among) {
        return with(new Choice(Arrays.asList(among), false, hint));
    }

    private DeclaredObject with(Choice choice) {
        if (!fields.containsAll(choice.fields())) {
            throw new IllegalArgumentException(name + " lacks one of " + choice.fields());
        }
        List<Choice> all = new ArrayList<>(choices);
        all.add(choice);
        return new DeclaredObject(name, fields, all);
    }

    /** The field of that name. */
    public Optional<DeclaredField<?>> field(String fieldName) {
        return Optional.ofNullable(find(fieldName));
    }

    /** Whether there is a field of that name. */
    boolean has(String fieldName) {
        return find(fieldName) != null;
    }

    private DeclaredField<?> find(String fieldName) {
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).name().equals(fieldName)) {
                return fields.get(i);
            }
        }
        return null;
    }

    /** The names of all fields, in order. */
    public List<String> names() {
        return fields.stream().map(DeclaredField::name).toList();
    }

    /** This and all objects that may stand in it, each once, the outer ones first. */
    public Set<DeclaredObject> all() {
        Set<DeclaredObject> found = new LinkedHashSet<>();
        addTo(found);
        return found;
    }

    private void addTo(Set<DeclaredObject> found) {
        if (found.add(this)) {
            fields.forEach(field -> field.kind().objects().forEach(inner -> inner.addTo(found)));
        }
    }
}
