package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.FlagNode;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed must be what the registry says, for every effect that there is. */
class EffectsCommandTest {
    private static final EffectRegistry REGISTRY = EffectRegistry.installed();

    static Stream<Effect> effects() {
        return REGISTRY.effects().stream();
    }

    @Test
    void listsEveryEffectOnALine() {
        Ran ran = Ran.with("effects");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        Map<String, String> summaryByName = new HashMap<>();
        for (String line : joinedLines(ran.out())) {
            String[] parts = line.split(" {2,}", 2);
            summaryByName.put(parts[0], parts[1]);
        }
        Map<String, String> expected = new HashMap<>();
        effects().forEach(effect -> expected.put(effect.name(), effect.summary()));
        assertThat(summaryByName).isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("effects")
    void tellsEverythingAboutOne(Effect effect) {
        String out = Ran.with("effects", effect.name()).out();
        String words = " " + String.join(" ", out.split("\\s+")) + " ";
        assertThat(words).startsWith(" " + effect.name() + " " + effect.summary() + " formula ");
        assertThat(words).contains(" setting unit range default meaning ");
        List<String> rows = out.lines().toList();
        assertThat(rows).allMatch(row -> row.equals(row.stripTrailing()));
        for (Setting<?> setting : effect.settings()) {
            String start = setting.name() + " ";
            assertThat(rows).anyMatch(row -> row.startsWith(start) && row.contains("  " + setting.unit() + "  "));
        }
    }

    @ParameterizedTest
    @MethodSource("effects")
    void jsonOfOneSaysTheSame(Effect effect) {
        Ran ran = Ran.with("effects", effect.name(), "--json");
        assertThat(ran.code()).isZero();
        assertSame(effect, json(ran.out()));
    }

    @Test
    void jsonOfAllSaysTheSame() {
        Map<String, Node> root = fields(json(Ran.with("effects", "--json").out()));
        assertThat(text(root.get("duskloom"))).isEqualTo("effects/1");
        List<Node> listed = ((ListNode) root.get("effects")).items();
        assertThat(listed).hasSameSizeAs(REGISTRY.effects());
        for (int i = 0; i < listed.size(); i++) {
            assertSame(REGISTRY.effects().get(i), listed.get(i));
        }
    }

    /** Pipes and old consoles change what is not ASCII. */
    @Test
    void jsonIsAscii() {
        assertThat(Ran.with("effects", "--json").out()).matches("[\\n -~]*");
    }

    private static void assertSame(Effect effect, Node node) {
        Map<String, Node> fields = fields(node);
        assertThat(fields).containsOnlyKeys("name", "summary", "formula", "settings");
        assertThat(text(fields.get("name"))).isEqualTo(effect.name());
        assertThat(text(fields.get("summary"))).isEqualTo(effect.summary());
        assertThat(text(fields.get("formula"))).isEqualTo(effect.formula());
        List<Node> settings = ((ListNode) fields.get("settings")).items();
        assertThat(settings).hasSameSizeAs(effect.settings());
        for (int i = 0; i < settings.size(); i++) {
            assertSame(effect.settings().get(i), fields(settings.get(i)));
        }
    }

    private static void assertSame(Setting<?> setting, Map<String, Node> fields) {
        assertThat(text(fields.get("name"))).isEqualTo(setting.name());
        assertThat(text(fields.get("unit"))).isEqualTo(setting.unit());
        assertThat(text(fields.get("range"))).isEqualTo(setting.range());
        assertThat(text(fields.get("default"))).isEqualTo(setting.standardText());
        assertThat(text(fields.get("meaning"))).isEqualTo(setting.meaning());
        assertThat(((FlagNode) fields.get("moves")).value()).isEqualTo(setting.moves());
        int more = 0;
        if (setting instanceof NumberSetting number) {
            assertThat(((NumberNode) fields.get("min")).value()).isEqualTo(number.min());
            assertThat(((NumberNode) fields.get("max")).value()).isEqualTo(number.max());
            assertThat(((FlagNode) fields.get("whole")).value()).isEqualTo(number.isWhole());
            more = 3;
        } else if (setting instanceof ChoiceSetting choice) {
            List<Node> words = ((ListNode) fields.get("words")).items();
            assertThat(words.stream().map(EffectsCommandTest::text)).isEqualTo(choice.words());
            more = 1;
        }
        assertThat(fields).hasSize(6 + more);
    }

    private static Node json(String text) {
        Problems problems = new Problems();
        Node node = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "effects", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .orElseThrow();
        assertThat(problems.inFileOrder()).isEmpty();
        return node;
    }

    private static Map<String, Node> fields(Node node) {
        Map<String, Node> fields = new HashMap<>();
        for (Field field : ((ObjectNode) node).fields()) {
            fields.put(field.name(), field.value());
        }
        return fields;
    }

    private static String text(Node node) {
        return ((TextNode) node).value();
    }

    /** A line that starts with a blank goes on with the one before. */
    private static List<String> joinedLines(String text) {
        List<String> lines = new ArrayList<>();
        for (String line : text.split("\n")) {
            if (line.startsWith(" ")) {
                int last = lines.size() - 1;
                lines.set(last, lines.get(last) + " " + line.strip());
            } else {
                lines.add(line);
            }
        }
        return lines;
    }
}
