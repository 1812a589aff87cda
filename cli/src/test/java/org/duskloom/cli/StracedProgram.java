package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * The program in a JVM of its own, whose calls of the system strace looks at: all of them are written down, or some of
 * them fail, or the process is killed as it makes one.
 *
 * <p>A call is found by the file that it is about, so that none of the JVM's own is struck. Names of files that hold
 * the number and the start of the process are known all the same: a shell waits until it is told them, and becomes
 * strace and then the JVM, which leaves both as they are.
 */
final class StracedProgram {
    /** Signals are not delivered at the stops that {@code --seccomp-bpf} makes, so only errors may use it. */
    private static final String SHELL =
            "read -r path; " + "exec strace -D -f -s 0 -o \"$0\" -e \"trace=$1\" -e \"inject=$2\" -P \"$path\" \"$@\"";

    private static final List<String> FAST = List.of("strace", "-D", "-f", "--seccomp-bpf", "-y", "-s", "0", "-o");

    /** As few as there can be: without the JVM's file of counters, and with its first compiler alone. */
    private static final List<String> JVM = List.of("-XX:-UsePerfData", "-XX:TieredStopAtLevel=1");

    private final Path scratch;

    /** @param scratch a folder for logs, which no file of the program stands in */
    StracedProgram(Path scratch) {
        this.scratch = scratch;
    }

    /**
     * How runs ended.
     *
     * @param runs the code of each, and what it wrote to its streams
     * @param log what strace wrote
     */
    record Ended(List<Ran> runs, List<String> log) {
        /** Whether a call about that file was made to fail. Other calls are not written down. */
        boolean struck(String path) {
            return log.stream().anyMatch(line -> line.endsWith("(INJECTED)"))
                    && log.stream().anyMatch(line -> line.contains(path));
        }
    }

    /** Leaves the test out where strace is missing or may not look at a process. */
    static void require() {
        Installed.require("strace", "-D", "-f", "--seccomp-bpf", "-o", "/dev/null", "-e", "trace=write", "true");
    }

    /** Runs the program many times in one process, and writes down all calls that may change a disk. */
    Ended look(List<List<String>> lines) throws IOException, InterruptedException {
        return batch(List.of("-e", "trace=" + String.join(",", CallPoint.CHANGING)), lines);
    }

    /** The same with one kind of call that fails, at those files, each time. */
    Ended fail(String call, String error, List<String> paths, List<List<String>> lines)
            throws IOException, InterruptedException {
        List<String> options =
                new ArrayList<>(List.of("-e", "trace=" + call, "-e", "inject=" + call + ":error=" + error));
        paths.forEach(path -> options.addAll(List.of("-P", path)));
        return batch(options, lines);
    }

    /**
     * Strikes at one call of one run.
     *
     * @param what as strace has it behind {@code inject=CALL:}, such as {@code error=EIO}
     * @param host the machine, as it stands in names of files
     */
    Ended strike(CallPoint point, String what, String host, List<String> words)
            throws IOException, InterruptedException {
        String inject = point.call() + ":" + what + ":when=" + point.ordinal();
        ProcessBuilder program = ProgramProcess.of(JVM, words.toArray());
        program.command()
                .addAll(0, List.of("sh", "-c", SHELL.replace("$1", point.call()).replace("$2", inject)));
        program.command().add(3, file("log").toString());
        Process process = start(program);
        long start = process.toHandle().info().startInstant().orElseThrow().toEpochMilli();
        String owner = process.pid() + "." + start + "." + host;
        int code = ended(process, point.path().replace(CallPoint.OWNER, owner) + "\n");
        Ran ran = new Ran(code, Files.readString(file("said")), Files.readString(file("errors")));
        return new Ended(List.of(ran), log(process.pid()));
    }

    private Ended batch(List<String> options, List<List<String>> lines) throws IOException, InterruptedException {
        ProcessBuilder program = ProgramProcess.of(ProgramBatch.class, JVM);
        List<String> before = new ArrayList<>(FAST);
        before.add(file("log").toString());
        before.addAll(options);
        program.command().addAll(0, before);
        Process process = start(program);
        int code = ended(process, lines.stream().map(ProgramBatch::line).collect(Collectors.joining()));
        assertThat(code).as(Files.readString(file("errors"))).isZero();
        List<Ran> runs = ProgramBatch.read(Files.readString(file("said")));
        assertThat(runs).hasSameSizeAs(lines);
        return new Ended(runs, log(process.pid()));
    }

    private Process start(ProcessBuilder program) throws IOException {
        Files.deleteIfExists(file("log"));
        return program.redirectOutput(file("said").toFile())
                .redirectError(file("errors").toFile())
                .start();
    }

    private int ended(Process process, String told) throws IOException, InterruptedException {
        try (OutputStream in = process.getOutputStream()) {
            in.write(told.getBytes(StandardCharsets.UTF_8));
        }
        if (!process.waitFor(30, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new AssertionError("still running after half an hour: " + Files.readString(file("errors")));
        }
        return process.exitValue();
    }

    /** The log is whole when it says that the process has ended, which may be a moment later. */
    private List<String> log(long pid) throws IOException, InterruptedException {
        for (int tries = 0; tries < 1_000; tries++) {
            List<String> lines = Files.readString(file("log"), StandardCharsets.ISO_8859_1)
                    .lines()
                    .toList();
            if (lines.stream().anyMatch(line -> line.matches(pid + " +\\+\\+\\+ .*"))) {
                return lines;
            }
            Thread.sleep(10);
        }
        throw new AssertionError("strace did not say that process " + pid + " has ended");
    }

    private Path file(String name) {
        return scratch.resolve(name);
    }
}
