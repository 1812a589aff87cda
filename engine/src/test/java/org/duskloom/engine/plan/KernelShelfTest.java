package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is made anew where a show is compiled again and again. */
class KernelShelfTest {
    private static final String AT_MARKER = "\"effect\": \"bell\", \"with\": {\"on\": \"one\"}";
    private static final String AT_OTHER = "\"effect\": \"bell\", \"with\": {\"on\": \"two\"}";

    @TempDir
    Path folder;

    private final KernelShelf shelf = new KernelShelf();
    private final Bell bell = new Bell();

    private void compile(String cue, Effect effect) {
        MusicFolder music = new MusicFolder(folder).withBeats(MusicFolder.SLOWING);
        String fields = "\"beats\": \"beats.txt\", \"markers\": {\"one\": \"1s\", \"two\": \"2s\"},"
                + " \"layers\": [{\"cues\": [{\"on\": \"pond\", " + cue + "}]}]";
        PlanCompiler.compile(music.show(fields), MusicFolder.with(effect), shelf, new Problems());
    }

    /** Wherever it stands, and however much of it is seen. */
    @Test
    void whatIsTheSameIsMadeOnce() {
        compile(AT_MARKER, bell);
        compile(AT_MARKER + ", \"at\": \"3s\", \"opacity\": 0.5", bell);
        compile(AT_MARKER, bell);
        assertThat(bell.hits).hasSize(1);
        compile(AT_OTHER, bell);
        assertThat(bell.hits).hasSize(2);
    }

    /** A shelf holds what the last two compilations asked for. */
    @Test
    void whatNobodyAskedForIsLetGo() {
        compile(AT_MARKER, bell);
        compile(AT_OTHER, bell);
        compile(AT_OTHER, bell);
        assertThat(bell.hits).hasSize(2);
        compile(AT_MARKER, bell);
        assertThat(bell.hits).hasSize(3);
    }

    /** Beats may be others the next time, though the settings say the same. */
    @Test
    void whatHearsBeatsIsMadeAnew() {
        compile("\"effect\": \"bell\", \"with\": {\"on\": \"beat\"}", bell);
        compile("\"effect\": \"bell\", \"with\": {\"on\": \"beat\"}", bell);
        assertThat(bell.hits).hasSize(2);
    }

    /** What an effect refuses it is asked again, since that may hang on what is in files. */
    @Test
    void whatWasRefusedIsAskedAgain() {
        compile("\"effect\": \"bell\", \"with\": {\"cracked\": true}", bell);
        compile("\"effect\": \"bell\", \"with\": {\"cracked\": true}", bell);
        assertThat(bell.hits).hasSize(2);
    }

    /** A part of the same name may have other pixels the next time. */
    @Test
    void whatLooksForPartsIsMadeAnew() {
        Probe probe = new Probe();
        compile("\"effect\": \"probe\", \"with\": {\"part\": \"rim\"}", probe);
        compile("\"effect\": \"probe\", \"with\": {\"part\": \"rim\"}", probe);
        assertThat(probe.canvases).hasSize(2);
    }
}
