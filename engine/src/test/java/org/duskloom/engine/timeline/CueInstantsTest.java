package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Times of cues that count from each other. All starts and ends are worked out on paper. */
class CueInstantsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            +0s                   | for 2s                    | 3s..5s
            +500ms                | for 2s                    | 3.5s..5.5s
            -250ms                | for 2s                    | 2.75s..4.75s
            +10f                  | for 2s                    | 3.25s..5.25s
            -3s                   | for 2s                    | 0s..2s
            @rise                 | for 2s                    | 1s..3s
            @rise+1s              | for 2s                    | 2s..4s
            @rise.end             | for 2s                    | 3s..5s
            @rise.end-1s          | for 2s                    | 2s..4s
            @rise.end-1s+40f-0.5s | for 2s                    | 2.5s..4.5s
            ' @rise'              | for 2s                    | 1s..3s
            0s                    | until @rise               | 0s..1s
            @rise                 | until @rise.end           | 1s..3s
            2s                    | until @rise.end+5s        | 2s..8s
            @drop                 | for 1s                    | 7.5s..8.5s
            @drop-0:01            | until @drop               | 6.5s..7.5s
            """)
    void countFromTheCueBeforeAndFromNames(String at, String end, String span) {
        assertThat(spans("""
                {"name": "rise", "at": "1s", "for": "2s", "on": "x", "effect": "e"},
                {"at": "%s", %s, "on": "x", "effect": "e"}""".formatted(at, end.replaceAll("(\\w+) (.*)", "\"$1\": \"$2\""))))
                .isEqualTo("1s..3s " + span);
    }

    /**
     * Without "for" a cue lasts to the end of the show; the first counts from the start; repeats end with their last
     * play.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "at": "+1s", "for": "1s"                                               | 1s..2s 2s..3s
            "at": "+0s", "for": "1s", "repeat": 3                                  | 0s..1s 1s..2s 2s..3s 3s..4s
            "for": "1s", "repeat": {"count": 2, "every": "3s"}                     | 0s..1s 3s..4s 4s..5s
            "for": "1s", "repeat": {"until": "2500ms"}                             | 0s..1s 1s..2s 2s..3s 2.5s..3.5s
            """)
    void thatIsRepeatedEndsWithItsLastPlay(String fields, String spans) {
        assertThat(spans("{" + fields + ", \"on\": \"x\", \"effect\": \"e\"},"
                        + "{\"at\": \"+0s\", \"for\": \"1s\", \"name\": \"late\", \"on\": \"x\", \"effect\": \"e\"}"))
                .isEqualTo(spans);
    }

    @Test
    void fillATimeUpToWhatIsNamed() {
        assertThat(spans("""
                {"for": "2s", "repeat": {"until": "@late-1s"}, "on": "x", "effect": "e"},
                {"at": "6s", "for": "1s", "name": "late", "on": "x", "effect": "e"}""")).isEqualTo("0s..2s 2s..4s 4s..6s 6s..7s");
    }

    @Test
    void mayCountFromWhatStandsLaterOrInAnotherLayer() {
        assertThat(spans("""
                {"at": "@c.end", "for": "1s", "on": "x", "effect": "e"},
                {"name": "c", "at": "@d+1s", "for": "1s", "on": "x", "effect": "e"}]},
                {"cues": [{"name": "d", "at": "2s", "for": "3s", "on": "x", "effect": "e"}""")).isEqualTo("4s..5s 3s..4s 2s..5s");
    }

    /** The end of a cue may count from another that counts from its start: that is no circle. */
    @Test
    void mayEndWhereTheNextBegins() {
        assertThat(spans("""
                {"name": "a", "at": "1s", "until": "@b", "on": "x", "effect": "e"},
                {"name": "b", "at": "@a+4s", "for": "1s", "on": "x", "effect": "e"}""")).isEqualTo("1s..5s 5s..6s");
    }

    /** A cue of the same list goes before others of its name; names may hold signs, dots and spaces. */
    @Test
    void takeTheNearestAndTheLongestName() {
        assertThat(spans("""
                {"name": "a", "at": "1s", "for": "1s", "on": "x", "effect": "e"},
                {"name": "a-1s", "at": "5s", "for": "1s", "on": "x", "effect": "e"},
                {"at": "@a-1s", "for": "1s", "on": "x", "effect": "e"},
                {"at": "@a-1s.end-1s", "for": "2s", "on": "x", "effect": "e"},
                {"at": "@a-500ms", "for": "1s", "on": "x", "effect": "e"}]},
                {"cues": [{"name": "a", "at": "9s", "for": "1s", "on": "x", "effect": "e"}""")).isEqualTo("1s..2s 5s..6s 5s..6s 5s..7s 0.5s..1.5s 9s..10s");
    }

    /** 300 cues in sequence: a second put in the middle moves all later ones by it, and none before. */
    @Test
    void moveAllLaterCuesWhenOneInTheMiddleIsEdited() {
        List<Cue> before = inSequence(300, -1);
        List<Cue> after = inSequence(300, 150);
        for (int i = 0; i < 300; i++) {
            ExactTime moved = ExactTime.ofSeconds(i > 150 ? 1 : 0);
            assertThat(after.get(i).at()).isEqualTo(before.get(i).at().plus(moved));
            assertThat(before.get(i).at()).isEqualTo(ExactTime.ofSeconds(2L * i + 1));
        }
    }

    private static List<Cue> inSequence(int count, int longer) {
        return cues(IntStream.range(0, count)
                .mapToObj(i -> "{\"at\": \"+1s\", \"for\": \"" + (i == longer ? 2 : 1)
                        + "s\", \"on\": \"x\", \"effect\": \"e\"}")
                .collect(Collectors.joining(",\n")));
    }

    /** A chain through 20,000 cues that each count from the next in the file, which recursion would not survive. */
    @Test
    void mayHangOnEachOtherToAnyDepth() {
        int count = 20_000;
        String chain = IntStream.range(0, count)
                .mapToObj(i -> "{\"name\": \"c" + i + "\", \"at\": \""
                        + (i == count - 1 ? "0s" : "@c" + (i + 1) + ".end")
                        + "\", \"for\": \"1ms\", \"on\": \"x\", \"effect\": \"e\"}")
                .collect(Collectors.joining(",\n"));
        assertThat(cues(chain).get(0).at()).isEqualTo(ExactTime.ofMilliseconds(count - 1));
    }

    /** A circle of thousands is told by its beginning and its end. */
    @Test
    void aLongCircleIsToldShort() {
        String circle = IntStream.range(0, 3000)
                .mapToObj(i -> "{\"name\": \"c" + i + "\", \"at\": \"@c" + (i + 1) % 3000
                        + "\", \"for\": \"1ms\", \"on\": \"x\", \"effect\": \"e\"}")
                .collect(Collectors.joining(",\n"));
        assertThat(Timelines.problems(Timelines.withCue(circle)))
                .singleElement()
                .asString()
                .contains("circle: the start of \"c0\" -> the start of \"c1\" -> ")
                .contains("the start of \"c11\" -> (2988 more) -> the start of \"c0\"; let one");
    }

    /** In whatever order the file has the links of a chain, each starts where the one before it ends. */
    @Test
    void areTheSameInAnyOrderOfTheFile() {
        for (int seed = 0; seed < 50; seed++) {
            List<Integer> order = new ArrayList<>(IntStream.range(0, 30).boxed().toList());
            Collections.shuffle(order, new Random(seed));
            String json = order.stream()
                    .map(i -> "{\"name\": \"c" + i + "\", \"at\": \"" + (i == 0 ? "0s" : "@c" + (i - 1) + ".end")
                            + "\", \"for\": \"" + (i + 1) + "ms\", \"on\": \"x\", \"effect\": \"e\"}")
                    .collect(Collectors.joining(",\n"));
            List<Cue> cues = cues(json);
            for (int k = 0; k < 30; k++) {
                int i = order.get(k);
                assertThat(cues.get(k).at()).isEqualTo(ExactTime.ofMilliseconds(i * (i + 1) / 2));
            }
        }
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                {"on": "x", "effect": "e", "at": "-1f"}
                    show.json:5:34: error: "at" of a cue is 0.025s before the timeline starts; the first cue of a list counts from its start
                {"on": "x", "effect": "e", "for": "1s"}, {"on": "x", "effect": "e", "at": "-1001ms", "for": "1s"}
                    show.json:5:75: error: "at" of a cue is 0.001s before the timeline starts; the cue before it ends at 1s
                {"on": "x", "effect": "e"}, {"on": "x", "effect": "e", "at": "+1s"}
                    show.json:5:62: error: "at" of a cue is 11s; the timeline ends at 10s
                {"on": "x", "effect": "e", "at": "+1"}
                    show.json:5:34: error: "at" of a cue: the time "+1" has no unit; write "1s" for seconds or "1ms"
                {"on": "x", "effect": "e", "until": "+2s"}
                    show.json:5:37: error: "until" of a cue is "+2s", but only "at" of a cue counts from the cue before; leave the sign out; how long a cue lasts is written as "for"
                {"on": "x", "effect": "e", "for": "1s", "repeat": {"until": "-2s"}}
                    show.json:5:61: error: "until" of "repeat" of a cue is "-2s", but only "at" of a cue counts from the cue before; leave the sign out; how long a cue lasts is written as "for"
                {"on": "x", "effect": "e", "for": "@rise"}
                    show.json:5:35: error: "for" of a cue: the time "@rise" starts from a cue or a marker, which cannot be used here; write a number and a unit, such as "3s", "250ms", "1:02.5" or "90f"
                {"on": "x", "effect": "e", "name": "rise"}, {"on": "x", "effect": "e", "at": "@rse"}
                    show.json:5:78: error: "at" of a cue: the time "@rse" names no cue and no marker; did you mean "rise"?
                {"on": "x", "effect": "e", "name": "rise"}, {"on": "x", "effect": "e", "at": "@rise.ende+1s"}
                    show.json:5:78: error: "at" of a cue: the time "@rise.ende+1s" names no cue and no marker; did you mean "rise.end"?
                {"on": "x", "effect": "e", "name": "a"}, {"on": "x", "effect": "e", "name": "a"}, {"on": "x", "effect": "e", "at": "@a"}
                    show.json:5:116: error: "at" of a cue: "@a" may be the cue at show.json:5:1 or the cue at show.json:5:42; give each a name of its own
                {"on": "x", "effect": "e", "name": "a"}, {"on": "x", "effect": "e", "name": "a"}
                    show.json:3:12: warning: no cue uses the look "glow"
                {"on": "x", "effect": "e", "name": "a", "at": "@a"}
                    show.json:5:47: error: times go in a circle: the start of "a" -> the start of "a"; let one of them count from something else
                {"on": "x", "effect": "e", "name": "a", "until": "@a.end"}
                    show.json:5:50: error: times go in a circle: the end of "a" -> the end of "a"; let one of them count from something else
                {"on": "x", "effect": "e", "name": "a", "at": "@b.end"}, {"on": "x", "effect": "e", "name": "b", "at": "+1s", "for": "1s"}
                    show.json:5:47: error: times go in a circle: the start of "a" -> the end of "b" -> the start of "b" -> the end of "a" -> the start of "a"; let one of them count from something else
                {"on": "x", "effect": "e", "at": "@b"}, {"on": "x", "effect": "e", "name": "b", "at": "+1s"}
                    show.json:5:34: error: times go in a circle: the start of the cue in line 5 -> the start of "b" -> the end of the cue in line 5 -> the start of the cue in line 5; let one of them count from something else
                {"on": "x", "effect": "e", "at": "nonsense", "for": "1s"}, {"on": "x", "effect": "e", "at": "+1s"}
                    show.json:5:34: error: "at" of a cue: the time "nonsense" has no readable number; write a number and a unit, such as "3s", "250ms", "1:02.5" or "90f"
                {"on": "x", "effect": "e", "at": "8s", "for": "1s", "name": "a"}, {"on": "x", "effect": "e", "at": "2s", "until": "@a-7s"}
                    show.json:5:115: error: the cue starts at 2s and ends at 1s; it must end after it starts
                {"on": "x", "effect": "e", "at": "8s", "for": "1s", "name": "a"}, {"on": "x", "effect": "e", "at": "@a-9s"}
                    show.json:5:100: error: "at" of a cue: the time "@a-9s" is negative (-1s); it must be 0s or later
                """);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void teachWhatIsWrong(String cues, List<String> problems) {
        assertThat(Timelines.problems(Timelines.withCue(cues))).isEqualTo(problems);
    }

    static Stream<Object[]> wrongMarkers() {
        return Cases.of("""
                "markers": {"drop": 3}
                    show.json:1:96: error: marker "drop" must be a time, not the number 3; write it with a unit, such as "3s"
                "markers": {"drop": "2s"}
                    show.json:1:96: error: marker "drop" is 2s; the timeline ends at 1s
                "markers": {"drop": "+2s"}
                    show.json:1:96: error: marker "drop" is "+2s", but only "at" of a cue counts from the cue before; leave the sign out
                "markers": {"drop": "@drop"}
                    show.json:1:96: error: marker "drop": the time "@drop" starts from a cue or a marker, which cannot be used here; write a number and a unit, such as "3s", "250ms", "1:02.5" or "90f"
                "markers": ["drop"]
                    show.json:1:87: error: "markers" of the timeline must be an object { }, not a list
                """);
    }

    @ParameterizedTest
    @MethodSource("wrongMarkers")
    void markersTeachWhatIsWrong(String fields, List<String> problems) {
        assertThat(Timelines.problems(Timelines.withFields(fields))).isEqualTo(problems);
    }

    /** What is wrong with a marker is said there, not wherever it is named. */
    @Test
    void aMarkerWithAWrongTimeIsAMarkerAllTheSame() {
        assertThat(Timelines.problems(
                        Timelines.withCue("""
                {"on": "x", "effect": "e", "at": "@drop+1s"}""").replace("\"rate\"", "\"markers\": {\"drop\": \"75s\"}, \"rate\"")))
                .containsExactly("show.json:1:66: error: marker \"drop\" is 75s; the timeline ends at 10s");
    }

    @Test
    void aCueMayNotHaveTheNameOfAMarkerThatIsReferredTo() {
        assertThat(Timelines.problems(
                        Timelines.withCue("""
                {"name": "drop", "on": "x", "effect": "e"}, {"on": "x", "effect": "e", "at": "@drop"}""").replace("\"rate\"", "\"markers\": {\"drop\": \"7500ms\"}, \"rate\"")))
                .containsExactly(
                        "show.json:5:78: error: \"at\" of a cue: \"@drop\" may be the marker at show.json:1:58 or"
                                + " the cue at show.json:5:1; give each a name of its own");
    }

    private static String spans(String cues) {
        return cues(cues).stream().map(cue -> cue.at() + ".." + cue.end()).collect(Collectors.joining(" "));
    }

    private static List<Cue> cues(String cues) {
        return Timelines.sound(Timelines.withCue(cues)
                        .replace("\"rate\"", "\"markers\": {\"drop\": \"7500ms\"}, \"rate\"")
                        .replace("\"length\": \"10s\"", "\"length\": \"" + (cues.length() > 5000 ? 1000 : 10) + "s\""))
                .layers()
                .stream()
                .flatMap(layer -> layer.cues().stream())
                .toList();
    }
}
