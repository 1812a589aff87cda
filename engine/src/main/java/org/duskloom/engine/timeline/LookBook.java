package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.KindCheck;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** The looks of a timeline. A look holds any field of a cue that says what is seen, not where or when. */
final class LookBook {
    private final Map<String, ObjectNode> looks = new LinkedHashMap<>();
    private final Map<String, Field> places = new LinkedHashMap<>();

    /** By look that a cue uses, the fields that some cue has taken: those are read with it. */
    private final Map<String, Set<String>> taken = new HashMap<>();

    private final Map<String, Set<String>> takenSettings = new HashMap<>();

    /** Adds a look as written. */
    void add(Field look, Problems problems) {
        String what = "look " + Quoted.of(look.name());
        places.put(look.name(), look);
        Optional<ObjectNode> written = Expected.object(look.value(), what, problems);
        if (written.isEmpty()) {
            return;
        }
        List<Field> usable = new ArrayList<>(written.get().fields());
        usable.removeIf(field -> belongsToCues(field, what, problems));
        ObjectNode seen = new ObjectNode(look.value().location(), usable);
        Fields.of(seen, CueFields.LOOK_OBJECT, what, problems);
        usable.removeIf(field -> CueFields.LOOK_OBJECT.field(field.name()).isEmpty());
        looks.put(look.name(), new ObjectNode(look.value().location(), usable));
    }

    private static boolean belongsToCues(Field field, String what, Problems problems) {
        boolean only = CueFields.NOT_IN_LOOKS.contains(field.name());
        if (only) {
            problems.error(
                    field.nameLocation(),
                    what + " has the field \"" + field.name() + "\"",
                    "that belongs to the cues that use the look");
        }
        return only;
    }

    /** Whether there is a look of that name that could be read. */
    boolean knows(String name) {
        return looks.containsKey(name);
    }

    /**
     * A cue with the fields of its look filled in. Its own fields win; its own settings win over the look's of the same
     * name, unless it names an effect of its own, which takes only its own settings.
     */
    ObjectNode filledIn(ObjectNode cue, Problems problems) {
        if (!(cue.value(CueFields.LOOK.name()).orElse(null) instanceof TextNode name) || !isKnown(name, problems)) {
            return cue;
        }
        List<Field> merged = new ArrayList<>(looks.get(name.value()).fields());
        if (cue.value(CueFields.EFFECT.name()).isPresent()) {
            merged.removeIf(field -> field.name().equals(CueFields.WITH.name()));
        }
        note(name.value(), merged, cue);
        int ofLook = merged.size();
        for (Field own : cue.fields()) {
            int place = place(own.name(), merged, ofLook);
            if (place == ofLook) {
                merged.add(own);
            } else {
                merged.set(place, own.name().equals(CueFields.WITH.name()) ? joined(merged.get(place), own) : own);
            }
        }
        return new ObjectNode(cue.location(), merged);
    }

    /** Where the field of that name stands among the first of some; so many if there is none. */
    private static int place(String name, List<Field> fields, int count) {
        int place = 0;
        while (place < count && !fields.get(place).name().equals(name)) {
            place++;
        }
        return place;
    }

    /** The fields and the settings of a look that a cue takes: those that it has not itself. */
    private void note(String look, List<Field> fields, ObjectNode cue) {
        note(look, fields, cue, taken);
        if (place(CueFields.WITH.name(), fields, fields.size()) < fields.size()) {
            ObjectNode own = new ObjectNode(cue.location(), settings(cue));
            note(look, settings(looks.get(look)), own, takenSettings);
        }
    }

    private static void note(String look, List<Field> fields, ObjectNode own, Map<String, Set<String>> byLook) {
        Set<String> known = byLook.computeIfAbsent(look, unused -> new HashSet<>());
        for (Field field : fields) {
            if (!known.contains(field.name()) && own.value(field.name()).isEmpty()) {
                known.add(field.name());
            }
        }
    }

    private boolean isKnown(TextNode name, Problems problems) {
        if (!places.containsKey(name.value())) {
            String hint = places.isEmpty()
                    ? "the timeline has no \"looks\""
                    : NearestName.hint(name.value(), places.keySet());
            problems.error(name.location(), "there is no look " + Quoted.of(name.value()), hint);
        }
        return knows(name.value());
    }

    /** Adds an error for whatever is wrong in a look and that no cue has shown. */
    void checkUntaken(Problems problems) {
        looks.forEach((name, look) -> {
            for (Field field : look.fields()) {
                if (!taken.getOrDefault(name, Set.of()).contains(field.name())) {
                    DeclaredField<?> declared =
                            CueFields.LOOK_OBJECT.field(field.name()).orElseThrow();
                    String what = "\"" + field.name() + "\" of look " + Quoted.of(name);
                    KindCheck.check(field.value(), declared.kind(), what, problems);
                }
            }
        });
    }

    /** For every look that names an effect: the settings that no cue has shown. */
    List<UntakenSettings> untakenSettings() {
        List<UntakenSettings> untaken = new ArrayList<>();
        looks.forEach((name, look) -> {
            if (look.value(CueFields.EFFECT.name()).orElse(null) instanceof TextNode effect) {
                Set<String> known = takenSettings.getOrDefault(name, Set.of());
                List<Field> with = settings(look).stream()
                        .filter(setting -> !known.contains(setting.name()))
                        .toList();
                untaken.add(new UntakenSettings(effect, with));
            }
        });
        return untaken;
    }

    private static List<Field> settings(ObjectNode cue) {
        return cue.value(CueFields.WITH.name()).orElse(null) instanceof ObjectNode with ? with.fields() : List.of();
    }

    /** Warns of looks that no cue uses. */
    void warnOfUnused(Problems problems) {
        places.forEach((name, field) -> {
            if (!taken.containsKey(name)) {
                problems.warn(field.nameLocation(), "no cue uses the look " + Quoted.of(name), "");
            }
        });
    }

    private static Field joined(Field ofLook, Field own) {
        if (!(ofLook.value() instanceof ObjectNode base) || !(own.value() instanceof ObjectNode over)) {
            return own;
        }
        Map<String, Field> settings = new LinkedHashMap<>();
        base.fields().forEach(field -> settings.put(field.name(), field));
        over.fields().forEach(field -> settings.put(field.name(), field));
        return new Field(
                own.name(), own.nameLocation(), new ObjectNode(over.location(), new ArrayList<>(settings.values())));
    }
}
