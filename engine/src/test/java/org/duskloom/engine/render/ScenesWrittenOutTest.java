package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random shows made of scenes have, byte for byte, the frames of the same shows written out by hand, cue for cue; here
 * by a few lines that know nothing of the program. Times are whole milliseconds. What looks random is the same too: in
 * a scene it hangs on the names of the cues around, which the cue that is written out has as one name.
 */
class ScenesWrittenOutTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            a,1,0,0,left
            a,2,1,0,left
            a,3,2,3,right
            b,1,4,1,left
            b,2,4,2,
            b,3,5,2,right
            c,1,7,0,left
            c,2,7,1,right
            """);
    private static final List<String> PROPS = List.of("a", "b", "c");
    private static final int DEEPEST = 4;

    private final Map<String, String> scenes = new TreeMap<>();
    private Random random;
    private String blend = "normal";
    private int lit;
    private int names;

    /** What is played: as JSON, and written out for any start, cut and meaning of names. */
    private interface Item {
        String json();

        /** Whether it plays on a name that it leaves open. */
        boolean isOpen();

        void writeOut(long start, long cut, Map<String, List<String>> names, String path, List<String> cues);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void haveTheSameFrames(long seed) {
        random = new Random(seed);
        for (int show = 0; show < 6; show++) {
            scenes.clear();
            blend = "normal";
            compare(items(0, 20_000));
        }
        assertThat(lit).as("codes that are not black").isGreaterThan(3000);
    }

    /** Where a scene stands alone in its layer, its cues may be mixed in any way. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void haveTheSameFramesWhereBlendsStayWithinAScene(long seed) {
        random = new Random(seed);
        for (int show = 0; show < 6; show++) {
            scenes.clear();
            blend = "screen";
            compare(List.of(scene(DEEPEST - 1, 20_000)));
        }
        assertThat(lit).as("codes that are not black").isGreaterThan(1000);
    }

    private void compare(List<Item> items) {
        String played = items.stream().map(Item::json).collect(Collectors.joining(",\n"));
        List<String> cues = new ArrayList<>();
        items.forEach(item -> item.writeOut(0, 20_000, Map.of(), "", cues));
        String all = scenes.entrySet().stream()
                .map(scene -> "\"" + scene.getKey() + "\": " + scene.getValue())
                .collect(Collectors.joining(",\n"));
        Plan scenic =
                plan("\"scenes\": {" + all + "}, \"layers\": [{\"blend\": \"lighten\", \"cues\": [" + played + "]}]");
        Plan plain = plan("\"layers\": [{\"blend\": \"lighten\", \"cues\": [" + String.join(",\n", cues) + "]}]");
        for (int frame = 0; frame < 210; frame++) {
            for (byte code : Frames.frame(plain, frame)) {
                lit += code == 0 ? 0 : 1;
            }
            assertThat(Frames.frame(scenic, frame))
                    .as("frame %s of %s\nwritten out as %s", frame, played, cues)
                    .isEqualTo(Frames.frame(plain, frame));
        }
        assertThat(scenic.brushCount()).isLessThanOrEqualTo(plain.brushCount());
        assertThat(scenic.layers().get(0).cues()).allMatch(cue -> cue.groupCount() == 0);
    }

    private static Plan plan(String fields) {
        TestShow show = TestShow.of(MAP, fields);
        return new TestShow(
                        MAP,
                        show.timeline()
                                .replace("\"rate\": 40, \"length\": \"10s\"", "\"rate\": 10, \"length\": \"90s\""),
                        show.effects())
                .plan();
    }

    private List<Item> items(int depth, int length) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            items.add(depth < DEEPEST && random.nextBoolean() ? scene(depth, length) : cue(length));
        }
        return items;
    }

    private Item cue(int length) {
        int at = random.nextInt(1 + length / 3);
        int lasts = Math.max(1, (length - at) / (1 + random.nextInt(3)));
        String on = List.of("a", "b", "c", "a/left").get(random.nextInt(4));
        boolean each = random.nextBoolean();
        String effect = List.of("place", "clock", "light", "weave", "rank").get(random.nextInt(5));
        String with =
                effect.equals("light") ? ", \"with\": {\"r\": 0.3, \"a\": " + random.nextInt(10) / 10.0 + "}" : "";
        String rest = "\"effect\": \"" + effect + "\"" + with + ", \"spread\": \"" + (each ? "each" : "whole")
                + "\", \"blend\": \"" + (random.nextBoolean() ? blend : "normal") + "\", \"opacity\": "
                + random.nextInt(11) / 10.0
                + ", \"fade\": {\"in\": \"" + lasts / 3 + "ms\"}";
        String address =
                length == 20_000 ? on : random.nextBoolean() ? "lead" : random.nextBoolean() ? "lead/left" : on;
        String name = "c" + names++;
        return new Item() {
            @Override
            public boolean isOpen() {
                return address.startsWith("lead");
            }

            @Override
            public String json() {
                return "{\"name\": \"%s\", \"at\": \"%sms\", \"for\": \"%sms\", \"on\": \"%s\", %s}"
                        .formatted(name, at, lasts, address, rest);
            }

            @Override
            public void writeOut(
                    long start, long cut, Map<String, List<String>> names, String path, List<String> cues) {
                String[] steps = address.split("/", 2);
                List<String> props = names.getOrDefault(steps[0], List.of(steps[0]));
                String where = props.stream()
                        .map(prop -> "\"" + prop + (steps.length > 1 ? "/" + steps[1] : "") + "\"")
                        .collect(Collectors.joining(", "));
                if (start + at < cut) {
                    cues.add(
                            "{\"name\": \"%s\", \"at\": \"%sms\", \"for\": \"%sms\", \"repeat\": {\"until\": \"%sms\", \"every\": \"80s\"}, \"on\": [%s], %s}"
                                    .formatted(
                                            path + name,
                                            start + at,
                                            lasts,
                                            Math.min(cut, start + at + lasts),
                                            where,
                                            rest));
                }
            }
        };
    }

    private Item scene(int depth, int length) {
        int at = random.nextInt(1 + length / 3);
        int most = 1 + random.nextInt(3);
        int lasts = Math.max(1, (length - at) / most);
        int plays = 1 + random.nextInt(Math.min(most, (length - at) / lasts));
        int inner = 2 + lasts / 2 + random.nextInt(lasts);
        List<List<Item>> layers = new ArrayList<>();
        for (int i = 0; i < (blend.equals("normal") ? 1 + random.nextInt(2) : 1); i++) {
            layers.add(items(depth + 1, Math.min(inner, 19_999)));
        }
        String name = "s" + scenes.size();
        scenes.put(
                name,
                "{\"length\": \"%sms\", \"layers\": [%s]}"
                        .formatted(
                                inner,
                                layers.stream()
                                        .map(items -> "{\"cues\": ["
                                                + items.stream().map(Item::json).collect(Collectors.joining(",\n"))
                                                + "]}")
                                        .collect(Collectors.joining(", "))));
        List<String> lead = PROPS.subList(random.nextInt(2), 2 + random.nextInt(2));
        boolean staggered = random.nextInt(3) == 0 && blend.equals("normal");
        boolean told = length == 20_000 || staggered || random.nextBoolean();
        boolean names = layers.stream().flatMap(List::stream).anyMatch(Item::isOpen);
        int stagger = random.nextInt(500);
        String cueName = "p" + this.names++;
        return new Item() {
            @Override
            public boolean isOpen() {
                return names && !told;
            }

            @Override
            public String json() {
                String on = told && names
                        ? ", \"on\": {\"lead\": ["
                                + lead.stream().map(prop -> "\"" + prop + "\"").collect(Collectors.joining(", ")) + "]}"
                        : "";
                String apart = staggered && names ? ", \"stagger\": \"" + stagger + "ms\"" : "";
                return "{\"name\": \"%s\", \"at\": \"%sms\", \"for\": \"%sms\", \"scene\": \"%s\", \"repeat\": %s%s%s}"
                        .formatted(cueName, at, lasts, name, plays, on, apart);
            }

            @Override
            public void writeOut(
                    long start, long cut, Map<String, List<String>> around, String path, List<String> cues) {
                for (int play = 0; play < plays; play++) {
                    long from = start + at + (long) play * lasts;
                    long until = Math.min(cut, from + lasts);
                    int members = staggered && names ? lead.size() : 1;
                    for (int k = 0; k < members; k++) {
                        Map<String, List<String>> inside = new TreeMap<>(around);
                        if (told && names) {
                            inside.put("lead", members > 1 ? List.of(lead.get(k)) : lead);
                        }
                        long later = from + (long) k * stagger;
                        String alone = staggered && names ? " " + lead.get(k) : "";
                        String played = path + cueName + (play == 0 ? "" : "#" + play) + alone + " > cue ";
                        for (List<Item> items : layers) {
                            for (Item item : items) {
                                if (later < until) {
                                    item.writeOut(later, Math.min(until, later + inner), inside, played, cues);
                                }
                            }
                        }
                    }
                }
            }
        };
    }
}
