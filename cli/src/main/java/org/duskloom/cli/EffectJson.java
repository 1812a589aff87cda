package org.duskloom.cli;

import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Setting;

/**
 * What is known of effects, for programs: JSON (RFC 8259), a setting to a line. Numbers have {@code min}, {@code max} and
 * {@code whole}, choices their {@code words}; {@code range} and {@code default} say the same for all kinds in words; {@code
 * moves} says whether keys may be given.
 */
final class EffectJson {
    private static final String INDENT = "  ";

    private final StringBuilder text = new StringBuilder();

    private EffectJson() {}

    /** {@code {"duskloom": "effects/1", "effects": [...]}}. */
    static String ofAll(List<Effect> effects) {
        EffectJson json = new EffectJson();
        json.text.append("{\n  \"duskloom\": \"effects/1\",\n  \"effects\": [");
        for (int i = 0; i < effects.size(); i++) {
            json.text.append(i == 0 ? "\n    " : ",\n    ");
            json.effect(effects.get(i), INDENT.repeat(2));
        }
        return json.text.append(effects.isEmpty() ? "]\n}\n" : "\n  ]\n}\n").toString();
    }

    /** One effect as an object. */
    static String of(Effect effect) {
        EffectJson json = new EffectJson();
        json.effect(effect, "");
        return json.text.append('\n').toString();
    }

    private void effect(Effect effect, String indent) {
        String field = "\n" + indent + INDENT;
        text.append('{').append(field);
        text("name", effect.name()).append(',').append(field);
        text("summary", effect.summary()).append(',').append(field);
        text("formula", effect.formula()).append(',').append(field);
        text.append("\"settings\": [");
        List<Setting<?>> settings = effect.settings();
        for (int i = 0; i < settings.size(); i++) {
            text.append(i == 0 ? "" : ",").append(field).append(INDENT);
            setting(settings.get(i));
        }
        text.append(settings.isEmpty() ? "]" : field + "]");
        text.append('\n').append(indent).append('}');
    }

    private void setting(Setting<?> setting) {
        text.append('{');
        text("name", setting.name()).append(", ");
        text("unit", setting.unit()).append(", ");
        text("range", setting.range()).append(", ");
        text("default", setting.standardText()).append(", ");
        text.append("\"moves\": ").append(setting.moves()).append(", ");
        if (setting instanceof NumberSetting number) {
            text.append("\"min\": ").append(number.min());
            text.append(", \"max\": ").append(number.max());
            text.append(", \"whole\": ").append(number.isWhole()).append(", ");
        } else if (setting instanceof ChoiceSetting choice) {
            text.append("\"words\": [");
            for (int i = 0; i < choice.words().size(); i++) {
                text.append(i == 0 ? "" : ", ");
                quoted(choice.words().get(i));
            }
            text.append("], ");
        }
        text("meaning", setting.meaning()).append('}');
    }

    private StringBuilder text(String name, String value) {
        quoted(name);
        text.append(": ");
        quoted(value);
        return text;
    }

    /** Letters beyond ASCII are escaped, so that no pipe on the way can spoil them. */
    private void quoted(String plain) {
        text.append(JsonText.ascii(JsonText.quoted(plain)));
    }
}
