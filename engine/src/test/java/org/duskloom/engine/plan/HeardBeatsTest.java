package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts beats that are not everywhere as long, worked out on paper; see {@link MusicFolder#SLOWING}. */
class HeardBeatsTest {
    private static final String KEYS = "\"with\": {\"size\": {\"keys\": [[\"0s\", 0], [\"1b\", 1]]}}";
    private static final String STAGGER =
            "\"on\": [\"pond\", \"gate\"], \"effect\": \"clock\", \"spread\": \"each\", \"stagger\": \"1b\"";

    @TempDir
    Path folder;

    private final Probe probe = new Probe();

    private List<PlannedCue> cues(String cues) {
        return new MusicFolder(folder).withBeats(MusicFolder.SLOWING).cues(cues, probe);
    }

    /** The cues of two plays of a scene that holds one, at the start and at 2 s. */
    private List<PlannedCue> playedTwice(String cue) {
        String plays = "\"beats\": \"beats.txt\", \"scenes\": {\"s\": {\"length\": \"3s\", \"layers\": [{\"cues\": ["
                + cue + "]}]}}, \"layers\": [{\"cues\": [{\"scene\": \"s\"}, {\"scene\": \"s\", \"at\": \"2s\"}]}]";
        Plan plan = new MusicFolder(folder).withBeats(MusicFolder.SLOWING).plan(plays, probe);
        return plan.layers().get(0).cues();
    }

    /** A beat is half a second at the start, and a second from 2 s on. */
    @Test
    void keysOfEveryPlayCountFromItsStart() {
        playedTwice("{\"on\": \"pond\", \"effect\": \"probe\", " + KEYS + "}");
        assertThat(probe.settings).hasSize(2);
        NumberTrack first = probe.settings.get(0).value(Probe.SIZE);
        NumberTrack second = probe.settings.get(1).value(Probe.SIZE);
        assertThat(List.of(first.at(0.25), first.at(0.5))).containsExactly(0.5, 1.0);
        assertThat(List.of(second.at(0.25), second.at(0.5), second.at(1))).containsExactly(0.25, 0.5, 1.0);
    }

    @Test
    void membersOfEveryPlayStartByItsBeats() {
        assertThat(starts(playedTwice("{" + STAGGER + "}"))).containsExactly("0 20", "80 120");
        assertThat(starts(cues("{" + STAGGER + "}, {\"at\": \"2s\", " + STAGGER + "}")))
                .containsExactly("0 20", "80 120");
    }

    private static List<String> starts(List<PlannedCue> cues) {
        return cues.stream()
                .map(cue -> cue.canvas(0).firstFrame() + " " + cue.canvas(1).firstFrame())
                .toList();
    }

    /** From 1 s on there is a beat a second, and two make a bar. */
    @ParameterizedTest
    @CsvSource({"40, 0, 0", "60, 0.5, 0.25", "80, 1, 0.5", "120, 2, 1", "200, 4, 2", "280, 6, 3"})
    void cuesCountFromTheirStart(long frame, double beats, double bars) {
        PlannedCue cue = cues("{\"at\": \"1s\", \"on\": \"pond\", \"effect\": \"clock\"}")
                .get(0);
        CueTime time = cue.canvas(0).at(frame, cue.lengthSeconds(), new CueTime());
        assertThat(time.startSeconds()).isEqualTo(1);
        assertThat(time.beats()).isCloseTo(beats, within(1e-12));
        assertThat(time.bars()).isCloseTo(bars, within(1e-12));
    }

    /** 1 on the beats at 1, 2 and 3 s and falling in between, wherever the cue starts. */
    @Test
    void opacityFollowsTheBeatsOfTheShow() {
        PlannedCue cue = cues("{\"at\": \"1500ms\", \"on\": \"pond\", \"effect\": \"clock\","
                        + " \"opacity\": {\"follow\": \"beat\", \"from\": 0.2, \"to\": 1}}")
                .get(0);
        assertThat(cue.opacityAt(cue.canvas(0), 60)).isCloseTo(0.6f, within(1e-6f));
        assertThat(cue.opacityAt(cue.canvas(0), 70)).isCloseTo(0.4f, within(1e-6f));
        assertThat(cue.opacityAt(cue.canvas(0), 80)).isEqualTo(1);
    }

    @Test
    void periodsKeepWhatTheyCount() {
        cues("{\"on\": \"pond\", \"effect\": \"probe\", \"with\": {\"every\": \"2b\", \"rise\": \"1.5 bars\"}}");
        Settings settings = probe.settings.get(0);
        assertThat(settings.value(Probe.EVERY)).contains(new Period(2, Period.Unit.BEATS));
        assertThat(settings.value(Probe.RISE)).contains(new Period(1.5, Period.Unit.BARS));
    }

    /**
     * A cue from 2 to 4.5 s, which lies over the beats at 2, 3 and 4 s, with that at 5 s behind it: its frames hang on
     * those and on the bars that they are in, on no others, and not on how many there are before.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 bar, 0.5 beat, 1 bar, 2 bar, 3 beat, 4 bar, 5 beat, 6 bar, 7 beat              | true
            0 bar, 0.5 beat, 1 bar, 2 bar, 3 beat, 4 bar, 5 beat, 6 bar, 7.5 beat            | true
            0 bar, 0.2 beat, 0.4 beat, 0.6 beat, 1 bar, 2 bar, 3 beat, 4 bar, 5 beat, 6 bar  | true
            0 bar, 0.5 beat, 1 bar, 1.5 beat, 2 bar, 3 beat, 4 bar, 5 beat, 6 bar            | true
            0 bar, 0.5 beat, 1 bar, 2 bar, 3.1 beat, 4 bar, 5 beat, 6 bar, 7 beat            | false
            0 bar, 0.5 beat, 1 bar, 2 bar, 3 beat, 4 bar, 5.1 beat, 6 bar, 7 beat            | false
            0 bar, 0.5 beat, 1 bar, 2 bar, 3 bar, 4 bar, 5 beat, 6 bar, 7 beat               | false
            0 bar, 0.5 beat, 1 bar, 2 bar, 3 beat, 4 beat, 5 beat, 6 bar, 7 beat             | false
            0 beat, 0.5 beat, 1 beat, 2 beat, 3 beat, 4 beat, 5 beat, 6 beat, 7 beat         | false
            """)
    void beatsUnderACueDecideItsFrames(String beats, boolean same) {
        String usual = "0 bar, 0.5 beat, 1 bar, 2 bar, 3 beat, 4 bar, 5 beat, 6 bar, 7 beat";
        assertThat(print(beats, "\"2b\"").equals(print(usual, "\"2b\""))).isEqualTo(same);
        assertThat(print(beats, "\"2s\"")).as("what counts none").isEqualTo(print(usual, "\"2s\""));
    }

    private String print(String beats, String every) {
        return new MusicFolder(folder)
                .withBeats(beats)
                .cues(
                        "{\"name\": \"glow\", \"at\": \"2s\", \"until\": \"4500ms\", \"on\": \"pond\", \"effect\": \"probe\","
                                + " \"with\": {\"every\": " + every + "}}",
                        probe)
                .get(0)
                .fingerprint()
                .hex();
    }
}
