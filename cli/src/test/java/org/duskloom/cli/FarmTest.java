package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code demos/farm} has for GNU make and Slurm, used on the garden: the whole is the same as of one run. */
@Timeout(600)
class FarmTest {
    private static final String KINDS = "rgb,npy,ports,packets";
    private static final int SHARDS = 4;

    @TempDir
    private static Path shared;

    @TempDir
    private Path folder;

    private Path program;

    @BeforeAll
    static void renderTheWhole() {
        Ran ran = Ran.with(
                "render", Project.file("demos/garden/show.json"), "-o", shared.resolve("whole"), "--as", KINDS);
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    /** The program under test, as a command of one word. */
    @BeforeEach
    void writeProgram() throws IOException {
        StringBuilder script = new StringBuilder("#!/bin/sh\nexec");
        ProgramProcess.of().command().forEach(word -> script.append(" '" + word.replace("'", "'\\''") + "'"));
        program = Files.writeString(folder.resolve("duskloom"), script + " \"$@\"\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    @Test
    void makeRendersShardsAndJoinsThem() throws Exception {
        Installed.require("make", "--version");
        make("whole");
        assertIsTheWhole();
        assertThat(make("whole")).doesNotContain(" render ").doesNotContain(" join ");
        make("clean");
        assertThat(folder.resolve("out/shard-1-of-4")).doesNotExist();
        assertIsTheWhole();
    }

    /** A shard that is there is not rendered again; one that is lost is. */
    @Test
    void makeGoesOnWhereItWas() throws Exception {
        Installed.require("make", "--version");
        Path second = folder.resolve("out/shard-2-of-4/frames.json");
        make(second.toString());
        assertThat(folder.resolve("out/shard-1-of-4")).doesNotExist();
        FileTime made = Files.getLastModifiedTime(second);
        assertThat(make("whole")).contains("--shard 1/4").doesNotContain("--shard 2/4");
        assertThat(Files.getLastModifiedTime(second)).isEqualTo(made);
        assertIsTheWhole();
        Files.delete(folder.resolve("out/shard-3-of-4/frames.json"));
        assertThat(make("whole")).contains("--shard 3/4").contains(" join ").doesNotContain("--shard 1/4");
        assertIsTheWhole();
    }

    /** One node on this machine, its daemon killed while tasks run, and started again. */
    @Test
    void slurmLosesNothingWithAKilledDaemon() throws Exception {
        Installed.requireRoot("slurmd");
        for (String name : List.of("munged", "slurmctld", "slurmd", "sbatch", "squeue", "sinfo")) {
            // Most of them ask for a cluster before they tell their version.
            Installed.require("sh", "-c", "command -v " + name);
        }
        try (SlurmNode node = new SlurmNode(folder.resolve("slurm"))) {
            List<String> first = new ArrayList<>(List.of("sbatch", "--parsable", "--array=1-" + SHARDS));
            first.addAll(List.of("--output=" + folder.resolve("said-%a"), "demos/farm/shard.sbatch"));
            String job = node.run(environment(), first).strip();
            node.run(
                    environment(),
                    List.of(
                            "sbatch",
                            "--parsable",
                            "--dependency=afterok:" + job,
                            "--output=" + folder.resolve("said-join"),
                            "demos/farm/join.sbatch"));
            node.waitUntil("a task runs", () -> !node.jobs("R").isBlank());
            node.killDaemon();
            Thread.sleep(2000);
            node.startDaemon();
            node.waitUntil("all jobs are done", () -> node.jobs("all").isBlank());
            assertThat(folder.resolve("said-join")).exists();
        }
        assertIsTheWhole();
    }

    @ParameterizedTest
    @ValueSource(strings = {"shard.sbatch", "join.sbatch"})
    void scriptsAreSoundForTheShell(String script) throws Exception {
        Installed.require("sh", "-c", ":");
        run(new ProcessBuilder("sh", "-n", "demos/farm/" + script));
    }

    /** Of the commands by hand, those that call the program. */
    @Test
    void commandsByHandWork() throws IOException {
        int commands = 0;
        for (String line : Guide.of("demos/farm/README.md").shellLines()) {
            if (line.startsWith("cli/duskloom ")) {
                List<Object> words = new ArrayList<>();
                for (String word : line.substring("cli/duskloom ".length()).split(" ")) {
                    boolean isOutput = word.startsWith("build/");
                    words.add(isOutput ? folder.resolve(word) : word.startsWith("demos/") ? Project.file(word) : word);
                }
                Ran ran = Ran.with(words.toArray());
                assertThat(ran.code()).as("%s%n%s", line, ran.err()).isZero();
                commands++;
            }
        }
        assertThat(commands).isEqualTo(3);
        assertThat(folder.resolve("build/farm/by-hand/frames.rgb"))
                .hasSameBinaryContentAs(shared.resolve("whole/frames.rgb"));
    }

    private Map<String, String> environment() {
        return Map.of(
                "OUT", folder.resolve("out").toString(),
                "SHARDS", Integer.toString(SHARDS),
                "KINDS", KINDS,
                "DUSKLOOM", program.toString());
    }

    private String make(String target) throws Exception {
        ProcessBuilder make = new ProcessBuilder("make", "-f", "demos/farm/Makefile", "-j", "2", target);
        make.environment().putAll(environment());
        return run(make);
    }

    private String run(ProcessBuilder command) throws Exception {
        Path said = folder.resolve("said-" + System.nanoTime());
        Process process = command.directory(Project.ROOT.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(300, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(said)).isZero();
        return Files.readString(said);
    }

    private void assertIsTheWhole() throws IOException {
        for (String file :
                List.of("frames.json", "frames.rgb", "frames.npy", "patch.csv", "packets.pcap", "ports/pond.bin")) {
            assertThat(folder.resolve("out/whole").resolve(file))
                    .hasSameBinaryContentAs(shared.resolve("whole").resolve(file));
        }
    }
}
