package org.duskloom.engine.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.document.FlagNode;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.PlainEffects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What effects add to the schema of a timeline: "if", "then" and "const" are of JSON Schema draft-07
 * (draft-handrews-json-schema-validation-01, sections 6.6 and 6.1.3).
 */
class EffectSchemasTest {
    private static final ObjectNode SCHEMA = (ObjectNode) Inputs.json(DocumentSchema.TIMELINE.json(PlainEffects.all()));

    /** The value that a path leads to: names of fields, and numbers of items. */
    private static Node at(String path) {
        Node node = SCHEMA;
        for (String step : path.split("/")) {
            node = node instanceof ListNode list
                    ? list.items().get(Integer.parseInt(step))
                    : ((ObjectNode) node).value(step).orElseThrow(() -> new AssertionError(step + " of " + path));
        }
        return node;
    }

    private static String text(String path) {
        return ((TextNode) at(path)).value();
    }

    private static List<String> texts(String path) {
        return ((ListNode) at(path))
                .items().stream().map(item -> ((TextNode) item).value()).toList();
    }

    @Test
    void saysOfWhichDraftItIs() {
        assertThat(text("$schema")).isEqualTo("http://json-schema.org/draft-07/schema#");
        assertThat(text("title")).isEqualTo("timeline");
    }

    /** In one order, for an editor shows the second list beside the first. */
    @Test
    void aCueNamesOneOfTheEffects() {
        List<Effect> effects = PlainEffects.all().effects();
        String effect = "definitions/cue/properties/effect/";
        assertThat(texts(effect + "enum"))
                .isEqualTo(effects.stream().map(Effect::name).toList());
        assertThat(texts(effect + "enumDescriptions"))
                .isEqualTo(effects.stream().map(Effect::summary).toList());
    }

    /** Without "required" the condition would hold for a cue that names no effect, and for every branch at once. */
    @Test
    void settingsAreThoseOfTheEffectThatIsNamed() {
        List<Effect> effects = PlainEffects.all().effects();
        List<Node> all = ((ListNode) at("definitions/cue/allOf")).items();
        int first = all.size() - effects.size();
        for (int i = 0; i < effects.size(); i++) {
            String branch = "definitions/cue/allOf/" + (first + i) + "/";
            String name = effects.get(i).name();
            assertThat(text(branch + "if/properties/effect/const")).isEqualTo(name);
            assertThat(texts(branch + "if/required")).containsExactly("effect");
            assertThat(text(branch + "then/properties/with/$ref")).isEqualTo("#/definitions/settings-of-" + name);
        }
    }

    @Test
    void anEffectHasItsOwnSettingsAndNoOthers() {
        ObjectNode light = (ObjectNode) at("definitions/settings-of-light/properties");
        assertThat(light.fields()).extracting("name").containsExactly("r", "g", "b", "a");
        assertThat(((FlagNode) at("definitions/settings-of-light/additionalProperties")).value())
                .isFalse();
        assertThat(((ObjectNode) at("definitions/settings-of-place/properties")).fields())
                .isEmpty();
    }

    /** A number stands as a number, or an editor would offer "1" where 1 is meant; a colour stands as a text. */
    @Test
    void whatIsTakenUnlessWrittenHasItsOwnType() {
        assertThat(((NumberNode) at("definitions/settings-of-light/properties/r/default")).value())
                .isEqualTo(1);
        assertThat(text("definitions/settings-of-solid/properties/color/default"))
                .isEqualTo("white");
    }

    @ParameterizedTest
    @CsvSource({"minimum, 0", "maximum, 1"})
    void aSettingHasItsBounds(String keyword, double bound) {
        assertThat(((NumberNode) at("definitions/settings-of-light/properties/a/" + keyword)).value())
                .isEqualTo(bound);
    }

    @Test
    void explainsASetting() {
        assertThat(text("definitions/settings-of-light/properties/g/description"))
                .isEqualTo("how much of it\nshare: 0 to 1\nunless written: 1");
    }
}
