package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Fade;
import org.duskloom.engine.timeline.Layout;
import org.duskloom.engine.timeline.Stagger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What changes the fingerprint of a cue and what does not. */
class CueFingerprintTest {
    private static final String MAP = """
            prop,pixel,x,y,ownx,owny,part
            fence,1,0,0,0,0,top
            fence,2,1,0,0,1,
            fence,3,3,1,0,2,top
            pond,1,5,5,1,0,rim
            pond,2,6,8,0,2,
            """;

    /**
     * A cue that sets everything; the effect looks at the order, uses chance and has a setting of every kind but a
     * file.
     */
    private static final String SHOW = """
            {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "10s", "seed": 7, "title": "Dusk",
             "palettes": {"dusk": ["navy", "gold"]},
             "layers": [{"name": "ground", "opacity": 1, "cues": [
              {"name": "glow", "at": "1s", "for": "4s", "on": ["fence", "pond"], "effect": "probe",
               "spread": "each", "axes": "own", "fit": "contain", "order": "right",
               "stagger": {"by": "members", "time": "100ms"},
               "fade": {"in": "500ms", "out": "250ms", "easing": "ease"},
               "opacity": {"keys": [["0s", 0.5], ["2s", 1, "ease-in"]]}, "blend": "screen",
               "with": {"size": {"keys": [["0s", 0.2], ["1s", 0.8, "steps(3)"]]}, "arms": 4, "color": "gold",
                "palette": "dusk", "every": "3s", "rise": "50ms", "from": "edge", "reverse": false, "part": "rim"}}
             ]}]}""";

    /** The field that a change is about, what is written, and what is written instead. */
    private record Change(String field, String from, String to) {}

    private static final List<Change> CHANGES = List.of(
            new Change("Timeline.rate", "\"rate\": 40", "\"rate\": 50"),
            new Change("Timeline.seed", "\"seed\": 7", "\"seed\": 8"),
            new Change("Cue.randomKey", "\"glow\"", "\"glim\""),
            new Change("Cue.at", "\"at\": \"1s\"", "\"at\": \"1001ms\""),
            new Change("Cue.end", "\"for\": \"4s\"", "\"for\": \"4500ms\""),
            new Change("Cue.seenUntil", "\"for\": \"4s\"", "\"for\": \"4s\", \"repeat\": {\"until\": \"3s\"}"),
            new Change("Cue.on", "[\"fence\", \"pond\"]", "[\"pond\", \"fence\"]"),
            new Change("Cue.on", "[\"fence\", \"pond\"]", "[\"fence\"]"),
            new Change("Cue.effect", "\"effect\": \"probe\"", "\"effect\": \"probe-2\""),
            new Change(
                    "Cue.changes",
                    "\"for\": \"4s\"",
                    "\"for\": \"2s\", \"repeat\": {\"count\": 2, \"change\": {\"laps\": 1}}"),
            new Change("Cue.opacity", "[\"0s\", 0.5]", "[\"0s\", 0.4]"),
            new Change("Cue.opacity", "[\"2s\", 1, \"ease-in\"]", "[\"3s\", 1, \"ease-in\"]"),
            new Change("Cue.opacity", "1, \"ease-in\"]", "1, \"ease-out\"]"),
            new Change("Cue.blend", "\"screen\"", "\"lighten\""),
            new Change(
                    "Layout.spread",
                    "\"spread\": \"each\", \"axes\": \"own\", \"fit\": \"contain\", \"order\": \"right\",\n"
                            + "   \"stagger\": {\"by\": \"members\", \"time\": \"100ms\"},",
                    "\"fit\": \"contain\", \"order\": \"right\","),
            new Change("Layout.axes", "\"axes\": \"own\"", "\"axes\": \"stage\""),
            new Change("Layout.fit", "\"contain\"", "\"stretch\""),
            new Change("Layout.order", "\"order\": \"right\"", "\"order\": \"up\""),
            new Change("Stagger.by", "\"by\": \"members\"", "\"by\": \"left\""),
            new Change("Stagger.time", "\"time\": \"100ms\"", "\"time\": \"101ms\""),
            new Change("Layout.stagger", "\"stagger\": {\"by\": \"members\", \"time\": \"100ms\"},", ""),
            new Change("Fade.in", "\"in\": \"500ms\"", "\"in\": \"501ms\""),
            new Change("Fade.out", "\"out\": \"250ms\"", "\"out\": \"0s\""),
            new Change("Fade.easing", "\"easing\": \"ease\"", "\"easing\": \"linear(0, 0.4 30%, 1)\""),
            new Change("Fade.easing", "\"easing\": \"ease\"", "\"easing\": \"linear(0, 0.4 31%, 1)\""),
            new Change("Fade.easing", "\"easing\": \"ease\"", "\"easing\": \"cubic-bezier(0.2, 0.1, 0.3, 1)\""),
            new Change("with.size", "[\"0s\", 0.2]", "[\"0s\", 0.3]"),
            new Change("with.size", "[\"1s\", 0.8,", "[\"1s\", 0.9,"),
            new Change("with.size", "[\"1s\", 0.8,", "[\"2s\", 0.8,"),
            new Change("with.size", "\"steps(3)\"", "\"steps(4)\""),
            new Change("with.size", "\"steps(3)\"", "\"steps(3, jump-start)\""),
            new Change("with.arms", "\"arms\": 4", "\"arms\": 5"),
            new Change("with.color", "\"color\": \"gold\"", "\"color\": \"#ffd701\""),
            new Change(
                    "with.color",
                    "\"color\": \"gold\"",
                    "\"color\": {\"keys\": [[\"0s\", \"gold\"], [\"1s\", \"navy\"]]}"),
            new Change(
                    "with.color",
                    "\"color\": \"gold\"",
                    "\"color\": {\"mix\": \"oklch\", \"keys\": [[\"0s\", \"gold\"], [\"1s\", \"navy\"]]}"),
            new Change("with.palette", "[\"navy\", \"gold\"]", "[\"navy\", \"gold\", \"gold\"]"),
            new Change(
                    "with.palette", "[\"navy\", \"gold\"]", "{\"stops\": [\"navy\", \"gold\"], \"mix\": \"linear\"}"),
            new Change("with.palette", "[\"navy\", \"gold\"]", "{\"stops\": [\"navy\", \"gold\"], \"step\": true}"),
            new Change("with.palette", "[\"navy\", \"gold\"]", "{\"stops\": [\"navy\", \"gold\"], \"cyclic\": true}"),
            new Change(
                    "with.palette",
                    "\"palette\": \"dusk\"",
                    "\"palette\": {\"keys\": [[\"0s\", \"dusk\"], [\"1s\", \"red\"]]}"),
            new Change("with.every", "\"every\": \"3s\"", "\"every\": \"3001ms\""),
            new Change("with.rise", "\"rise\": \"50ms\"", "\"rise\": \"0s\""),
            new Change("with.from", "\"from\": \"edge\"", "\"from\": \"centre\""),
            new Change("with.reverse", "\"reverse\": false", "\"reverse\": true"),
            new Change("with.part", "\"part\": \"rim\"", "\"part\": \"top\""),
            new Change("with.laps", "\"part\": \"rim\"", "\"part\": \"rim\", \"laps\": 3"),
            new Change("Cue.with", "\"rise\": \"50ms\", ", ""));

    /** Fields of a cue as it is read that decide nothing; a name and the number of a play by the random key. */
    private static final Set<String> OF_NO_MATTER =
            Set.of("Cue.location", "Cue.name", "Cue.play", "Layout.axesLocation", "Stagger.location");

    static List<Change> changes() {
        return CHANGES;
    }

    @ParameterizedTest
    @MethodSource("changes")
    void everyChangeOfAFieldChangesIt(Change change) {
        assertThat(SHOW).contains(change.from());
        String changed = SHOW.replace(change.from(), change.to());
        assertThat(prints(changed, MAP)).doesNotContainAnyElementsOf(prints(SHOW, MAP));
    }

    @Test
    void changesAreToldApart() {
        Set<String> all = new LinkedHashSet<>();
        CHANGES.forEach(change ->
                all.add(prints(SHOW.replace(change.from(), change.to()), MAP).toString()));
        assertThat(all).hasSize(CHANGES.size());
    }

    /** Whoever adds a field to a cue must say here whether it decides frames. */
    @Test
    void everyFieldIsLookedAt() {
        Set<String> expected = new LinkedHashSet<>();
        for (Class<?> type : List.of(Cue.class, Layout.class, Stagger.class, Fade.class)) {
            for (RecordComponent field : type.getRecordComponents()) {
                if (!List.of(Layout.class, Fade.class).contains(field.getType())) {
                    expected.add(type.getSimpleName() + "." + field.getName());
                }
            }
        }
        for (Setting<?> setting : new Probe().settings()) {
            expected.add("with." + setting.name());
        }
        // Files are looked at where there are some, in FileSettingInputsTest.
        expected.remove("with.file");
        Set<String> found = new LinkedHashSet<>(OF_NO_MATTER);
        CHANGES.forEach(change -> found.add(change.field()));
        assertThat(found).containsAll(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "at": "1s"                       | "at": "1000ms"
            "at": "1s"                       | "at": "40f"
            "for": "4s"                      | "until": "5s"
            "arms": 4                        | "arms": 4.0
            ["0s", 0.5]                      | ["0s", 5e-1, "ease-out"]
            "palette": "dusk"                | "palette": ["navy", "gold"]
            "palette": "dusk"                | "palette": {"keys": [["0s", "dusk"]]}
            "palette": "dusk"                | "palette": {"stops": ["#000080", "#ffd700"], "mix": "oklab"}
            "arms": 4                        | "arms": {"keys": [["0s", 4], ["2s", 4, "ease"]]}
            {"by": "members", "time": "100ms"} | "100ms"
            ["fence", "pond"]                | ["fence", "pond", "fence"]
            ["fence", "pond"]                | "*"
            "title": "Dusk"                  | "title": "Dawn"
            "length": "10s"                  | "length": "11s"
            "name": "ground", "opacity": 1,  | "name": "sky", "opacity": 0.5, "blend": "screen",
            "blend": "screen",               | /* how it is mixed */ "blend":   "screen",
            "layers": [                      | "layers": [{"cues": [{"on": "pond", "effect": "probe", "with": {"palette": "dusk"}}]},
            """)
    void whatDecidesNothingLeavesIt(String from, String to) {
        assertThat(SHOW).contains(from);
        List<String> prints = prints(SHOW.replace(from, to), MAP);
        assertThat(prints.get(prints.size() - 1)).isEqualTo(prints(SHOW, MAP).get(0));
    }

    @Test
    void isTheSameInALook() {
        String fields = "\"effect\": \"rank\", \"order\": \"up\", \"fade\": {\"in\": \"1s\"}";
        String written = show("{\"name\": \"n\", \"on\": \"pond\", " + fields + "}");
        String look = show("{\"name\": \"n\", \"on\": \"pond\", \"look\": \"l\"}")
                .replace("\"layers\"", "\"looks\": {\"l\": {" + fields + "}}, \"layers\"");
        assertThat(prints(look, MAP)).isEqualTo(prints(written, MAP));
    }

    /** The order of the rows says nothing but in which order props come, which is the order of the bytes. */
    @Test
    void rowsOfAMapMayStandInAnyOrder() {
        List<String> rows = new ArrayList<>(List.of(MAP.split("\n")).subList(1, 6));
        Random random = new Random(8);
        for (int round = 0; round < 20; round++) {
            Collections.shuffle(rows, random);
            // The first row of a prop says where it stands in the order of wiring.
            rows.sort((a, b) -> a.startsWith("fence,") == b.startsWith("fence,") ? 0 : a.startsWith("fence,") ? -1 : 1);
            String shuffled = MAP.split("\n")[0] + "\n" + String.join("\n", rows) + "\n";
            assertThat(prints(SHOW, shuffled)).isEqualTo(prints(SHOW, MAP));
        }
    }

    @Test
    void placesAndPixelsOfTheMapChangeItWhereTheCueIs() {
        String onPond = SHOW.replace("[\"fence\", \"pond\"]", "\"pond\"");
        assertThat(prints(onPond, MAP + "gate,1,9,9,0,0,\n")).isEqualTo(prints(onPond, MAP));
        assertThat(prints(onPond, MAP.replace("fence,2,1,0", "fence,2,7,0"))).isEqualTo(prints(onPond, MAP));
        assertThat(prints(onPond, MAP.replace("pond,1,5,5,1,0", "pond,1,5,5,1,0.5")))
                .isNotEqualTo(prints(onPond, MAP));
        assertThat(prints(onPond, MAP + "pond,3,9,9,0,0,\n")).isNotEqualTo(prints(onPond, MAP));
        assertThat(prints(onPond, "prop,pixel,x,y,ownx,owny,part\ngate,1,9,9,0,0,\n" + MAP.substring(30)))
                .isNotEqualTo(prints(onPond, MAP));
    }

    /** Of the parts of the map those count that the effect asks for, with their pixels. */
    @Test
    void partsMatterThatTheEffectAsksFor() {
        String onPond = SHOW.replace("[\"fence\", \"pond\"]", "\"pond\"");
        assertThat(prints(onPond, MAP.replace("6,8,0,2,", "6,8,0,2,bank"))).isEqualTo(prints(onPond, MAP));
        assertThat(prints(onPond, MAP.replace("6,8,0,2,", "6,8,0,2,rim"))).isNotEqualTo(prints(onPond, MAP));
    }

    /** Names and the seed decide random choices, and nothing else. */
    @Test
    void namesMatterToChanceOnly() {
        String renamed = MAP.replace("pond", "pool");
        assertThat(prints(show("{\"on\": \"pool\", \"effect\": \"place\"}"), renamed))
                .isEqualTo(prints(show("{\"on\": \"pond\", \"name\": \"x\", \"effect\": \"place\"}"), MAP));
        assertThat(prints(show("{\"on\": \"pool\", \"name\": \"x\", \"effect\": \"rank\"}"), renamed))
                .isNotEqualTo(prints(show("{\"on\": \"pond\", \"name\": \"x\", \"effect\": \"rank\"}"), MAP));
        String seeded = show("{\"on\": \"pond\", \"effect\": \"place\", \"order\": \"up\"}")
                .replace("\"rate\"", "\"seed\": 3, \"rate\"");
        assertThat(prints(seeded, MAP)).isEqualTo(prints(show("{\"on\": \"pond\", \"effect\": \"place\"}"), MAP));
    }

    /** In every run, on every JDK: a fingerprint that somebody kept goes on being that of its cue. */
    @Test
    void isTheSameInEveryRun() {
        assertThat(prints(SHOW, MAP))
                .containsExactly("b732924aad177ad7a94c17e9afa30347ac98be3cbd5bcaff9b2727a44567c72c");
    }

    /** Cues of few values, so that many are alike: where fingerprints are the same, so are all frames. */
    @Test
    void equalFingerprintsMeanEqualFrames() {
        Random random = new Random(5);
        Map<String, byte[]> framesByPrint = new LinkedHashMap<>();
        Set<String> differentFrames = new LinkedHashSet<>();
        int met = 0;
        for (int round = 0; round < 1_500; round++) {
            Plan plan = new TestShow(Maps.map(MAP), show(randomCue(random)), PlainEffects.all()).plan();
            byte[] frames = frames(plan, 0, 11, 40, 47, 80, 119, 199);
            byte[] known = framesByPrint.putIfAbsent(print(plan), frames);
            if (known != null) {
                met++;
                assertThat(frames).isEqualTo(known);
            }
            differentFrames.add(Arrays.toString(frames));
        }
        assertThat(met).isGreaterThan(200);
        assertThat(framesByPrint.size()).isLessThan(4 * differentFrames.size());
    }

    private static String randomCue(Random random) {
        return "{\"on\": " + one(random, "\"fence\"", "\"pond\"", "[\"fence\", \"pond\"]", "\"*\"", "\"*/rim\"")
                + ", \"effect\": \"" + one(random, "solid", "place", "clock", "rank", "weave") + "\", \"for\": \""
                + one(random, "3s", "3000ms", "4s") + "\", \"fade\": {\"in\": \"" + one(random, "0s", "1s")
                + "\"}, \"spread\": \"each\", \"stagger\": "
                + one(random, "\"0s\"", "\"500ms\"", "{\"by\": \"right\", \"time\": \"500ms\"}") + ", \"order\": \""
                + one(random, "wiring", "right") + "\", \"opacity\": " + one(random, "1", "0.5") + ", \"name\": \""
                + one(random, "x", "y") + "\"}";
    }

    private static String one(Random random, String... words) {
        return words[random.nextInt(words.length)];
    }

    private static String show(String cue) {
        return "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"rate\": 40, \"length\": \"5s\", \"layers\": [{\"cues\": ["
                + cue + "]}]}";
    }

    private static String print(Plan plan) {
        return plan.layers().get(0).cues().get(0).fingerprint().hex();
    }

    /** Those of all cues. */
    private static List<String> prints(String show, String csv) {
        PixelMap map = Maps.map(csv);
        List<Effect> effects = new ArrayList<>(List.of(new Probe(), new Probe("probe-2")));
        PlainEffects.all()
                .names()
                .forEach(name -> effects.add(PlainEffects.all().find(name).orElseThrow()));
        return new TestShow(map, show, EffectRegistry.of(effects))
                .plan().layers().stream()
                        .flatMap(layer -> layer.cues().stream())
                        .map(cue -> cue.fingerprint().hex())
                        .toList();
    }

    private static byte[] frames(Plan plan, long... frames) {
        FramePainter painter = new FramePainter(plan);
        byte[] all = new byte[3 * plan.pixelCount() * frames.length];
        for (int i = 0; i < frames.length; i++) {
            painter.render(frames[i], all, 3 * plan.pixelCount() * i);
        }
        return all;
    }
}
