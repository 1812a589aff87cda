package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plays that are planned as one, against the same plays planned each by itself, as beside a scene they are. */
class PlannedPlaysTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\npond,1,0,0\npond,2,1,0\ngate,1,1,5\n");
    private static final String SCENES = "\"scenes\": {\"s\": {\"length\": \"1s\", \"layers\": []}}, ";

    private static TestShow show(String cue, String beside) {
        return TestShow.of(
                MAP,
                SCENES + "\"layers\": [{\"cues\": [{\"on\": [\"pond\", \"gate\"], \"effect\": \"clock\", " + cue + "}"
                        + beside + "]}]");
    }

    private static PlannedLayer even(String cue) {
        return show(cue, "").plan().layers().get(0);
    }

    private static PlannedLayer apart(String cue) {
        return show(cue, ", {\"scene\": \"s\"}").plan().layers().get(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"for\": \"1s\", \"repeat\": 10",
                "\"at\": \"3ms\", \"for\": \"8ms\", \"repeat\": 200",
                "\"at\": \"7f\", \"for\": \"1s\", \"repeat\": {\"until\": \"8s\", \"every\": \"333ms\"}",
                "\"for\": \"2s\", \"repeat\": {\"count\": 5, \"every\": \"900ms\"}, \"opacity\": {\"keys\": [[\"0s\", 0],"
                        + " [\"2s\", 1]]}, \"fade\": {\"in\": \"1s\", \"out\": \"100ms\"}, \"blend\": \"screen\"",
                "\"for\": \"2s\", \"repeat\": {\"until\": \"5s\", \"every\": \"500ms\"}, \"spread\": \"each\","
                        + " \"stagger\": \"300ms\", \"opacity\": 0.5",
            })
    void areThoseThatArePlannedOneByOne(String cue) {
        List<PlannedCue> one = even(cue).cues();
        List<PlannedCue> other = apart(cue).cues();
        assertThat(even(cue).items()).singleElement().isInstanceOf(PlannedPlays.class);
        assertThat(apart(cue).items()).hasSize(one.size()).hasOnlyElementsOfType(PlannedCue.class);
        assertThat(other).hasSameSizeAs(one);
        for (int i = 0; i < one.size(); i++) {
            assertSame(one.get(i), other.get(i));
        }
    }

    private static void assertSame(PlannedCue one, PlannedCue other) {
        assertThat(one.cue().at()).isEqualTo(other.cue().at());
        assertThat(one.cue().randomKey()).isEqualTo(other.cue().randomKey());
        assertThat(one.firstFrame()).isEqualTo(other.firstFrame());
        assertThat(one.endFrameExclusive()).isEqualTo(other.endFrameExclusive());
        assertThat(one.lengthSeconds()).isEqualTo(other.lengthSeconds());
        assertThat(one.fingerprint()).isEqualTo(other.fingerprint());
        assertThat(one.blend()).isEqualTo(other.blend());
        assertThat(one.members()).isEqualTo(other.members());
        assertThat(one.isOverlapping()).isEqualTo(other.isOverlapping());
        assertThat(one.groupCount() + other.groupCount()).isZero();
        assertThat(one.canvasCount()).isEqualTo(other.canvasCount());
        for (int canvas = 0; canvas < one.canvasCount(); canvas++) {
            PlannedCanvas own = one.canvas(canvas);
            PlannedCanvas wanted = other.canvas(canvas);
            assertThat(own.firstFrame()).isEqualTo(wanted.firstFrame());
            assertThat(own.startSeconds()).isEqualTo(wanted.startSeconds());
            for (long frame = one.firstFrame(); frame < one.endFrameExclusive(); frame++) {
                assertThat(own.secondsAt(frame)).isEqualTo(wanted.secondsAt(frame));
                assertThat(one.opacityAt(own, frame)).isEqualTo(other.opacityAt(wanted, frame));
            }
        }
    }

    /** In every frame those that are seen have brushes of their own, of as few as there must be. */
    @ParameterizedTest
    @CsvSource({"1s, 1s, 1", "1s, 400ms, 3", "1s, 500ms, 2", "100ms, 1s, 1", "1s, 50ms, 5"})
    void onlyThoseSeenAtOnceHaveBrushesOfTheirOwn(String lasts, String every, int most) {
        PlannedLayer layer =
                even("\"for\": \"" + lasts + "\", \"repeat\": {\"count\": 5, \"every\": \"" + every + "\"}");
        PlannedPlays plays = (PlannedPlays) layer.items().get(0);
        assertThat(plays.mostAtOnce()).isEqualTo(most);
        for (long frame = -1; frame < 400; frame++) {
            HashSet<Integer> brushes = new HashSet<>();
            int seen = 0;
            for (PlannedCue cue : layer.cues()) {
                if (cue.firstFrame() <= frame && frame < cue.endFrameExclusive()) {
                    seen++;
                    brushes.add(cue.canvas(0).brush());
                }
            }
            assertThat(brushes).hasSize(seen);
            assertThat(plays.begunBy(frame) - plays.endedBy(frame)).isEqualTo(seen);
        }
    }

    /** A brush that is free when the last play of a cue has ended is taken by the next cue that is alike. */
    @Test
    void cuesAlikeThatDoNotMeetShareBrushes() {
        String cue = "\"for\": \"1s\", \"repeat\": {\"count\": 4, \"every\": \"500ms\"}";
        String later = ", {\"on\": [\"pond\", \"gate\"], \"effect\": \"clock\", \"at\": \"%s\", \"for\": \"1s\"}";
        assertThat(show(cue, "").plan().brushCount()).isEqualTo(2);
        assertThat(show(cue, later.formatted("2500ms")).plan().brushCount()).isEqualTo(2);
        assertThat(show(cue, later.formatted("1900ms")).plan().brushCount()).isEqualTo(3);
    }

    /** A play is made anew each time that it is asked for. */
    @Test
    void aPlayIsEqualToItself() {
        String cue = "\"for\": \"1s\", \"repeat\": 3";
        List<PlannedCue> cues = even(cue).cues();
        assertThat(cues.get(1)).isEqualTo(cues.get(1)).hasSameHashCodeAs(cues.get(1));
        assertThat(cues.get(1))
                .isNotEqualTo(cues.get(2))
                .isNotEqualTo(even(cue).cues().get(1));
        assertThat(cues.indexOf(cues.get(2))).isEqualTo(2);
        assertThat(new HashSet<>(cues)).hasSize(3);
    }

    /** Where each play is another one: by its settings, by chance, or because something is to be said of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "for": "1s", "repeat": {"count": 3, "change": {"size": [1]}}            | probe
            "for": "1s", "repeat": 3                                                | rank
            "for": "1s", "repeat": 3, "opacity": {"keys": [["0s", 1], ["2s", 0]]}   | solid
            """)
    void othersArePlannedOneByOne(String cue, String effect) {
        TestShow show = TestShow.of(
                MAP, "\"layers\": [{\"cues\": [{\"on\": \"pond\", \"effect\": \"" + effect + "\", " + cue + "}]}]");
        TestShow with = effect.equals("probe") ? show.with(new Probe()) : show;
        assertThat(with.plan().layers().get(0).items()).hasSize(3).hasOnlyElementsOfType(PlannedCue.class);
    }

    /** What hits on beats, or is seen with them, hangs on where it is played. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"with\": {\"on\": \"beat\"}",
                "\"with\": {\"on\": \"dusk\"}, \"opacity\": {\"follow\": \"beat\", \"from\": 0, \"to\": 1}",
            })
    void thoseThatHearBeatsArePlannedOneByOne(String heard) {
        TestShow show = TestShow.of(
                MAP,
                "\"beats\": {\"tempo\": 120}, \"markers\": {\"dusk\": \"2s\"}, \"layers\": [{\"cues\": [{\"on\":"
                        + " \"pond\", \"effect\": \"bell\", \"for\": \"1s\", \"repeat\": 3, " + heard + "}]}]");
        assertThat(show.with(new Bell()).plan().layers().get(0).items())
                .hasSize(3)
                .hasOnlyElementsOfType(PlannedCue.class);
    }

    /** Plays of one second, of which the third is cut after half of it. */
    @Test
    void areOverWhereTheRepeatIsCut() {
        PlannedPlays plays = (PlannedPlays) even("\"for\": \"1s\", \"repeat\": {\"until\": \"2500ms\"}")
                .items()
                .get(0);
        assertThat(plays.endFrameExclusive()).isEqualTo(100);
        assertThat(List.of(plays.endedBy(79), plays.endedBy(99), plays.endedBy(100)))
                .containsExactly(1, 2, 3);
    }

    /** Of thousands of plays that no frame falls on it is told once how many, as if each were planned by itself. */
    @Test
    void saysOnceHowManyAreNeverSeen() {
        String cue = "\"at\": \"1ms\", \"for\": \"1ms\", \"repeat\": 9000";
        // A frame starts every 25 ms, and every 25th play begins with one.
        assertThat(neverSeen(show(cue, "")))
                .containsExactly("show.json:2:71: warning: 8640 plays of the cue are never seen: no frame falls between"
                        + " 0.001s and 0.002s, where the first of them is; frames are 0.025s apart");
        assertThat(neverSeen(show(cue, ", {\"scene\": \"s\"}"))).isEqualTo(neverSeen(show(cue, "")));
    }

    /** Of plays of 24 ms, 25 ms apart from the start on, each is seen; where they start later, the first may be not. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "at": "1ms", "for": "24ms", "repeat": {"count": 3, "every": "30ms"} | play 1 of the cue is never seen: no frame falls between 0.001s and 0.025s
            "at": "0s", "for": "24ms", "repeat": {"count": 3, "every": "51ms"}  | play 2 of the cue is never seen: no frame falls between 0.051s and 0.075s
            "at": "1ms", "for": "24ms"                                          | the cue is never seen: no frame falls between 0.001s and 0.025s
            """)
    void saysWhichOneIsNeverSeen(String cue, String told) {
        assertThat(neverSeen(show(cue, "")))
                .containsExactly("show.json:2:71: warning: " + told + "; frames are 0.025s apart");
        assertThat(neverSeen(show(cue, ", {\"scene\": \"s\"}"))).isEqualTo(neverSeen(show(cue, "")));
    }

    private static List<String> neverSeen(TestShow show) {
        return show.problems().stream()
                .filter(line -> line.contains("never seen"))
                .toList();
    }

    @Test
    void standAmongOtherCuesInTheOrderOfTheFile() {
        PlannedLayer layer = show(
                        "\"for\": \"1s\", \"repeat\": 3",
                        ", {\"on\": \"gate\", \"effect\": \"solid\"}, {\"on\": \"gate\", \"effect\": \"solid\", \"for\":"
                                + " \"2s\", \"repeat\": 2}")
                .plan()
                .layers()
                .get(0);
        assertThat(layer.items()).hasSize(3);
        assertThat(layer.cues())
                .extracting(cue -> cue.firstFrame() + ".." + cue.endFrameExclusive())
                .containsExactly("0..40", "40..80", "80..120", "0..400", "0..80", "80..160");
    }
}
