package org.duskloom.engine.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.timeline.TimelineFields;

/** The schemas of objects whose fields are declared: each stands once among the definitions, under its name. */
final class ObjectSchemas {
    private final KindSchema kinds = new KindSchema(this);
    private final EffectSchemas effects;
    private final Map<String, Keywords> definitions = new LinkedHashMap<>();

    /** @param effects what a cue may name; none where there are no cues */
    ObjectSchemas(EffectSchemas effects) {
        this.effects = effects;
    }

    /** A whole file. */
    String file(DeclaredObject object, String description) {
        Keywords file = new Keywords()
                .with("$schema", "http://json-schema.org/draft-07/schema#")
                .with("title", object.name())
                .with("description", description)
                // Words of editors that know files with remarks; validators pass over them.
                .with("allowComments", true)
                .with("allowTrailingCommas", true)
                .with(body(object));
        Keywords all = new Keywords();
        definitions.forEach(all::with);
        JsonText json = (JsonText) file.with("definitions", all).json();
        return json.end();
    }

    KindSchema kinds() {
        return kinds;
    }

    /** A schema that leads to that of the object. */
    Keywords reference(DeclaredObject object) {
        String name = object.name().replace(' ', '-');
        if (!definitions.containsKey(name)) {
            // Objects may hold their like.
            definitions.put(name, new Keywords());
            definitions.put(name, new Keywords().with("title", object.name()).with(body(object)));
        }
        return reference(name);
    }

    /**
     * A schema that leads to that of one of the objects: the one whose first field that must be there is there.
     * Where none is yet, an editor offers the fields of all.
     */
    Keywords oneOf(List<DeclaredObject> objects) {
        if (objects.size() == 1) {
            return reference(objects.get(0));
        }
        List<Keywords> all = objects.stream().map(this::reference).toList();
        Keywords choice = new Keywords().with("anyOf", all);
        for (int i = objects.size() - 1; i >= 0; i--) {
            choice = new Keywords()
                    .with("if", required(mark(objects.get(i))))
                    .with("then", all.get(i))
                    .with("else", choice);
        }
        String name = objects.stream().map(DeclaredObject::name).collect(Collectors.joining(" or "));
        return definition(name.replace(' ', '-'), choice);
    }

    private static String mark(DeclaredObject object) {
        return object.fields().stream()
                .filter(DeclaredField::isRequired)
                .findFirst()
                .orElseThrow()
                .name();
    }

    private static Keywords required(String... names) {
        return new Keywords().with("required", List.of(names));
    }

    Keywords definition(String name, Keywords schema) {
        definitions.putIfAbsent(name, schema);
        return reference(name);
    }

    private static Keywords reference(String name) {
        return new Keywords().with("$ref", "#/definitions/" + name);
    }

    private Keywords body(DeclaredObject object) {
        Keywords properties = new Keywords();
        object.fields().forEach(field -> properties.with(field.name(), property(field)));
        Keywords schema = new Keywords().with("type", "object").with("properties", properties);
        List<String> required = object.fields().stream()
                .filter(DeclaredField::isRequired)
                .map(DeclaredField::name)
                .toList();
        if (!required.isEmpty()) {
            schema.with("required", required);
        }
        schema.with("additionalProperties", false);
        List<Keywords> conditions = new ArrayList<>();
        for (DeclaredObject.Choice choice : object.choices()) {
            if (choice.needed()) {
                schema.with(
                        "oneOf",
                        names(choice).stream().map(ObjectSchemas::required).toList());
            } else {
                conditions.addAll(exclusions(choice));
            }
        }
        if (object.fields().contains(TimelineFields.EFFECT)) {
            conditions.addAll(effects.branches(this));
        }
        return conditions.isEmpty() ? schema : schema.with("allOf", conditions);
    }

    private Keywords property(DeclaredField<?> field) {
        Keywords schema = new Keywords().with("description", description(field));
        field.standardText().ifPresent(text -> schema.with("default", new JsonText.Inline(text)));
        if (field == TimelineFields.EFFECT) {
            return schema.with(effects.names());
        }
        Keywords kind = kinds.of(field.kind());
        // Beside $ref all other keywords are passed over.
        return kind.has("$ref") ? schema.with("allOf", List.of(kind)) : schema.with(kind);
    }

    private static String description(DeclaredField<?> field) {
        String otherwise = field.standardText().orElse(field.otherwise());
        return plain(field.meaning()) + "\n" + plain(field.kind().phrase())
                + (otherwise.isEmpty() ? "" : "\nunless written: " + plain(otherwise));
    }

    /** Without the signs of Markdown that the reference has. */
    private static String plain(String text) {
        return text.replace("`", "");
    }

    private static List<String> names(DeclaredObject.Choice choice) {
        return choice.fields().stream().map(DeclaredField::name).toList();
    }

    /** Of each two of the fields one only may be there. */
    private static List<Keywords> exclusions(DeclaredObject.Choice choice) {
        List<String> names = names(choice);
        List<Keywords> pairs = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                String both = Quoted.of(names.get(i)) + " and " + Quoted.of(names.get(j));
                pairs.add(new Keywords()
                        .with("not", required(names.get(i), names.get(j)))
                        // A word of editors.
                        .with("errorMessage", "both " + both + ": " + choice.hint()));
            }
        }
        return pairs;
    }
}
