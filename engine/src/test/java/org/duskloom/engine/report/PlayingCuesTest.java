package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which cues are to be looked at when something is wrong in a frame, of a show at 10 frames a second. */
class PlayingCuesTest {
    @TempDir
    private Path folder;

    private PlayingCues playing;

    @BeforeEach
    void compile() throws IOException {
        Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\nlamp,1,0,0\nrake,1,1,0\n");
        Path file = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 10, "length": "6s", "layers": [
                  {"name": "ground", "cues": [
                    {"name": "dusk", "at": "1s", "for": "2s", "on": "lamp", "effect": "solid"},
                    {"at": "3s", "for": "500ms", "on": "lamp", "effect": "solid", "repeat": {"count": 2}},
                    {"name": "dusk", "at": "2s", "for": "1s", "on": "rake", "effect": "clock"}]},
                  {"name": "spark", "cues": [
                    {"name": "bees", "at": "2500ms", "until": "6s", "on": "*", "effect": "solid"}]}]}
                """);
        Problems problems = new Problems();
        Show show = ShowReader.read(file, problems).orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
        playing = new PlayingCues(
                show.timeline(),
                PlanCompiler.compile(show, PlainEffects.all(), problems)
                        .orElseThrow(() -> new AssertionError(Inputs.shown(problems))));
    }

    /** The frame at 1 s is in a cue from 1 s on, the frame at 3 s in none that ends there. */
    @Test
    void aCuePlaysFromItsFirstFrameToTheOneBeforeItsEnd() {
        assertThat(playing.at(9)).isEmpty();
        assertThat(playing.at(10)).containsExactly("dusk");
        assertThat(playing.at(24)).containsExactly("dusk");
        assertThat(playing.at(59)).containsExactly("bees");
        assertThat(playing.at(60)).isEmpty();
        assertThat(playing.at(-1)).isEmpty();
    }

    @Test
    void theBottomLayerIsNamedFirst() {
        assertThat(playing.at(25)).containsExactly("dusk", "bees");
    }

    /** Of two cues that are called the same, and of plays of one, a reader wants the name once. */
    @Test
    void aNameIsToldOnce() {
        assertThat(playing.at(20)).containsExactly("dusk");
        for (long frame = 30; frame < 40; frame++) {
            assertThat(playing.at(frame)).containsExactly("ground: solid", "bees");
        }
        assertThat(playing.at(40)).containsExactly("bees");
    }
}
