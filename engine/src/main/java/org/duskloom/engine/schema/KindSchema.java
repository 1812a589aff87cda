package org.duskloom.engine.schema;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * The schema of what a field may hold. Of several forms each JSON type has its own: most keywords look at one type
 * only, so they stand side by side, and an editor says of a number that it is too large, not that it is none of
 * five things.
 */
final class KindSchema {
    /** Beyond this a bound is none. */
    private static final double NO_BOUND = 1e300;

    private final ObjectSchemas objects;

    KindSchema(ObjectSchemas objects) {
        this.objects = objects;
    }

    Keywords of(ValueKind<?> kind) {
        if (kind instanceof ValueKind.Number number) {
            return bounds(new Keywords().with("type", "number"), number.min(), number.max());
        }
        if (kind instanceof ValueKind.Whole whole) {
            return bounds(new Keywords().with("type", "integer"), whole.min(), whole.max());
        }
        if (kind instanceof ValueKind.Flag) {
            return new Keywords().with("type", "boolean");
        }
        if (kind instanceof ValueKind.Choice<?> choice) {
            return new Keywords().with("type", "string").with("enum", choice.words());
        }
        if (kind instanceof ValueKind.Text) {
            return new Keywords().with("type", "string");
        }
        if (kind instanceof ValueKind.Texts) {
            return new Keywords()
                    .with("type", List.of("string", "array"))
                    .with("items", new Keywords().with("type", "string"));
        }
        if (kind instanceof ValueKind.Format format) {
            return new Keywords().with("type", "string").with("enum", List.of(format.format()));
        }
        if (kind instanceof ValueKind.Items items) {
            return items(items);
        }
        if (kind instanceof ValueKind.Named named) {
            return new Keywords().with("type", "object").with("additionalProperties", of(named.value()));
        }
        if (kind instanceof ValueKind.Nested nested) {
            return objects.reference(nested.object());
        }
        return forms(flat(List.of(kind)));
    }

    private static Keywords bounds(Keywords schema, double min, double max) {
        if (min > -NO_BOUND) {
            schema.with("minimum", number(min));
        }
        return max < NO_BOUND ? schema.with("maximum", number(max)) : schema;
    }

    private static JsonText.Inline number(double value) {
        return new JsonText.Inline(ShortestDecimal.of(value));
    }

    private Keywords items(ValueKind.Items items) {
        Keywords schema = new Keywords().with("type", "array");
        Keywords item = of(items.item());
        if (!item.allowsEverything()) {
            schema.with("items", item);
        }
        if (items.least() > 0) {
            schema.with("minItems", items.least());
        }
        return items.most() < Integer.MAX_VALUE ? schema.with("maxItems", items.most()) : schema;
    }

    /** All forms, those of forms too. */
    private static List<ValueKind<?>> flat(List<ValueKind<?>> kinds) {
        List<ValueKind<?>> flat = new ArrayList<>();
        for (ValueKind<?> kind : kinds) {
            if (kind instanceof ValueKind.Own own && !own.forms().isEmpty()) {
                flat.addAll(flat(own.forms()));
            } else {
                flat.add(kind);
            }
        }
        return flat;
    }

    private Keywords forms(List<ValueKind<?>> forms) {
        if (forms.stream().anyMatch(ValueKind.Own.class::isInstance)) {
            // One of them may be anything: what it is, only its reader knows.
            return new Keywords();
        }
        if (forms.size() == 1) {
            return of(forms.get(0));
        }
        if (forms.stream().anyMatch(ValueKind.Choice.class::isInstance)) {
            // "enum" looks at values of all types.
            return new Keywords().with("anyOf", forms.stream().map(this::of).toList());
        }
        Set<String> types = new LinkedHashSet<>();
        Keywords all = new Keywords();
        List<DeclaredObject> nested = new ArrayList<>();
        for (ValueKind<?> form : forms) {
            if (form instanceof ValueKind.Nested object) {
                types.add("object");
                nested.add(object.object());
            } else {
                add(of(form), types, all);
            }
        }
        all.with("type", List.copyOf(types));
        return nested.isEmpty() ? all : all.with(onlyOf("object", objects.oneOf(nested)));
    }

    /** Adds the schema of one form. */
    private static void add(Keywords form, Set<String> types, Keywords all) {
        List<?> ofForm = form.value("type") instanceof List<?> several ? several : List.of(form.value("type"));
        for (Object type : ofForm) {
            if (!types.add((String) type)) {
                throw new IllegalArgumentException("two forms of one value are of the type " + type);
            }
        }
        all.with(form);
    }

    private static Keywords onlyOf(String type, Keywords schema) {
        return new Keywords().with("if", new Keywords().with("type", type)).with("then", schema);
    }
}
