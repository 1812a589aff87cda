package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.schema.DocumentSchema;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What an editor makes of the schemas: asked of the language service of a widely used editor, the npm package
 * vscode-json-languageservice, in {@code cli/target/editor} or where NODE_PATH says. Without node or the package the
 * tests are skipped.
 */
class SchemaEditorTest {
    private static final Path MODULES = Path.of("target/editor/node_modules").toAbsolutePath();

    /** Where the question is asked. */
    private static final String MARK = "¦";

    @BeforeAll
    static void requireTheService() throws Exception {
        Process node = null;
        try {
            node = node("-e", "require('vscode-json-languageservice')").start();
        } catch (IOException notThere) {
            // Said below.
        }
        if (node == null || node.waitFor() != 0) {
            Installed.skip(
                    "what editors make of the schemas: needs node and, in cli/target/editor, the package"
                            + " vscode-json-languageservice (npm install --prefix cli/target/editor vscode-json-languageservice)");
        }
    }

    @Test
    void completesTheNamesOfEffects() throws Exception {
        JsonNode answer = ask(cue("\"effect\": ¦"));
        List<String> names = EffectRegistry.installed().names().stream()
                .map(name -> "\"" + name + "\"")
                .toList();
        assertThat(texts(answer.get("completed"))).containsAll(names);
    }

    @Test
    void completesTheSettingsOfTheEffectThatIsNamed() throws Exception {
        for (String effect : List.of("sweep", "chase", "lettering")) {
            JsonNode answer = ask(cue("\"effect\": \"" + effect + "\", \"with\": {¦}"));
            List<String> settings = EffectRegistry.installed().find(effect).orElseThrow().settings().stream()
                    .map(Setting::name)
                    .toList();
            assertThat(texts(answer.get("completed"))).as(effect).containsExactlyInAnyOrderElementsOf(settings);
        }
    }

    @Test
    void completesFieldsAndWords() throws Exception {
        assertThat(texts(ask(cue("¦")).get("completed")))
                .contains("at", "for", "until", "effect", "look", "scene", "fade");
        assertThat(texts(ask(cue("\"spread\": ¦")).get("completed"))).contains("\"whole\"", "\"each\"");
        assertThat(texts(ask(cue("\"effect\": \"sweep\", \"with\": {\"toward\": {¦}}"))
                        .get("completed")))
                .contains("keys", "follow");
    }

    @Test
    void completesTheStepsOfAShape() throws Exception {
        JsonNode answer = ask(DocumentSchema.DISPLAY, """
                {"duskloom": "display/1", "$schema": "schema.json", "props": [{"name": "a", "shape": "s", "at": [0, 0]}],
                 "shapes": {"s": {"build": [{¦}]}}}
                """);
        assertThat(texts(answer.get("completed"))).contains("ring", "arc", "line", "grid", "helix", "part");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "effect": "swe¦ep"                                  | straight bands crossing
            "effect": "sweep", "with": {"tow¦ard": 5}           | direction: 0 is right, 90 up
            "effect": "sweep", "with": {"tow¦ard": 5}           | degrees: -36000 to 36000
            "effect": "sweep", "with": {"tow¦ard": 5}           | unless written: 0
            "effect": "sweep", "with": {"palette": "wh¦ite"}    | colours across a band
            "effect": "wash", "spr¦ead": "each"                 | one canvas round all members together
            "effect": "wash", "fade": {"i¦n": "1s"}             | how long it takes from the start to full
            """)
    void explains(String fields, String explanation) throws Exception {
        assertThat(ask(cue(fields))
                        .get("explained")
                        .asString()
                        .replace("\\", "")
                        .replace("&nbsp;", " "))
                .contains(explanation);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "effect": "sweap"                             | Valid values: "chase"
            "effect": "sweep", "with": {"width": 7}       | Value is above the maximum of 1.
            "effect": "sweep", "with": {"heads": 7}       | Property heads is not allowed.
            "effect": "sweep", "with": {"width": "wide"}  | Incorrect type. Expected one of number, object.
            "effect": "sweep", "at": 3                    | Incorrect type. Expected "string".
            "effect": "sweep", "colour": "red"            | Property colour is not allowed.
            "effect": "sweep", "for": "1s", "until": "2s" | both "for" and "until": leave one of them out
            "effect": "sweep", "with": {"width": {"keys": []}} | Array has too few items. Expected 1 or more.
            """)
    void saysWhatIsWrong(String fields, String message) throws Exception {
        assertThat(texts(ask(cue(fields + "¦")).get("faults")))
                .singleElement()
                .asString()
                .contains(message);
    }

    /** With their remarks, and a comma before a bracket: nothing is wrong with them. */
    @Test
    void hasNothingAgainstTheDemos() throws Exception {
        for (String name : List.of("garden", "mast", "evening")) {
            String show = Files.readString(Project.file("demos/" + name + "/show.json"));
            JsonNode answer =
                    ask(show.replaceFirst("\"duskloom\"", "\"\\$schema\": \"schema.json\", \"duskloom\"") + MARK);
            assertThat(texts(answer.get("faults"))).as(name).isEmpty();
        }
        assertThat(texts(ask(cue("\"effect\": \"wash\", ¦")).get("faults"))).isEmpty();
    }

    /** A show of one cue. */
    private static String cue(String fields) {
        return """
                // A remark.
                {"duskloom": "timeline/1", "$schema": "schema.json", "map": "map.csv", "length": "2s",
                 "layers": [{"cues": [{"on": "fence", %s}]}]}
                """.formatted(fields);
    }

    private static JsonNode ask(String marked) throws Exception {
        return ask(DocumentSchema.TIMELINE, marked);
    }

    private static JsonNode ask(DocumentSchema kind, String marked) throws Exception {
        ObjectNode ask = JsonNodeFactory.instance
                .objectNode()
                .put("text", marked.replace(MARK, ""))
                .put("at", marked.indexOf(MARK));
        ObjectNode question = JsonNodeFactory.instance.objectNode().put("schema", SchemaJudge.json(kind));
        question.putArray("asks").add(ask);
        Process node = node(Path.of("src/test/resources/org/duskloom/cli/schema/editor.js")
                        .toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (OutputStream in = node.getOutputStream()) {
            in.write(question.toString().getBytes(StandardCharsets.UTF_8));
        }
        String answers = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(node.waitFor()).isZero();
        return SchemaJudge.tree(answers).get(0);
    }

    private static ProcessBuilder node(String... arguments) {
        ProcessBuilder node = new ProcessBuilder("node");
        node.command().addAll(List.of(arguments));
        String known = System.getenv().getOrDefault("NODE_PATH", "");
        node.environment().put("NODE_PATH", MODULES + (known.isEmpty() ? "" : File.pathSeparator + known));
        return node;
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).toList();
    }
}
