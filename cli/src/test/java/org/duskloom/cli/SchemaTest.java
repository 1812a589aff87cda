package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.ColorSetting;
import org.duskloom.engine.effect.DurationSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.FileSetting;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.HitsSetting;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.schema.DocumentSchema;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Schema and reader say the same: whatever stands in the demos and the guides passes both, and what the schema refuses
 * the reader refuses. The schema is asked through a validator of others.
 */
class SchemaTest {
    private static final Map<DocumentSchema, SchemaJudge> JUDGES = new EnumMap<>(DocumentSchema.class);

    private static final Map<String, String> NEEDED = Map.of(
            "image", "{\"file\": \"bee.png\"}",
            "lettering", "{\"text\": \"Hi\", \"thickness\": 1}",
            "morph", "{\"from\": \"left\", \"to\": \"left\"}");

    @TempDir
    private Path folder;

    @BeforeEach
    void writeWhatFilesName() throws IOException {
        Files.writeString(folder.resolve("map.csv"), """
                prop,pixel,x,y,part
                fence,1,0,0,left
                fence,2,100,0,left
                fence,3,200,0,
                gate,1,600,0,
                gate,2,600,100,
                gate,3,600,200,
                """);
        Files.writeString(folder.resolve("petal.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">
                <circle cx="10" cy="10" r="1"/><circle cx="30" cy="10" r="1"/><path id="wire" d="M 0 10 L 60 10"/></svg>
                """);
        Files.write(
                folder.resolve("silence.wav"),
                HexFormat.of()
                        .parseHex(
                                "524946462c00000057415645666d7420100000000100010044ac0000885801000200100064617461080000000000000000000000"));
        Files.copy(Project.file("demos/firsts/bee.png"), folder.resolve("bee.png"));
        // The least that BDF 2.1 (Adobe, 1993) asks for, with the letters of "Hi".
        Files.writeString(folder.resolve("small.bdf"), """
                STARTFONT 2.1
                FONT small
                SIZE 2 75 75
                FONTBOUNDINGBOX 1 2 0 0
                STARTPROPERTIES 2
                FONT_ASCENT 2
                FONT_DESCENT 0
                ENDPROPERTIES
                CHARS 2
                STARTCHAR H
                ENCODING 72
                SWIDTH 500 0
                DWIDTH 2 0
                BBX 1 2 0 0
                BITMAP
                80
                80
                ENDCHAR
                STARTCHAR i
                ENCODING 105
                SWIDTH 500 0
                DWIDTH 2 0
                BBX 1 2 0 0
                BITMAP
                80
                80
                ENDCHAR
                ENDFONT
                """);
    }

    /** The words are those of draft-07, by its own schema: json-schema.org/draft-07/schema, as the validator has it. */
    @ParameterizedTest
    @EnumSource
    void isASchemaOfDraft7(DocumentSchema kind) {
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7);
        var ofSchemas = registry.getSchema(SchemaLocation.of("http://json-schema.org/draft-07/schema#"));
        assertThat(ofSchemas.validate("{\"type\": \"text\"}", InputFormat.JSON)).isNotEmpty();
        assertThat(ofSchemas.validate(SchemaJudge.json(kind), InputFormat.JSON)).isEmpty();
    }

    @Test
    void everyDemoPasses() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(Project.file("demos"))) {
            files = all.filter(file -> file.toString().endsWith(".json")).toList();
        }
        assertThat(files).hasSizeGreaterThan(15);
        for (Path file : files) {
            passes(Files.readString(file), file.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "demos/reference/handbook.md"})
    void everyFileOfTheGuidesPasses(String page) throws IOException {
        List<Guide.Block> blocks = Guide.of(page).blocks("json").stream()
                .filter(block -> block.text().contains("\"duskloom\":"))
                .toList();
        assertThat(blocks).isNotEmpty();
        for (Guide.Block block : blocks) {
            passes(block.text(), block.text());
        }
    }

    @Test
    void whatTheProgramWritesPasses() throws IOException {
        Path made = folder.resolve("made");
        Ran.with("new", made);
        passes(Files.readString(made.resolve("show.json")), "show.json");
        passes(Files.readString(made.resolve("display.json")), "display.json");
        Ran.with("render", made.resolve("show.json"), "-o", made.resolve("out"));
        passes(Files.readString(made.resolve("out/frames.json")), "frames.json");
    }

    /** What an editor wants to know of a file is nothing to its readers, whatever it is. */
    @ParameterizedTest
    @EnumSource
    void readersPassOverTheFieldForEditors(DocumentSchema kind) throws IOException {
        ObjectNode file = (ObjectNode) base(kind);
        for (String value : List.of("\"x.schema.json\"", "5", "null", "{\"a\": []}")) {
            file.set("$schema", SchemaJudge.tree(value));
            assertThat(judge(kind).faults(file)).isEmpty();
            assertThat(reader(kind).test(file)).as("%s with %s", kind, value).isTrue();
        }
    }

    /** Files that have every field: each value replaced, left out and put twice, each object with fields too many. */
    @ParameterizedTest
    @EnumSource
    void whatItRefusesTheReaderRefuses(DocumentSchema kind) throws IOException {
        hold(kind, base(kind));
    }

    /** One cue for every setting of every effect. */
    @Test
    void whatItRefusesOfAnEffectTheReaderRefuses() throws IOException {
        int settings = 0;
        for (Effect effect : EffectRegistry.installed().effects()) {
            for (Setting<?> setting : effect.settings()) {
                JsonNode show = show(effect, setting);
                assertThat(judge(DocumentSchema.TIMELINE).faults(show)).isEmpty();
                assertThat(reader(DocumentSchema.TIMELINE).test(show))
                        .as("%s with %s", effect.name(), setting)
                        .isTrue();
                List<Damaged> all = Damaged.all(show.at("/layers/0/cues/0/with"), List.of("surplus"));
                for (Damaged each : all) {
                    ObjectNode whole = (ObjectNode) show.deepCopy();
                    ((ObjectNode) whole.at("/layers/0/cues/0")).set("with", each.tree());
                    agree(DocumentSchema.TIMELINE, new Damaged(effect.name() + " " + each.how(), whole));
                }
                settings++;
            }
        }
        assertThat(settings).isGreaterThan(100);
    }

    private void hold(DocumentSchema kind, JsonNode base) {
        assertThat(judge(kind).faults(base)).isEmpty();
        assertThat(reader(kind).test(base)).as("the base is sound").isTrue();
        List<Damaged> all = Damaged.all(base, List.of("surplus", "until", "mm2"));
        List<Damaged> refused =
                all.stream().filter(each -> judge(kind).refuses(each.tree())).toList();
        List<String> read = refused.stream()
                .filter(each -> reader(kind).test(each.tree()))
                .map(Damaged::how)
                .toList();
        assertThat(read).as("refused by the schema, and read").isEmpty();
        // It refuses most of what can be wrong; texts that are no times, and names that nothing has, it cannot see.
        assertThat(refused).hasSizeGreaterThan(all.size() / 2);
    }

    private void agree(DocumentSchema kind, Damaged each) {
        if (judge(kind).refuses(each.tree())) {
            assertThat(reader(kind).test(each.tree())).as(each.how()).isFalse();
        }
    }

    /** A cue with one setting, and with those without which there is no such cue. */
    private static JsonNode show(Effect effect, Setting<?> setting) {
        JsonNode show = SchemaJudge.tree("""
                {"duskloom": "timeline/1", "map": "map.csv", "length": "2s", "rate": 10, "beats": {"tempo": 120},
                 "layers": [{"cues": [{"on": "fence", "effect": "%s", "with": %s}]}]}
                """.formatted(effect.name(), NEEDED.getOrDefault(effect.name(), "{}")));
        ((ObjectNode) show.at("/layers/0/cues/0/with")).set(setting.name(), SchemaJudge.tree(value(setting)));
        return show;
    }

    /** Something that may stand for it. */
    private static String value(Setting<?> setting) {
        if (setting instanceof NumberSetting || setting instanceof FlagSetting) {
            return setting.standardText();
        }
        if (setting.unit().equals("easing")) {
            return "\"linear\"";
        }
        if (setting instanceof FileSetting file) {
            return file.name().equals("font") ? "\"small.bdf\"" : "\"bee.png\"";
        }
        String text = setting instanceof DurationSetting
                ? "1s"
                : setting instanceof ColorSetting || setting instanceof PaletteSetting
                        ? "gold"
                        : setting instanceof HitsSetting
                                ? "beat"
                                : setting instanceof ChoiceSetting choice
                                        ? choice.words().get(0)
                                        : "left";
        return "\"" + text + "\"";
    }

    private JsonNode base(DocumentSchema kind) throws IOException {
        if (kind == DocumentSchema.MANIFEST) {
            Path show = Garden.in(folder.resolve("garden"));
            Ran.with("render", show, "-o", folder.resolve("out"));
            return SchemaJudge.tree(Files.readString(folder.resolve("out/frames.json")));
        }
        String name = kind == DocumentSchema.TIMELINE ? "show" : "display";
        try (InputStream in = SchemaTest.class.getResourceAsStream("schema/" + name + ".json")) {
            return SchemaJudge.tree(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    /** Whether the reader has nothing against a file. */
    private Predicate<JsonNode> reader(DocumentSchema kind) {
        return file -> {
            Problems problems = new Problems();
            try {
                switch (kind) {
                    case TIMELINE -> LoadedShow.load(write(file, "show.json"), problems);
                    case DISPLAY -> LoadedDisplay.load(write(file, "display.json"), problems);
                    case MANIFEST -> FrameManifest.in(write(file, "frames.json").getParent(), problems);
                }
            } catch (IOException fault) {
                throw new AssertionError(fault);
            }
            return !problems.hasErrors();
        };
    }

    private Path write(JsonNode file, String name) throws IOException {
        return Files.writeString(folder.resolve(name), file.toString());
    }

    private static SchemaJudge judge(DocumentSchema kind) {
        return JUDGES.computeIfAbsent(kind, SchemaJudge::new);
    }

    private static void passes(String json, String what) {
        JsonNode file = SchemaJudge.tree(json);
        String format = file.get("duskloom").asString();
        DocumentSchema kind = format.startsWith("timeline")
                ? DocumentSchema.TIMELINE
                : format.startsWith("display") ? DocumentSchema.DISPLAY : DocumentSchema.MANIFEST;
        assertThat(judge(kind).faults(file)).as(what).isEmpty();
    }
}
