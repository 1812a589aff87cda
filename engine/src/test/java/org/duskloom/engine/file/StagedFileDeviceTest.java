package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.duskloom.engine.file.Folders.namesIn;
import static org.duskloom.engine.file.Folders.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.CompletableFuture;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Devices and pipes are written to, never replaced. The devices are those of full(4) and null(4) in the Linux manual.
 */
@EnabledOnOs(OS.LINUX)
class StagedFileDeviceTest {
    private static final Path FULL = Path.of("/dev/full");
    private static final Path NULL = Path.of("/dev/null");

    @TempDir
    private Path folder;

    /** full(4): "Writes to the /dev/full device fail with an ENOSPC error." */
    @Test
    void tellsOfAFullDevice() throws IOException {
        assumeDevice(FULL);
        try (StagedFile file = StagedFile.open(FULL, IfExists.REFUSE)) {
            write(file, "dusk");
            assertThatThrownBy(file::finish)
                    .isInstanceOf(IOException.class)
                    .hasMessage("cannot write /dev/full: No space left on device");
        }
        assertThat(isDevice(FULL)).isTrue();
    }

    @Test
    void tellsOfAFullDeviceWhileWriting() throws IOException {
        assumeDevice(FULL);
        try (StagedFile file = StagedFile.open(FULL, IfExists.REFUSE)) {
            assertThatThrownBy(() -> file.write(new byte[1 << 20], 0, 1 << 20))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("No space left");
        }
    }

    @Test
    void writesIntoADeviceWithoutReplacingItEvenThroughALink() throws IOException {
        assumeDevice(NULL);
        Path link = Links.symbolic(folder.resolve("frames.rgb"), NULL);
        try (StagedFile file = StagedFile.open(link, IfExists.REPLACE)) {
            write(file, "dusk");
            file.finish();
        }
        assertThat(link).isSymbolicLink();
        assertThat(isDevice(NULL)).isTrue();
        assertThat(namesIn(folder)).containsExactly("frames.rgb");
    }

    @Test
    void takesADeviceIntoAGroup() throws IOException {
        assumeDevice(NULL);
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            StagedFile device = group.open(NULL);
            StagedFile plain = group.open(folder.resolve("frames.json"));
            write(device, "dusk");
            device.finish();
            plain.finish();
            group.publish();
        }
        assertThat(isDevice(NULL)).isTrue();
        assertThat(folder.resolve("frames.json")).exists();
    }

    @Test
    void writesIntoAPipe() throws Exception {
        Path pipe = folder.resolve("pipe");
        assumeThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        CompletableFuture<String> reader = CompletableFuture.supplyAsync(() -> readAll(pipe));
        try (StagedFile file = StagedFile.open(pipe, IfExists.REFUSE)) {
            write(file, "dusk");
            file.finish();
        }
        assertThat(reader.get()).isEqualTo("dusk");
        assertThat(isDevice(pipe)).isTrue();
        assertThat(namesIn(folder)).containsExactly("pipe");
    }

    /** Where it is none, a test must not write into the system's folder. */
    private static void assumeDevice(Path path) throws IOException {
        assumeThat(path).exists();
        assumeThat(isDevice(path)).isTrue();
    }

    private static boolean isDevice(Path path) throws IOException {
        return Files.readAttributes(path, BasicFileAttributes.class).isOther();
    }

    private static String readAll(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException fault) {
            throw new IllegalStateException(fault);
        }
    }
}
