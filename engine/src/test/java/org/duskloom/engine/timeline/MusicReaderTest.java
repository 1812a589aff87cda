package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shows in time with music. */
class MusicReaderTest {
    /** Sixteen beats at 120, then at 150: beat 16 is at 8 s, beat 20 at 9.6 s, beat 24 at 11.2 s. Bars of four. */
    private static final String FASTER = IntStream.rangeClosed(0, 32)
                    .mapToObj(beat ->
                            label(beat < 16 ? 0.5 * beat : 8 + 0.4 * (beat - 16), beat % 4 == 0 ? "bar" : "beat"))
                    .collect(Collectors.joining("\n"))
            + "\n";

    private static String label(double seconds, String text) {
        return String.format(Locale.ROOT, "%.6f\t%.6f\t%s", seconds, seconds, text);
    }

    private static String show(String fields, String cues) {
        return """
                {"duskloom": "timeline/1", "map": "map.csv", "length": "14s", %s,
                 "layers": [{"cues": [
                %s]}]}""".formatted(fields, cues);
    }

    private static String cue(String fields) {
        return "{\"on\": \"x\", \"effect\": \"e\", " + fields + "}";
    }

    private static List<String> times(Timeline timeline) {
        return times(timeline.layers());
    }

    private static List<String> times(List<Layer> layers) {
        return layers.get(0).items().stream()
                .map(cue -> cue.at() + ".." + cue.end())
                .toList();
    }

    private static List<String> timesWith(String beats, String cues) {
        return times(Timelines.sound(show("\"beats\": " + beats, cues), FASTER));
    }

    /** 128 beats a minute: a beat is 15/32 s. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'at': '0b', 'for': '8b'|0.35s..4.1s",
                "'at': '2 bars', 'for': '1 bar'|4.1s..5.975s",
                "'at': '350ms', 'until': '0.5b'|0.35s..0.584375s",
                "'at': '0s', 'for': '1bar'|0s..1.875s",
            })
    void beatsOfASteadyTempo(String fields, String times) {
        assertThat(timesWith("{\"tempo\": 128, \"first\": \"350ms\", \"bar\": 4}", cue(fields.replace('\'', '"'))))
                .containsExactly(times);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'at': '16b', 'for': '8b'|8s..11.2s",
                "'at': '12b', 'for': '8b'|6s..9.6s",
                "'at': '250ms', 'for': '16b'|0.25s..8.2s",
                "'at': '3 bars', 'for': '2 bars'|6s..9.6s",
                "'at': '0b', 'until': '40b'|0s..17.6s",
            })
    void beatsOfALabelTrack(String fields, String times) {
        String show =
                show("\"beats\": \"song.txt\"", cue(fields.replace('\'', '"'))).replace("14s", "20s");
        assertThat(times(Timelines.sound(show, FASTER))).containsExactly(times);
    }

    @Test
    void beatsCountOnFromWhatComesBefore() {
        assertThat(timesWith(
                        "\"song.txt\"",
                        String.join(
                                ",\n",
                                cue("\"at\": \"14b\", \"for\": \"2b\", \"name\": \"rise\""),
                                cue("\"at\": \"+2b\", \"for\": \"1b\""),
                                cue("\"at\": \"-1b\", \"for\": \"1s\""),
                                cue("\"at\": \"@rise+4b\", \"for\": \"1b\""),
                                cue("\"at\": \"@rise.end-2b\", \"for\": \"2b\""))))
                .containsExactly("7s..8s", "8.8s..9.2s", "8.8s..9.8s", "8.8s..9.2s", "7s..8s");
    }

    @Test
    void repeatsAreSoManyBeatsApartAndEachAsManyBeatsLong() {
        assertThat(timesWith(
                        "\"song.txt\"",
                        cue("\"at\": \"12b\", \"for\": \"1b\", \"repeat\": {\"count\": 4, \"every\": \"2b\"}")))
                .containsExactly("6s..6.5s", "7s..7.5s", "8s..8.4s", "8.8s..9.2s");
        assertThat(timesWith("\"song.txt\"", cue("\"at\": \"14b\", \"for\": \"2b\", \"repeat\": 3")))
                .containsExactly("7s..8s", "8s..8.8s", "8.8s..9.6s");
        assertThat(
                        timesWith(
                                "\"song.txt\"",
                                cue(
                                        "\"at\": \"14b\", \"for\": \"1b\", \"repeat\": {\"until\": \"19b\", \"every\": \"1 bar\"}")))
                .containsExactly("7s..7.5s", "8.8s..9.2s");
    }

    @Test
    void fadesCountFromTheirEndOfThePlay() {
        Timeline timeline = Timelines.sound(
                show(
                        "\"beats\": \"song.txt\"",
                        cue("\"at\": \"14b\", \"for\": \"4b\", \"fade\": {\"in\": \"1b\", \"out\": \"1b\"}")),
                FASTER);
        Fade fade = timeline.layers().get(0).items().get(0).fade();
        assertThat(fade.in()).isEqualTo(new ExactTime(1, 2));
        assertThat(fade.out()).isEqualTo(new ExactTime(2, 5));
    }

    /** Two beats after its start, wherever it is played. */
    @Test
    void scenesCountTheBeatsUnderTheCueThatPlaysThem() {
        Timeline timeline = Timelines.sound(
                show(
                        "\"beats\": \"song.txt\", \"scenes\": {\"verse\": {\"length\": \"4b\", \"layers\": [{\"cues\": ["
                                + cue("\"at\": \"2b\", \"for\": \"1b\"") + ", " + cue("\"at\": \"+250ms\"") + "]}]}}",
                        "{\"scene\": \"verse\", \"at\": \"4b\"}, {\"scene\": \"verse\", \"at\": \"14b\"},"
                                + " {\"scene\": \"verse\", \"at\": \"20b\"}"),
                FASTER);
        assertThat(times(timeline)).containsExactly("2s..4s", "7s..8.8s", "9.6s..11.2s");
        Scene verse = timeline.scenes().find("verse").orElseThrow();
        assertThat(startingAt(timeline, verse, ExactTime.ofSeconds(2))).containsExactly("1s..1.5s", "1.75s..2s");
        assertThat(startingAt(timeline, verse, ExactTime.ofSeconds(7))).containsExactly("1s..1.4s", "1.65s..1.8s");
        assertThat(startingAt(timeline, verse, new ExactTime(48, 5))).containsExactly("0.8s..1.2s", "1.45s..1.6s");
    }

    private static List<String> startingAt(Timeline timeline, Scene scene, ExactTime start) {
        Problems problems = new Problems();
        Scene there = timeline.scenes().startingAt(scene, start, problems);
        return problems.hasErrors() ? List.of(problems.inFileOrder().toString()) : times(there.layers());
    }

    @Test
    void labelsAreMarkersByTheClockOfTheSound() throws Exception {
        String track = label(1, "verse") + "\n" + label(2, "chorus") + "\n" + label(3, "beat") + "\n"
                + label(4, "chorus") + "\n5\t7\tbridge\n" + label(8, "chorus") + "\n";
        Timeline timeline = Timelines.sound(
                show(
                        "\"markers\": \"song.txt\", \"sound\": {\"file\": \"song.wav\", \"starts\": \"2s\"}",
                        cue("\"at\": \"@verse\", \"until\": \"@chorus 2\"")),
                track);
        assertThat(times(timeline)).containsExactly("3s..6s");
        assertThat(timeline.markers().keySet())
                .containsExactly("verse", "chorus", "chorus 2", "bridge", "bridge.end", "chorus 3");
        assertThat(TimeText.parse("@bridge.end-1s", timeline.times())).isEqualTo(ExactTime.ofSeconds(8));
        assertThat(timeline.sound().orElseThrow().file().value()).isEqualTo("song.wav");
    }

    @Test
    void theSoundMayHaveBeenRunningForAWhile() {
        assertThat(times(Timelines.sound(
                        show(
                                "\"beats\": \"song.txt\", \"sound\": {\"file\": \"song.wav\", \"starts\": \"-4s\"}",
                                cue("\"at\": \"16b\", \"for\": \"8b\"")),
                        FASTER)))
                .containsExactly("4s..7.2s");
    }

    @Test
    void markersMayCountBeats() {
        assertThat(times(Timelines.sound(show(
                        "\"beats\": {\"tempo\": 120}, \"markers\": {\"chorus\": \"16b\"}",
                        cue("\"at\": \"@chorus+2b\", \"for\": \"1 bar\"")))))
                .containsExactly("9s..11s");
    }

    /** What draws by chance keeps its draws when the beats are corrected. */
    @Test
    void randomKeysDoNotHangOnTheTempo() {
        String cues = cue("\"at\": \"4b\", \"for\": \"2b\"") + ",\n" + cue("\"at\": \"+1b\", \"for\": \"1b\"");
        List<List<String>> keys =
                List.of("\"beats\": {\"tempo\": 120}", "\"beats\": {\"tempo\": 127.5}", "\"beats\": \"song.txt\"")
                        .stream()
                        .map(beats -> Timelines.sound(show(beats, cues), FASTER).layers().get(0).cues().stream()
                                .map(Cue::randomKey)
                                .toList())
                        .distinct()
                        .toList();
        assertThat(keys).hasSize(1);
        assertThat(keys.get(0)).containsExactly("layer 1 at 4s e", "layer 1 following e");
    }

    static List<List<String>> wrong() {
        return List.of(
                List.of(
                        "\"beats\": {\"tempo\": 0}",
                        "show.json:1:82: error: \"tempo\" of \"beats\" of the timeline: \"0\" is not a tempo in beats per"
                                + " minute; write a number from 1 to 1000 with at most six decimals, such as 128"),
                List.of(
                        "\"beats\": {\"tempo\": -120}",
                        "show.json:1:82: error: \"tempo\" of \"beats\" of the timeline: \"-120\" is not a tempo in beats per"
                                + " minute; write a number from 1 to 1000 with at most six decimals, such as 128"),
                List.of(
                        "\"beats\": {\"tempo\": 1e9}",
                        "show.json:1:82: error: \"tempo\" of \"beats\" of the timeline: \"1e9\" is not a tempo in beats per"
                                + " minute; write a number from 1 to 1000 with at most six decimals, such as 128"),
                List.of(
                        "\"beats\": {\"tempo\": \"128\"}",
                        "show.json:1:82: error: \"tempo\" of \"beats\" of the timeline must be a number, not the text"
                                + " \"128\"; write 128 without quotes"),
                List.of(
                        "\"beats\": {\"first\": \"1s\"}",
                        "show.json:1:72: error: \"beats\" of the timeline lacks the field \"tempo\""),
                List.of(
                        "\"beats\": {\"tempo\": 120, \"first\": \"-1s\"}",
                        "show.json:1:96: error: \"first\" of \"beats\" of the timeline: the time \"-1s\" is negative (-1s);"
                                + " it must be 0s or later"),
                List.of(
                        "\"beats\": {\"tempo\": 120, \"first\": \"2b\"}",
                        "show.json:1:96: error: \"first\" of \"beats\" of the timeline is \"2b\", but beats are counted from"
                                + " it; write it in seconds or milliseconds, such as \"350ms\""),
                List.of(
                        "\"beats\": {\"tempo\": 120}, \"sound\": {\"file\": \"a.wav\", \"starts\": \"2b\"}",
                        "show.json:1:125: error: \"starts\" of \"sound\" of the timeline is \"2b\", but the beats lie where"
                                + " the sound has them; write it in seconds or milliseconds, such as \"350ms\""),
                List.of(
                        "\"markers\": {\"\": \"1s\", \" a\": \"1s\", \"a + b\": \"1s\", \"beat\": \"1s\"}",
                        "show.json:1:75: error: the name \"\" of a marker is empty; give it one, such as \"chorus\"",
                        "show.json:1:85: error: the name \" a\" of a marker begins or ends with a space; write \"a\"",
                        "show.json:1:97: error: the name \"a + b\" of a marker has a + in it, behind which times count on,"
                                + " as in \"@chorus+2b\"; write \"a and b\"",
                        "show.json:1:112: error: the name \"beat\" of a marker is the word for the beats of the music; write"
                                + " \"the beat\""),
                List.of(
                        "\"beats\": {\"tempo\": 120, \"bar\": 0}",
                        "show.json:1:94: error: \"bar\" of \"beats\" of the timeline is 0; allowed: a whole number from 1 to"
                                + " 64"),
                List.of(
                        "\"beats\": 128",
                        "show.json:1:72: error: \"beats\" of the timeline must be an object { }, not the number 128; its"
                                + " fields are tempo, first, bar"),
                List.of(
                        "\"beats\": \"song.txt\"",
                        "show.json:1:72: error: the label track \"song.txt\" has no beats; label every beat \"beat\", and the"
                                + " first of every bar \"bar\""),
                List.of(
                        "\"markers\": 3",
                        "show.json:1:74: error: \"markers\" of the timeline must be an object { }, not the number 3"),
                List.of(
                        "\"markers\": {\"chorus\": \"-1s\"}",
                        "show.json:1:85: error: marker \"chorus\": the time \"-1s\" is negative (-1s); it must be 0s or later"),
                List.of(
                        "\"sound\": \"song.wav\"",
                        "show.json:1:72: error: \"sound\" of the timeline must be an object { }, not the text \"song.wav\";"
                                + " its fields are file, starts"),
                List.of(
                        "\"sound\": {\"starts\": \"2\"}",
                        "show.json:1:72: error: \"sound\" of the timeline lacks the field \"file\"",
                        "show.json:1:83: error: \"starts\" of \"sound\" of the timeline: the time \"2\" has no unit; write"
                                + " \"2s\" for seconds or \"2ms\""));
    }

    @ParameterizedTest
    @MethodSource
    void wrong(List<String> case_) {
        assertThat(Timelines.problems(show(case_.get(0), cue("\"at\": \"0s\"")), "1\t1\tverse\n"))
                .isEqualTo(case_.subList(1, case_.size()));
    }

    @Test
    void oneBeatAndBeatsAtOnceAreRefused() {
        String show = show("\"beats\": \"song.txt\"", cue("\"at\": \"0s\""));
        assertThat(Timelines.problems(show, label(1, "beat")))
                .containsExactly(
                        "show.json:1:72: error: the label track \"song.txt\" has one beat only; label every beat"
                                + " \"beat\", and the first of every bar \"bar\"");
        assertThat(Timelines.problems(show, label(1, "beat") + "\n" + label(1, "bar")))
                .containsExactly("song.txt:2:1: error: two beats are at 1s; remove one of them");
    }

    /** Of a show in beats every time would be wrong; the one fault is told alone, and other faults beside it. */
    @Test
    void timesDoNotRepeatThatTheBeatsAreFaulty() {
        String cues =
                cue("\"at\": \"4b\", \"for\": \"2 bars\"") + ",\n" + cue("\"at\": \"@nobody+1b\", \"for\": \"3x\"");
        assertThat(Timelines.problems(show("\"beats\": {\"tempo\": \"fast\"}", cues), ""))
                .hasSize(3)
                .anySatisfy(said -> assertThat(said).contains("must be a number, not the text \"fast\""))
                .anySatisfy(said -> assertThat(said).contains("@nobody"))
                .anySatisfy(said -> assertThat(said).contains("3x"));
        assertThat(Timelines.problems(show("\"beats\": \"song.txt\"", cue("\"at\": \"4b\"")), "1 1 beat\n"))
                .singleElement()
                .satisfies(said -> assertThat(said).startsWith("song.txt:1:1: error: this is no label"));
    }

    @Test
    void barsMustBeKnownWhereTheyAreCounted() {
        String track = label(1, "beat") + "\n" + label(2, "bar");
        assertThat(Timelines.problems(
                        show("\"beats\": \"song.txt\"", cue("\"at\": \"0s\", \"for\": \"1 bar\"")), track))
                .containsExactly(
                        "show.json:3:47: error: \"for\" of a cue: the time \"1 bar\" counts bars, but it is not known"
                                + " which beats start one; label the first beat of every bar \"bar\" instead of \"beat\"");
    }

    @Test
    void markersThatThereAreNotAreToldWithTheNearest() {
        String track = label(1, "chorus") + "\n" + label(1, "") + "\n";
        assertThat(Timelines.problems(show("\"markers\": \"song.txt\"", cue("\"at\": \"@corus+2s\"")), track))
                .containsExactly(
                        "show.json:3:34: error: \"at\" of a cue: the time \"@corus+2s\" names no cue and no marker; did you"
                                + " mean \"chorus\"?",
                        "song.txt:2:1: warning: the label at 1s has no text, so that no time can count from it; give it a"
                                + " name, or remove it");
    }

    /** Its markers are not known, nor where the beats lie: what counts from them is not wrong because of that. */
    @Test
    void whatFollowsFromAFaultyTrackIsNotTold() {
        String show = show(
                "\"beats\": \"song.txt\", \"markers\": \"song.txt\"",
                cue("\"at\": \"@A+2b\", \"until\": \"@B\", \"repeat\": {\"until\": \"@C.end\"}"));
        assertThat(Timelines.problems(show, label(0, "A") + "\n1 1 beat\n"))
                .singleElement()
                .satisfies(said -> assertThat(said).startsWith("song.txt:2:1: error: this is no label"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"B", "x", "ax"})
    void namesOfOneOrTwoLettersAreNotGuessed(String written) {
        String track = label(1, "A") + "\n" + label(2, "C") + "\n";
        assertThat(Timelines.problems(show("\"markers\": \"song.txt\"", cue("\"at\": \"@" + written + "\"")), track))
                .containsExactly("show.json:3:34: error: \"at\" of a cue: the time \"@" + written
                        + "\" names no cue and no marker; allowed: A, C");
        assertThat(Timelines.problems(show("\"markers\": \"song.txt\"", cue("\"at\": \"@c\"")), track))
                .singleElement()
                .satisfies(said -> assertThat(said).endsWith("did you mean \"C\"?"));
    }

    /** As for other names that differ by case only: one of the two is mostly a slip. */
    @Test
    void beatsInLargeLettersAreWarnedOfOnce() {
        String track = label(1, "bar") + "\n" + label(2, "Beat") + "\n" + label(3, "BEAT") + "\n" + label(4, "beat")
                + "\n" + label(5, "Bar") + "\n";
        assertThat(Timelines.problems(
                        show("\"beats\": \"song.txt\", \"markers\": \"song.txt\"", cue("\"at\": \"0s\"")), track))
                .containsExactly(
                        "song.txt:2:1: warning: the label \"Beat\" differs from \"beat\" only by its large letters, so it is"
                                + " a marker, and 1 more like it; label beats \"beat\", and those that start a bar \"bar\","
                                + " in small letters",
                        "song.txt:5:1: warning: the label \"Bar\" differs from \"bar\" only by its large letters, so it is"
                                + " a marker; label beats \"beat\", and those that start a bar \"bar\", in small letters");
    }

    /** Only a time that counts from the name would not know which is meant; see CueInstantsTest. */
    @Test
    void aMarkerMayHaveTheNameOfACueThatNothingCountsFrom() {
        assertThat(Timelines.problems(show("\"markers\": {\"drop\": \"1s\"}", cue("\"name\": \"drop\"")), ""))
                .isEmpty();
        assertThat(Timelines.problems(show("\"markers\": \"song.txt\"", cue("\"name\": \"drop\"")), label(1, "drop")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"b8, 8b", "b 8, 8b", "bar 2, 2 bars", "Bar 1, 1 bar", "s1.5, 1.5s", "ms250, 250ms"})
    void theNumberGoesBeforeItsUnit(String written, String meant) {
        assertThat(Timelines.problems(show("\"beats\": {\"tempo\": 120}", cue("\"for\": \"" + written + "\"")), ""))
                .containsExactly("show.json:3:35: error: \"for\" of a cue: the time \"" + written
                        + "\" has no readable number; the number goes first: \"" + meant + "\"");
    }

    @Test
    void tooManyPlaysAreRefusedBeforeTheyAreCounted() {
        String show = show(
                "\"beats\": \"song.txt\"",
                cue("\"at\": \"0s\", \"for\": \"1ms\", \"repeat\": {\"until\": \"14s\", \"every\": \"0.001b\"}"));
        assertThat(Timelines.problems(show, FASTER))
                .containsExactly(
                        "show.json:3:64: error: the cue would be played more than 10000 times; allowed: 1 to 10000");
    }
}
