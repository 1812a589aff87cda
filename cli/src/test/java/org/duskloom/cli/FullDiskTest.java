package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A disk that fills up while results are written. */
@EnabledOnOs(OS.LINUX)
class FullDiskTest {
    @TempDir
    private Path folder;

    /** full(4): "Writes to the /dev/full device fail with an ENOSPC error." It is written to and never replaced. */
    @Test
    void aFullDeviceIsTold() throws IOException {
        Path show = Garden.in(folder);
        Path out = Files.createDirectory(folder.resolve("out"));
        Path link = Links.symbolic(out.resolve("frames.rgb"), Path.of("/dev/full"));
        Ran ran = Ran.with("render", show, "-o", out).without(folder);
        assertThat(ran).isEqualTo(new Ran(1, "", "duskloom: cannot write out/frames.rgb: No space left on device\n"));
        assertThat(namesIn(out)).isEqualTo(1);
        // The folder is removed by JUnit, the device must not be.
        Files.delete(link);
    }

    /** A file system of 48 kB takes the frames, 4.8 kB, but not the pictures. Needs the right to mount one. */
    @Test
    void nothingIsLeftOnAFullDisk() throws Exception {
        Path show = Garden.in(folder);
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeThat(call("mount", "-t", "tmpfs", "-o", "size=48k", "tmpfs", disk.toString()))
                .as("mount")
                .isZero();
        try {
            Files.writeString(disk.resolve("frames.rgb"), "old");
            Ran ran = Ran.with("render", show, "-o", disk, "--strip", "--force").without(folder);
            assertThat(ran.err()).matches("duskloom: cannot write disk/\\w+\\.png: No space left on device\n");
            assertThat(ran.code()).isEqualTo(1);
            assertThat(disk.resolve("frames.rgb")).hasContent("old");
            assertThat(namesIn(disk)).isEqualTo(1);
        } finally {
            call("umount", disk.toString());
        }
    }

    private static int call(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor();
        } catch (IOException notThere) {
            return -1;
        }
    }

    private static long namesIn(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.count();
        }
    }
}
