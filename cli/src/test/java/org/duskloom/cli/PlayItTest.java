package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the handbook says of playing frames in other programs, line by line in a shell; lines whose program is missing
 * are left out.
 */
class PlayItTest {
    private static final String HEADING = "\n## Play it\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void copyDemosAndProgram() throws IOException {
        Project.copy("demos", folder);
        StringBuilder script = new StringBuilder("#!/bin/sh\nexec");
        ProgramProcess.of().command().forEach(word -> script.append(" '" + word.replace("'", "'\\''") + "'"));
        Files.createDirectory(folder.resolve("cli"));
        Path program = Files.writeString(folder.resolve("cli/duskloom"), script + " \"$@\"\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    @TestFactory
    Stream<DynamicTest> everyLineRuns() throws IOException {
        String handbook = Guide.of("demos/reference/handbook.md").text() + "\n## ";
        int start = handbook.indexOf(HEADING);
        assertThat(start).isPositive();
        String part = handbook.substring(start + 1, handbook.indexOf("\n## ", start + HEADING.length()));
        List<String> lines = new Guide("handbook.md", part).shellLines();
        assertThat(lines.stream().filter(line -> line.contains("ffmpeg "))).hasSize(2);
        assertThat(lines.stream().filter(line -> line.startsWith("python3 "))).hasSize(1);
        List<DynamicTest> tests = new ArrayList<>();
        for (String line : lines) {
            tests.add(DynamicTest.dynamicTest(line, () -> run(line)));
        }
        tests.add(DynamicTest.dynamicTest("the same frames", this::compareVideos));
        return tests.stream();
    }

    private void run(String line) throws Exception {
        if (line.contains("ffmpeg ")) {
            Installed.require("ffmpeg", "-version");
        }
        if (line.startsWith("python3 ")) {
            Installed.require("python3", "-c", "import numpy");
        }
        String said = shell(line);
        if (line.startsWith("python3 ")) {
            assertThat(said).startsWith("(3840, 1288, 3) ");
        }
        if (line.startsWith("cli/duskloom diff ")) {
            assertThat(said).contains(" are the same: 3840 frames, 1288 pixels");
        }
    }

    /** Read back, the first line of each picture is the frame: ffv1 loses nothing, and neighbours are copied. */
    private void compareVideos() throws Exception {
        Installed.require("ffmpeg", "-version");
        byte[] rendered = Files.readAllBytes(folder.resolve("build/play/frames.rgb"));
        for (String name : List.of("file", "pipe")) {
            shell("ffmpeg -v error -i build/play/" + name + ".mkv -frames:v 400 -vf crop=1288:1:0:0"
                    + " -f rawvideo -pix_fmt rgb24 -y build/play/again.rgb");
            byte[] again = Files.readAllBytes(folder.resolve("build/play/again.rgb"));
            assertThat(again).hasSize(400 * 1288 * 3);
            assertThat(Arrays.mismatch(again, Arrays.copyOf(rendered, again.length)))
                    .as(name)
                    .isEqualTo(-1);
        }
    }

    private String shell(String line) throws Exception {
        Path said = folder.resolve("said");
        Process process = new ProcessBuilder("sh", "-c", line)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(300, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(line + "\n" + Files.readString(said)).isZero();
        return Files.readString(said);
    }
}
