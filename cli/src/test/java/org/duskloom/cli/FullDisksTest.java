package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Disks that become full while each kind of output replaces an older one, and a standard output that leads to one. */
@Tag("faults")
@EnabledOnOs(OS.LINUX)
class FullDisksTest {
    private static final int PAGE = 4096;

    @TempDir
    static Path folder;

    private static TwoVersions versions;

    @BeforeAll
    static void versions() throws IOException {
        versions = TwoVersions.in(folder.resolve("in"));
    }

    /** A file system in memory has room for the old outputs, and for a part of the new ones. */
    @Test
    void aFullDiskLosesNothing() throws Exception {
        assumeThat(mount(64)).as("the right to mount a file system").isTrue();
        unmount();
        List<String> faults = new ArrayList<>();
        int full = 0;
        for (WritingCase writing : WritingCase.ALL) {
            FaultBench bench = new FaultBench(writing, versions, folder);
            int old = pages(bench.older());
            int all = old + pages(bench.newer());
            for (int tenths = 0; tenths <= 13; tenths += tenths < 9 ? 3 : 1) {
                full += fill(bench, old + 2 + (all - old) * tenths / 10, faults) ? 1 : 0;
            }
        }
        System.err.println(full + " runs met a full disk");
        assertThat(faults).isEmpty();
        assertThat(full).isGreaterThan(2 * WritingCase.ALL.size());
    }

    /** Whether it was too small. */
    private static boolean fill(FaultBench bench, int pages, List<String> faults) throws Exception {
        assertThat(mount(pages)).isTrue();
        try {
            Path out = FaultBench.out(disk());
            WritingCase.put(bench.older(), out);
            Ran ran = Ran.with(bench.words(disk()).toArray());
            // No next run: there is still no room for it.
            bench.aftermath(true).ofError(ran, out, "(No space left on device|it needs .*, and .* are free; .*)");
            assertThat(WritingCase.leftovers(out)).isEmpty();
            return ran.code() != ExitCode.DONE;
        } catch (AssertionError fault) {
            faults.add(bench + " in " + pages + " pages: " + fault.getMessage());
            return true;
        } finally {
            unmount();
        }
    }

    /** setrlimit(2): no file may become larger than RLIMIT_FSIZE; a write takes as much as goes, the next one fails. */
    @Test
    void aLimitOfTheSizeOfFilesLosesNothing() throws Exception {
        List<FaultBench> benches = new ArrayList<>();
        for (WritingCase writing : WritingCase.ALL) {
            benches.add(new FaultBench(writing, versions, folder));
        }
        List<String> faults = Workers.faultsOf(benches, FullDisksTest::limit);
        assertThat(faults).isEmpty();
    }

    /** To less than half of the largest file, in the blocks of 512 bytes that POSIX has for {@code ulimit -f}. */
    private static void limit(FaultBench bench) throws IOException, InterruptedException {
        int largest =
                bench.newer().values().stream().mapToInt(String::length).max().orElseThrow();
        Path place = bench.place(true);
        Ran ran = shell("ulimit -f " + Math.max(1, largest / 1100) + "; exec \"$@\"", place, bench.words(place));
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.FAILED);
        bench.aftermath(true).afterError(ran, FaultBench.out(place), "File too large");
    }

    /** full(4): "Writes to the /dev/full device fail with an ENOSPC error." */
    @Test
    void aFullStandardOutputIsTold() throws Exception {
        List<String> faults = Workers.faultsOf(WritingCase.STREAMS, writing -> {
            Path place = Files.createTempDirectory(folder, "stream");
            Ran ran = shell("exec \"$@\" >/dev/full", place, writing.words(versions.newer(), place));
            assertThat(ran.err()).endsWith(": No space left on device\n").contains("duskloom: cannot write ");
            assertThat(ran.code()).isEqualTo(ExitCode.FAILED);
        });
        assertThat(faults).isEmpty();
    }

    /** A reader that has seen enough: nothing is told, and the code is what a shell has for SIGPIPE. */
    @Test
    void aReaderThatLeavesIsNoFault() throws Exception {
        List<String> faults = Workers.faultsOf(WritingCase.STREAMS, writing -> {
            Path place = Files.createTempDirectory(folder, "stream");
            // The reader is gone before Java has begun to write.
            Ran ran = shell(
                    "{ sleep 1; \"$@\"; echo $? >\"$0\"; } | true", place, writing.words(versions.newer(), place));
            assertThat(Files.readString(place.resolve("code"))).isEqualTo(ExitCode.PIPE_CLOSED + "\n");
            assertThat(ran.err()).doesNotContain("duskloom: ");
        });
        assertThat(faults).isEmpty();
    }

    private static Ran shell(String script, Path place, List<String> words) throws IOException, InterruptedException {
        ProcessBuilder program = ProgramProcess.of(List.of("-XX:TieredStopAtLevel=1"), words.toArray());
        program.command()
                .addAll(0, List.of("sh", "-c", script, place.resolve("code").toString()));
        int code = program.redirectOutput(place.resolve("said").toFile())
                .redirectError(place.resolve("errors").toFile())
                .start()
                .waitFor();
        return new Ran(code, Files.readString(place.resolve("said")), Files.readString(place.resolve("errors")));
    }

    private static int pages(Map<String, String> files) {
        return files.values().stream()
                .mapToInt(bytes -> bytes.length() / PAGE + 2)
                .sum();
    }

    private static Path disk() throws IOException {
        return Files.createDirectories(folder.resolve("disk"));
    }

    private static boolean mount(int pages) throws IOException, InterruptedException {
        return call("mount", "-t", "tmpfs", "-o", "size=" + 4 * pages + "k", "tmpfs", disk().toString());
    }

    private static void unmount() throws IOException, InterruptedException {
        assertThat(call("umount", disk().toString())).isTrue();
    }

    private static boolean call(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        }
    }
}
