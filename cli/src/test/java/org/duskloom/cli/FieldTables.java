package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.duskloom.engine.display.DisplayFields;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.format.ManifestFields;
import org.duskloom.engine.map.MapFields;
import org.duskloom.engine.survey.MeasurementReader;
import org.duskloom.engine.timeline.KeyFields;
import org.duskloom.engine.timeline.TimelineFields;

/** What files may hold, as tables for the documentation, from the declarations that the files are read by. */
final class FieldTables {
    private static final List<DeclaredObject> FILES = List.of(
            TimelineFields.TIMELINE,
            DisplayFields.DISPLAY,
            ManifestFields.MANIFEST,
            MapFields.MAP,
            MapFields.SHAPE,
            MeasurementReader.COLUMNS);
    private static final Pattern NESTED = Pattern.compile("object: ([a-z ]+)");

    private final String page;

    /** @param page the path of the page that lists all objects, as seen from the one that is written; may be empty */
    FieldTables(String page) {
        this.page = page;
    }

    /** Every object that a file may hold, outer ones first. */
    static List<DeclaredObject> objects() {
        Stream<DeclaredObject> inFiles = FILES.stream().flatMap(file -> file.all().stream());
        return Stream.concat(inFiles, Stream.of(KeyFields.COLOR)).distinct().toList();
    }

    static DeclaredObject object(String name) {
        return objects().stream()
                .filter(object -> object.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing declared is called " + name));
    }

    /** The page of all objects. */
    static String page() {
        FieldTables tables = new FieldTables("");
        String sections = objects().stream().map(tables::section).collect(Collectors.joining("\n"));
        return """
                # What files may hold

                Every field of a timeline, a display and the `frames.json` beside finished frames, and every column of a pixel map, of the
                pixels of a shape and of measurements, made from the declarations by which the program reads them. JSON may have comments (`//` and `/* */`) and commas before a closing bracket. What a page
                of the guides says at more length stands in the [handbook](handbook.md); the settings of effects stand in
                the [gallery](../gallery/README.md).

                """ + sections;
    }

    private String section(DeclaredObject object) {
        return "## " + object.name() + "\n\n" + full(object) + choices(object);
    }

    private static String choices(DeclaredObject object) {
        return object.choices().stream()
                .map(choice -> "\n" + (choice.needed() ? "Exactly one of " : "One at most of ")
                        + choice.fields().stream()
                                .map(field -> "`" + field.name() + "`")
                                .collect(Collectors.joining(", "))
                        + ".\n")
                .collect(Collectors.joining());
    }

    /** A row for every field: what it holds, its default, what it says. */
    String full(DeclaredObject object) {
        return "| field | holds | unless written | meaning |\n|---|---|---|---|\n"
                + object.fields().stream().map(this::row).collect(Collectors.joining());
    }

    private String row(DeclaredField<?> field) {
        return "| `" + field.name() + "` | " + holds(field.kind()) + " | " + otherwise(field) + " | " + field.meaning()
                + " |\n";
    }

    private String holds(ValueKind<?> kind) {
        if (kind instanceof ValueKind.Choice<?> choice) {
            return choice.words().stream().map(word -> "`\"" + word + "\"`").collect(Collectors.joining(", "));
        }
        if (kind instanceof ValueKind.Format format) {
            return "`" + format.phrase() + "`";
        }
        Matcher nested = NESTED.matcher(kind.phrase());
        return nested.replaceAll(found -> "object: [" + found.group(1) + "](" + page + "#"
                + found.group(1).toLowerCase(Locale.ROOT).replace(' ', '-') + ")");
    }

    private static String otherwise(DeclaredField<?> field) {
        if (field.isRequired()) {
            return "required";
        }
        return field.standardText().map(text -> "`" + text + "`").orElse(field.otherwise());
    }

    /** A row for every field of which one must be there: the names of the fields inside, with their defaults. */
    String brief(DeclaredObject object) {
        return "| " + object.name() + " | fields; those with a value here may be left out |\n|---|---|\n"
                + object.choices().stream()
                        .flatMap(choice -> choice.fields().stream())
                        .map(FieldTables::briefRow)
                        .collect(Collectors.joining());
    }

    private static String briefRow(DeclaredField<?> field) {
        List<DeclaredObject> inner = field.kind().objects();
        String held = inner.isEmpty()
                ? field.kind().phrase()
                : brief(inner.get(0).fields(), inner.get(0).choices());
        return "| `" + field.name() + "` | " + field.meaning() + ": " + held + " |\n";
    }

    private static String brief(List<DeclaredField<?>> fields, List<DeclaredObject.Choice> choices) {
        List<String> names = new ArrayList<>();
        for (DeclaredField<?> field : fields) {
            Optional<DeclaredObject.Choice> among = choices.stream()
                    .filter(choice -> choice.fields().contains(field))
                    .findFirst();
            if (among.isEmpty()) {
                names.add(brief(field));
            } else if (among.get().fields().get(0) == field) {
                names.add(among.get().fields().stream().map(FieldTables::brief).collect(Collectors.joining(" or ")));
            }
        }
        return String.join(", ", names);
    }

    private static String brief(DeclaredField<?> field) {
        String standard = field.standardText().map(text -> " `" + text + "`").orElse("");
        return "`" + field.name() + "`" + standard
                + (field.otherwise().isEmpty() ? "" : " (" + field.otherwise() + ")");
    }
}
