package org.duskloom.effects;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** What every setting of every effect says that it takes, it takes. */
class SettingKindsTest {
    @Test
    void everySettingSaysWhatItTakes() {
        for (Effect effect : EffectRegistry.installed().effects()) {
            for (Setting<?> setting : effect.settings()) {
                String what = setting + " of " + effect.name();
                assertThat(setting.kind().phrase()).as(what).isNotBlank();
                assertThat(setting.kind().objects().isEmpty())
                        .as(what + " moves or not")
                        .isNotEqualTo(setting.moves());
            }
        }
    }

    @Test
    void defaultsAreOfTheirKind() {
        int read = 0;
        for (Effect effect : EffectRegistry.installed().effects()) {
            for (Setting<?> setting : effect.settings()) {
                String standard = setting.standardText();
                if (setting instanceof ChoiceSetting
                        || setting instanceof FlagSetting
                        || setting instanceof NumberSetting) {
                    Problems problems = new Problems();
                    Node node = node(setting instanceof ChoiceSetting ? JsonText.quoted(standard) : standard, problems);
                    ValueKind<?> kind = setting.kind() instanceof ValueKind.Own own
                            ? own.forms().get(0)
                            : setting.kind();
                    assertThat(kind.read(node, setting.name(), problems))
                            .as("%s of %s", setting, effect.name())
                            .isPresent();
                    assertThat(problems.hasErrors()).isFalse();
                    read++;
                }
            }
        }
        assertThat(read).isGreaterThan(50);
    }

    private static Node node(String json, Problems problems) {
        byte[] bytes = ("{\"v\": " + json + "}").getBytes(StandardCharsets.UTF_8);
        SourceText source = SourceText.of(bytes, "v.json", problems).orElseThrow();
        return ((ObjectNode) JsonReader.read(source, problems).orElseThrow())
                .fields()
                .get(0)
                .value();
    }
}
