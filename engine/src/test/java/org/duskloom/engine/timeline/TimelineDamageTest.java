package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;

/**
 * A sound timeline whose values are put in each other's places and replaced by others. Whatever comes of it is read to
 * its end: either with an error in the file, or with cues that can be played.
 */
class TimelineDamageTest {
    private static final String SOUND = """
            {"duskloom": "timeline/1", "map": "m.csv", "rate": 40, "length": "20s", "seed": 3, "title": "dusk",
             "sound": {"file": "a.wav", "starts": "-1s"}, "beats": "song.txt", "markers": "song.txt",
             "palettes": {"dusk": ["red", ["blue", 0.5]]},
             "looks": {"glow": {"effect": "wash", "with": {"size": 1}, "spread": "each"}},
             "scenes": {"verse": {"length": "4b", "same": true, "layers": [{"cues": [
               {"name": "in", "for": "1b", "on": "flower", "effect": "wash"},
               {"at": "@in.end", "until": "3b", "on": ["flower/rim", "x"], "look": "glow"}]}]}},
             "layers": [
              {"name": "sky", "opacity": 0.5, "blend": "screen", "cues": [
               {"name": "rise", "at": "1s", "for": "2s", "on": "x", "effect": "wash", "order": "up", "axes": "stage"},
               {"at": "+500ms", "for": "1b", "on": "x", "look": "glow", "stagger": {"by": "up", "time": "1b"},
                "fade": {"in": "100ms", "out": "10f", "easing": "ease-in"}},
               {"at": "@A-1s", "until": "@rise.end+9s", "on": "x", "effect": "wash", "fit": "none"},
               {"at": "0s", "for": "500ms", "on": "x", "effect": "wash", "with": {"size": 2, "hue": 1},
                "repeat": {"count": 4, "every": "2s", "change": {"size": 0.25, "hue": [1, 2]}}}]},
              {"mask": true, "cues": [
               {"scene": "verse", "at": "4b", "on": {"flower": ["a", "b"]}, "repeat": {"until": "18s"}}]}]}""";

    /** Beats that get faster, and two markers. */
    private static final String TRACK =
            "0\t0\tbar\n2\t2\tbeat\n3\t3\tA\n4\t4\tbar\n5\t6\tB\n5.5\t5.5\tbeat\n7\t7\tbar\n";

    /** What people, programs and malice write. */
    private static final List<String> OTHERS = List.of(
            "null",
            "true",
            "0",
            "-1",
            "1e308",
            "9007199254740991",
            "\"\"",
            "\" \"",
            "\"0s\"",
            "\"-1s\"",
            "\"+1s\"",
            "\"25s\"",
            "\"1b\"",
            "\"@rise\"",
            "\"@rise.end-1s\"",
            "\"@A\"",
            "\"@\"",
            "\"99999999999999999999s\"",
            "\"1/3b\"",
            "\"0.000000001s\"",
            "\"verse\"",
            "\"glow\"",
            "\"each\"",
            "\"x/y/z\"",
            "[]",
            "{}",
            "[[]]",
            "[\"x\", 3]",
            "{\"keys\": []}",
            "{\"count\": 10000}",
            "{\"by\": \"prop\", \"time\": \"1b\"}",
            "\"\\u0000\\u202e\"");

    private static Optional<Timeline> read(String json, Problems problems) {
        return JsonReader.read(Inputs.source("show.json", json), problems)
                .flatMap(root -> TimelineReader.read(
                        root, file -> LabelTrack.read(Inputs.source(file.value(), TRACK), problems), problems));
    }

    /** From where to where the values of the text stand: each begins behind a colon, a bracket or a comma. */
    private static List<int[]> values() {
        List<int[]> values = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < SOUND.length(); i++) {
            char c = SOUND.charAt(i);
            if (c == '"') {
                int end = SOUND.indexOf('"', i + 1) + 1;
                if (SOUND.charAt(end) != ':') {
                    values.add(new int[] {i, end});
                }
                i = end - 1;
            } else if (c == '{' || c == '[') {
                open.add(i);
            } else if (c == '}' || c == ']') {
                values.add(new int[] {open.remove(open.size() - 1), i + 1});
            } else if (Character.isDigit(c)) {
                int end = i;
                while (Character.isDigit(SOUND.charAt(end)) || SOUND.charAt(end) == '.') {
                    end++;
                }
                values.add(new int[] {i, end});
                i = end - 1;
            }
        }
        return values;
    }

    @Test
    void isSoundToBeginWith() {
        Problems problems = new Problems();
        Timeline timeline = read(SOUND, problems).orElseThrow();
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(timeline.layers().get(0).cues()).hasSize(3 + 4);
        assertThat(values()).hasSizeGreaterThan(90);
    }

    @Test
    void everyValueMayBeAnyOther() {
        for (int[] value : values()) {
            for (String other : OTHERS) {
                check(SOUND.substring(0, value[0]) + other + SOUND.substring(value[1]));
            }
        }
    }

    @Test
    void valuesMayChangePlaces() {
        Random random = new Random(1);
        List<int[]> values = values();
        for (int round = 0; round < 1000; round++) {
            int[] from = values.get(random.nextInt(values.size()));
            int[] into = values.get(random.nextInt(values.size()));
            check(SOUND.substring(0, into[0]) + SOUND.substring(from[0], from[1]) + SOUND.substring(into[1]));
        }
    }

    private static void check(String json) {
        Problems problems = new Problems();
        Optional<Timeline> timeline = read(json, problems);
        for (Problem problem : problems.inFileOrder()) {
            assertThat(problem.location().line()).as("%s of %s", problem, json).isPositive();
            assertThat(problem.toString()).doesNotContain("\n", "Optional", "null,", "Node[", "@".repeat(2));
        }
        if (problems.hasErrors()) {
            return;
        }
        Timeline sound = timeline.orElseThrow(() -> new AssertionError("neither errors nor a timeline: " + json));
        for (Layer layer : sound.layers()) {
            assertThat(layer.unsound()).as(json).isEmpty();
            layer.items()
                    .forEach(cue -> assertThat(isPlayable(cue, sound.length()))
                            .as("%s of %s", cue, json)
                            .isTrue());
        }
    }

    /** It starts in the show, lasts, is seen before the show ends, and has time for its fades. */
    private static boolean isPlayable(Played cue, ExactTime length) {
        return !cue.at().isNegative()
                && cue.at().compareTo(cue.seenUntil()) < 0
                && cue.seenUntil().compareTo(cue.end()) <= 0
                && cue.seenUntil().compareTo(length) <= 0
                && cue.fade().in().plus(cue.fade().out()).compareTo(cue.length()) <= 0;
    }
}
