package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenes of many cues that are played many times: a show may have 200,000 plays of both together. */
class SceneCompilerTest {
    @TempDir
    Path folder;

    private final Problems problems = new Problems();
    private int planned;

    /** Plays a scene so many times that holds a cue a thousand times; counts the cues that come to be planned. */
    private void play(int times, String more) {
        Show show = new MusicFolder(folder)
                .show("\"scenes\": {\"s\": {\"length\": \"2s\", \"layers\": [{\"cues\": [{\"on\": \"pond\", \"effect\":"
                        + " \"solid\", \"for\": \"1ms\", \"repeat\": 1000}]}]}}, \"layers\": [{\"cues\": [{\"scene\": \"s\","
                        + " \"repeat\": {\"count\": " + times + ", \"every\": \"10ms\"}}" + more + "]}]");
        List<Runnable> warnings = new ArrayList<>();
        SettingsReader settings = new SettingsReader(show, Optional.empty(), new FirstFaults(problems), problems);
        new SceneCompiler(show, problems, this::count, plays -> Optional.empty(), settings, warnings)
                .cues(show.timeline().layers().get(0));
    }

    private Optional<CueDraft> count(CuePlay play) {
        planned++;
        return Optional.empty();
    }

    /** Each play of the scene counts, and each of a cue in it: 199 times 1001, then the scene and 800 cues. */
    @Test
    void playsAreCountedUpToTheLimit() {
        play(210, "");
        assertThat(planned).isEqualTo(199 * 1000 + 800);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("the scenes of the show play more than 200000 cues");
    }

    /** What stands in the show itself counts nothing. */
    @Test
    void cuesOfTheShowAreNoPlays() {
        play(199, ", {\"on\": \"pond\", \"effect\": \"solid\", \"for\": \"1ms\", \"repeat\": 1000}");
        assertThat(planned).isEqualTo(200 * 1000);
        assertThat(Inputs.shown(problems)).isEmpty();
    }
}
