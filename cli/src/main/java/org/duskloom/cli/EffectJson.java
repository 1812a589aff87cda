package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Setting;

/**
 * What is known of effects, for programs: JSON (RFC 8259), a setting to a line. Numbers have {@code min}, {@code max}
 * and {@code whole}, choices their {@code words}; {@code range} and {@code default} say the same for all kinds in
 * words; {@code moves} says whether keys may be given.
 */
final class EffectJson {
    private EffectJson() {}

    /** {@code {"duskloom": "effects/1", "effects": [...]}}. */
    static String ofAll(List<Effect> effects) {
        return written(new JsonText()
                .field(ValueKind.Format.FIELD, "effects/1")
                .field("effects", effects.stream().map(EffectJson::effect).toList()));
    }

    /** One effect as an object. */
    static String of(Effect effect) {
        return written(effect(effect));
    }

    /** Letters beyond ASCII are escaped, so that no pipe on the way can spoil them. */
    private static String written(JsonText json) {
        return JsonText.ascii(json.end());
    }

    private static JsonText effect(Effect effect) {
        return new JsonText()
                .field("name", effect.name())
                .field("summary", effect.summary())
                .field("formula", effect.formula())
                .field(
                        "settings",
                        effect.settings().stream().map(EffectJson::setting).toList());
    }

    private static JsonText.Inline setting(Setting<?> setting) {
        List<Object> fields = new ArrayList<>(List.of(
                "name", setting.name(),
                "unit", setting.unit(),
                "range", setting.range(),
                "default", setting.standardText(),
                "moves", setting.moves()));
        if (setting instanceof NumberSetting number) {
            fields.addAll(List.of("min", number.min(), "max", number.max(), "whole", number.isWhole()));
        } else if (setting instanceof ChoiceSetting choice) {
            fields.addAll(List.of("words", choice.words()));
        }
        fields.addAll(List.of("meaning", setting.meaning()));
        return JsonText.object(fields.toArray());
    }
}
