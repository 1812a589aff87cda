package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.render.FramePainter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which stretches of a show stay the same when something of it is written in another way. Ten of a second each. */
class StretchFingerprintsTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\npond,1,0,0\npond,2,1,0\ngate,1,2,0\n");

    /** Glow is seen in the seconds 1 to 3, dusk from 2 to 5, the mask from 8 to 9, and nothing in the other ones. */
    private static final String FIELDS = """
            "seed": 7, "layers": [
              {"name": "ground", "blend": "screen", "cues": [
                {"name": "glow", "at": "1s", "for": "3s", "on": "pond", "effect": "weave"}]},
              {"name": "sky", "opacity": 0.5, "cues": [
                {"name": "dusk", "at": "2s", "for": "4s", "on": "gate", "effect": "solid"}]},
              {"mask": true, "cues": [
                {"name": "gap", "at": "8s", "for": "2s", "on": "*", "effect": "solid"}]}]""";

    private static List<Fingerprint> prints(String fields) {
        return TestShow.of(MAP, fields).plan().fingerprints(40);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "for": "3s"                  | "for": "2500ms"              | 1 2 3
            "at": "1s", "for": "3s"      | "at": "2s", "for": "2s"      | 1 2 3
            "effect": "weave"            | "effect": "place"            | 1 2 3
            "blend": "screen"            | "blend": "lighten"           | 1 2 3
            "opacity": 0.5               | "opacity": 0.6               | 2 3 4 5
            "effect": "solid"            | "effect": "solid", "with": {"color": "red"} | 2 3 4 5 8 9
            "mask": true                 | "mask": false                | 8 9
            "mask": true                 | "mask": true, "opacity": 0.9 | 8 9
            "name": "sky"                | "name": "air"                | 0
            "for": "4s"                  | "for": "4s", "repeat": 1     | 0
            "rate": 40                   | "rate": 20                   | 0 1 2 3 4
            """)
    void changeWhereSomethingIsSeenThatChanges(String from, String to, String changed) {
        assertThat(FIELDS + "\"rate\": 40").contains(from);
        List<Fingerprint> before = prints(FIELDS);
        String fields = FIELDS.replace(from, to);
        List<Fingerprint> after = from.contains("rate")
                ? new TestShow(
                                MAP,
                                "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", " + to + ", \"length\": \"10s\", "
                                        + fields + "}",
                                TestShow.of(MAP, fields).effects())
                        .plan()
                        .fingerprints(40)
                : prints(fields);
        List<Integer> others = IntStream.range(0, after.size())
                .filter(stretch -> !after.get(stretch).equals(before.get(stretch)))
                .boxed()
                .toList();
        List<Integer> expected =
                Arrays.stream(changed.split(" ")).map(Integer::valueOf).toList();
        assertThat(others).isEqualTo(expected.equals(List.of(0)) ? List.of() : expected);
    }

    @Test
    void areOneForEachStretchAndAllAreOthers() {
        assertThat(prints(FIELDS)).hasSize(10).doesNotHaveDuplicates();
        Plan plan = TestShow.of(MAP, FIELDS).plan();
        assertThat(plan.fingerprints(399)).hasSize(2);
        assertThat(plan.fingerprints(400)).hasSize(1);
        assertThat(plan.fingerprints(1_000_000)).isEqualTo(plan.fingerprints(400));
        assertThat(plan.fingerprints(1)).hasSize(400).doesNotHaveDuplicates();
        assertThatThrownBy(() -> plan.fingerprints(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A pixel more, which nothing lights, is another frame all the same. */
    @Test
    void dependOnHowManyPixelsThereAre() {
        PixelMap more = Maps.map("prop,pixel,x,y\npond,1,0,0\npond,2,1,0\ngate,1,2,0\nshed,1,9,0\n");
        String cue = "\"layers\": [{\"cues\": [{\"on\": \"pond\", \"effect\": \"solid\"}]}]";
        assertThat(TestShow.of(more, cue).plan().fingerprints(40))
                .doesNotContainAnyElementsOf(TestShow.of(MAP, cue).plan().fingerprints(40));
    }

    /** Four cues that are dimmed together are not two pairs of the same cues. */
    @Test
    void dependOnWhichCuesStandInOneGroup() {
        String cue = "{\"on\": \"pond\", \"effect\": \"light\", \"with\": {\"a\": 0.5}}";
        String shows = "\"scenes\": {\"s\": {\"length\": \"4s\", \"layers\": [{\"cues\": [%s]}]}},"
                + " \"layers\": [{\"cues\": [%s]}]";
        String play = "{\"scene\": \"s\", \"at\": \"0s\", \"for\": \"4s\", \"opacity\": 0.5}";
        Plan four = TestShow.of(MAP, shows.formatted(String.join(", ", cue, cue, cue, cue), play))
                .plan();
        Plan pairs = TestShow.of(MAP, shows.formatted(cue + ", " + cue, play + ", " + play))
                .plan();
        assertThat(cuePrints(four)).hasSize(4).isEqualTo(cuePrints(pairs));
        assertThat(frame(four, 0)).isNotEqualTo(frame(pairs, 0));
        assertThat(four.fingerprints(40).get(0))
                .isNotEqualTo(pairs.fingerprints(40).get(0));
        assertThat(four.fingerprints(40).get(4))
                .isEqualTo(pairs.fingerprints(40).get(4));
    }

    /** Two inner groups in one outer one are not one inner group, nor is a cue beside an inner group in it. */
    @Test
    void dependOnWhichInnerGroupsAreOne() {
        String cue = "{\"on\": \"pond\", \"effect\": \"light\", \"with\": {\"a\": 0.5}}";
        String inner = "{\"scene\": \"in\", \"opacity\": 0.5}";
        Plan four = nested(cue + ", " + cue + ", " + cue + ", " + cue, inner + ", " + cue);
        Plan pairs = nested(cue + ", " + cue, inner + ", " + inner + ", " + cue);
        assertThat(cuePrints(four)).hasSize(5).isEqualTo(cuePrints(pairs));
        assertThat(four.fingerprints(40).get(0))
                .isNotEqualTo(pairs.fingerprints(40).get(0));
        Plan before = nested(cue + ", " + cue, cue + ", " + inner);
        Plan after = nested(cue + ", " + cue, inner + ", " + cue);
        assertThat(before.layers().get(0).cues())
                .extracting(PlannedCue::groupCount)
                .containsExactly(1, 2, 2);
        assertThat(before.fingerprints(40).get(0))
                .isNotEqualTo(after.fingerprints(40).get(0));
    }

    /** A scene that is dimmed as a whole, with another in it that is, too. */
    private static Plan nested(String inside, String outside) {
        String scenes = "\"scenes\": {\"in\": {\"length\": \"4s\", \"layers\": [{\"cues\": [%s]}]},"
                + " \"out\": {\"length\": \"4s\", \"layers\": [{\"cues\": [%s]}]}},"
                + " \"layers\": [{\"cues\": [{\"scene\": \"out\", \"opacity\": 0.5}]}]";
        return TestShow.of(MAP, scenes.formatted(inside, outside)).plan();
    }

    /** Nothing is seen at the end, and of that a stretch more or less: as many frames are other frames. */
    @Test
    void dependOnHowManyFramesTheLastOneHas() {
        String show = "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"rate\": 40, \"length\": \"%s\","
                + " \"layers\": [{\"cues\": [{\"for\": \"1s\", \"on\": \"pond\", \"effect\": \"solid\"}]}]}";
        List<List<Fingerprint>> prints = IntStream.of(401, 410, 500)
                .mapToObj(frames -> new TestShow(MAP, show.formatted(frames + "f"), PlainEffects.all())
                        .plan()
                        .fingerprints(400))
                .toList();
        assertThat(prints)
                .extracting(each -> each.get(0))
                .containsOnly(prints.get(0).get(0));
        assertThat(prints).extracting(each -> each.get(1)).doesNotHaveDuplicates();
    }

    private static List<Fingerprint> cuePrints(Plan plan) {
        return plan.layers().get(0).cues().stream().map(PlannedCue::fingerprint).toList();
    }

    /** Stretches of shows drawn by lot, from few enough words that many are the same: those have the same bytes. */
    @Test
    void theSameFingerprintMeansTheSameBytes() {
        Random random = new Random(20);
        List<Plan> plans = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            plans.add(TestShow.of(MAP, randomFields(random)).plan());
        }
        int same = 0;
        for (int i = 0; i < plans.size(); i++) {
            for (int k = 0; k < i; k++) {
                same += assertSameBytes(plans.get(i), plans.get(k));
            }
        }
        assertThat(same).isGreaterThan(200);
    }

    private static int assertSameBytes(Plan one, Plan other) {
        List<Fingerprint> ones = one.fingerprints(40);
        List<Fingerprint> others = other.fingerprints(40);
        int same = 0;
        for (int stretch = 0; stretch < 10; stretch++) {
            if (ones.get(stretch).equals(others.get(stretch))) {
                same++;
                for (long frame : new long[] {40 * stretch, 40 * stretch + 17, 40 * stretch + 39}) {
                    assertThat(frame(one, frame)).isEqualTo(frame(other, frame));
                }
            }
        }
        return same;
    }

    private static byte[] frame(Plan plan, long frame) {
        byte[] rgb = new byte[3 * plan.pixelCount()];
        new FramePainter(plan).render(frame, rgb, 0);
        return rgb;
    }

    private static String randomFields(Random random) {
        List<String> layers = new ArrayList<>();
        for (int layer = 0; layer < 2; layer++) {
            List<String> cues = new ArrayList<>();
            for (int cue = 0; cue < 2; cue++) {
                cues.add("{\"name\": \"c" + layer + cue + "\", \"at\": \"" + 3 * random.nextInt(3)
                        + "s\", \"for\": \"3s\","
                        + " \"on\": \"" + of(random, "pond", "gate", "*") + "\", \"effect\": \""
                        + of(random, "weave", "solid") + "\"}");
            }
            String mixed = of(random, "\"blend\": \"normal\"", "\"blend\": \"screen\"", "\"mask\": true");
            layers.add("{" + mixed + ", \"opacity\": " + of(random, "1", "0.5") + ", \"cues\": ["
                    + String.join(", ", cues) + "]}");
        }
        return "\"seed\": 7, \"layers\": [" + String.join(", ", layers) + "]";
    }

    private static String of(Random random, String... words) {
        return words[random.nextInt(words.length)];
    }
}
