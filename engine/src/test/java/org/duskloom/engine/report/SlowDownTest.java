package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.ShowReader;
import org.duskloom.engine.timeline.Cue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What to write in a cue that flashes too often: times and shares worked out on paper. */
class SlowDownTest {
    @TempDir
    private Path folder;

    /**
     * A time gets longer and is rounded up, to a whole number of frames where it is one; passes are rounded
     * down.
     */
    @ParameterizedTest
    @CsvSource({
        "'\"every\": \"2s\"', 7, every, 2s, 2.34s",
        "'\"every\": \"150ms\"', 10, every, 150ms, 250ms",
        "'\"every\": \".5s\"', 12, every, .5s, 1s",
        "'\"every\": \"3f\"', 7, every, 3f, 4f",
        "'\"every\": \"1b\"', 8, every, 1b, 1.34b",
        "'\"passes\": 10', 10, passes, 10, 6",
        "'\"passes\": 3', 7, passes, 3, 2.57",
        "'\"palette\": \"gold\", \"every\": \"1s\"', 12, every, 1s, 2s"
    })
    void saysWhatToWrite(String with, int changes, String setting, String written, String better) throws IOException {
        SlowDown slow = SlowDown.of("glow", cue(with), changes / 6.0);

        assertThat(slow).isEqualTo(new SlowDown("glow", Optional.of(setting), written, better));
    }

    @Test
    void saysNothingOfWhatIsNotWritten() throws IOException {
        assertThat(SlowDown.of("glow", cue("\"palette\": \"gold\""), 2))
                .isEqualTo(new SlowDown("glow", Optional.empty(), "", ""));
    }

    /** Ten changes in a second where six are allowed: 5/3 of 0.2 s, rounded up. */
    @Test
    void saysHowFarPlaysMustBeApart() {
        assertThat(SlowDown.ofRepeat("glow", 0.2, 10 / 6.0))
                .isEqualTo(new SlowDown("glow", Optional.of("repeat"), "0.2s", "0.334s"));
        assertThat(SlowDown.ofRepeat("glow", 0.15, 12 / 6.0).better()).isEqualTo("0.3s");
    }

    private Cue cue(String with) throws IOException {
        Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\nlamp,1,0,0\n");
        Path file = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "9s", "tempo": 120, "layers": [{"cues": [
                  {"on": "lamp", "effect": "sweep", "with": {%s}}]}]}
                """.formatted(with));
        Problems problems = new Problems();
        return ShowReader.read(file, problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)))
                .timeline()
                .layers()
                .get(0)
                .cues()
                .get(0);
    }
}
