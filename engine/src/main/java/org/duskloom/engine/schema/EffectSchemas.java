package org.duskloom.engine.schema;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.timeline.TimelineFields;

/** What the effects that there are add to the schema of a cue: their names, and for each of them its settings. */
final class EffectSchemas {
    private final List<Effect> effects;

    EffectSchemas(List<Effect> effects) {
        this.effects = effects;
    }

    /** The names, with what the audience sees. */
    Keywords names() {
        return new Keywords()
                .with("type", "string")
                .with("enum", effects.stream().map(Effect::name).toList())
                // A word of editors; validators pass over it.
                .with("enumDescriptions", effects.stream().map(Effect::summary).toList());
    }

    /** For each effect: if it is the one that is named, the settings are its own. */
    List<Keywords> branches(ObjectSchemas objects) {
        List<Keywords> branches = new ArrayList<>();
        for (Effect effect : effects) {
            String named = TimelineFields.EFFECT.name();
            Keywords only = new Keywords().with(named, new Keywords().with("const", effect.name()));
            Keywords settings = objects.definition("settings-of-" + effect.name(), settings(effect, objects));
            branches.add(new Keywords()
                    .with("if", new Keywords().with("properties", only).with("required", List.of(named)))
                    .with(
                            "then",
                            new Keywords()
                                    .with("properties", new Keywords().with(TimelineFields.WITH.name(), settings))));
        }
        return branches;
    }

    private static Keywords settings(Effect effect, ObjectSchemas objects) {
        Keywords properties = new Keywords();
        effect.settings().forEach(setting -> properties.with(setting.name(), property(setting, objects)));
        return new Keywords()
                .with("title", "settings of " + effect.name())
                .with("description", effect.summary() + "\n" + effect.formula())
                .with("type", "object")
                .with("properties", properties)
                .with("additionalProperties", false);
    }

    private static Keywords property(Setting<?> setting, ObjectSchemas objects) {
        String standard = setting.standardText();
        Keywords schema = new Keywords()
                .with(
                        "description",
                        setting.meaning() + "\n" + setting.unit() + ": " + setting.range()
                                + (standard.isEmpty() ? "" : "\nunless written: " + standard));
        if (!standard.isEmpty()) {
            schema.with("default", standard(setting, standard));
        }
        return schema.with(objects.kinds().of(setting.kind()));
    }

    private static Object standard(Setting<?> setting, String text) {
        if (setting instanceof NumberSetting || setting instanceof FlagSetting) {
            return new JsonText.Inline(text);
        }
        return setting instanceof PaletteSetting && text.startsWith("[")
                ? JsonText.list(
                        Arrays.stream(text.substring(1, text.length() - 1).split(", "))
                                .toArray())
                : text;
    }
}
