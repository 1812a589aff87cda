package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A run that is stopped by a signal, in a process of its own. */
@EnabledOnOs(OS.LINUX)
class StagedFilesTest {
    @TempDir
    private Path folder;

    /** signal(7): SIGTERM is 15; the JVM runs its shutdown hooks and ends with 128 + 15. */
    @Test
    void aTerminatedRunLeavesWhatWasFinalAndNothingElse() throws Exception {
        Files.writeString(folder.resolve("half.txt"), "old");
        Process run = startAndWaitUntilWriting();
        assertThat(namesIn(folder)).hasSize(4);
        run.destroy();
        assertThat(run.waitFor()).isEqualTo(143);
        assertThat(namesIn(folder)).containsExactly("done.txt", "half.txt");
        assertThat(folder.resolve("done.txt")).hasContent("new");
        assertThat(folder.resolve("half.txt")).hasContent("old");
    }

    /** SIGKILL cannot be caught: parts may stay, but what has a final name is whole. */
    @Test
    void aKilledRunLeavesFinalNamesWhole() throws Exception {
        Files.writeString(folder.resolve("half.txt"), "old");
        Process run = startAndWaitUntilWriting();
        run.destroyForcibly();
        assertThat(run.waitFor()).isEqualTo(137);
        assertThat(folder.resolve("done.txt")).hasContent("new");
        assertThat(folder.resolve("half.txt")).hasContent("old");
        assertThat(folder.resolve("made/for/it.txt")).doesNotExist();
    }

    private Process startAndWaitUntilWriting() throws IOException, URISyntaxException {
        String classPath = place(StagedFile.class) + File.pathSeparator + place(StoppedRun.class);
        Process run = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classPath,
                        StoppedRun.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        BufferedReader said = new BufferedReader(new InputStreamReader(run.getInputStream(), StandardCharsets.UTF_8));
        assertThat(said.readLine()).isEqualTo("writing");
        return run;
    }

    private static Path place(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }
}
