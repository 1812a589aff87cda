package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    /** The first lines that it reads are the files that strace heeds, up to an empty one; none stand for all. */
    private static final String SHELL = """
            while read -r path && [ -n "$path" ]; do set -- -P "$path" "$@"; done
            exec strace -D -f --seccomp-bpf -y -s 0 -o "$0" "$@"
            """;

    /** With {@code --seccomp-bpf} strace halts all calls of a thread until one that it heeds: each begins with this. */
    static final String FIRST_OF_A_THREAD = ",set_robust_list";

    /** As few calls as there can be: without the JVM's file of counters, and with its first compiler alone. */
    private static final List<String> JVM = List.of("-XX:-UsePerfData", "-XX:TieredStopAtLevel=1");

    /** For all runs of a process to come to their calls. */
    private static final int HELD_SECONDS = 1_200;

    private final Path scratch;
    private final SharedClasses classes;

    /** @param scratch a folder for logs, which no file of the program stands in */
    StracedProgram(Path scratch, SharedClasses classes) {
        this.scratch = scratch;
        this.classes = classes;
    }

    /**
     * How runs ended.
     *
     * @param runs the code of each, and what it wrote to its streams
     * @param log what strace wrote
     */
    record Ended(List<Ran> runs, List<String> log) {}

    /** A run and the call of it that is struck. */
    record Target(CallPoint point, List<String> words) {}

    /** Leaves the test out where strace is missing or may not look at a process. */
    static void require() {
        Installed.require("strace", "-D", "-f", "--seccomp-bpf", "-o", "/dev/null", "-e", "trace=write", "true");
    }

    /** Runs the program many times in one process, and writes down all calls that may change a disk. */
    Ended look(List<List<String>> lines) throws IOException, InterruptedException {
        Process process = start(ProgramProcess.of(ProgramBatch.class, JVM), CallPoint.CHANGING, List.of());
        return batch(process, "\n", lines);
    }

    /**
     * Runs the program many times in one process, of which the calls fail. All have the same name and ordinal: first
     * ones fail each time, later ones once.
     *
     * @param error by its name, such as {@code EIO}
     * @return with what strace answered, of each run and in its order; nothing where the call was not struck alone
     */
    List<Optional<Ran>> fail(List<Target> targets, String error, String host) throws IOException, InterruptedException {
        CallPoint any = targets.get(0).point();
        String again = targets.size() == 1 ? "" : "+" + any.ordinal();
        String when = any.ordinal() == 1 ? "" : ":when=" + any.ordinal() + again;
        Process process = start(
                ProgramProcess.of(ProgramBatch.class, JVM),
                List.of(any.call()),
                List.of("-e", "inject=" + any.call() + ":error=" + error + when));
        List<CallPoint> points = points(targets, owner(process, host), 1);
        Ended ended = batch(
                process, paths(points), targets.stream().map(Target::words).toList());
        List<TracedCall> calls = TracedCall.in(ended.log());
        List<Optional<Ran>> runs = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            boolean struck = isStruck(points.get(i), calls);
            runs.add(struck ? Optional.of(ended.runs().get(i)) : Optional.empty());
        }
        return runs;
    }

    private static boolean isStruck(CallPoint point, List<TracedCall> calls) {
        long strikes = calls.stream()
                .filter(call -> call.isStruck() && call.paths().contains(point.path()))
                .count();
        boolean here = point.madeIn(calls).filter(TracedCall::isStruck).isPresent();
        return here && (strikes == 1 || point.ordinal() == 1);
    }

    /**
     * Kills the program as it makes a call. Runs share a process: each is held up at its call before the next one
     * begins, and the end of the process is the end of all of them. All calls have the same name and ordinal.
     *
     * @return of each run in its order how it ended; nothing where it did not come to its call
     */
    List<Optional<Ran>> kill(List<Target> targets, String host) throws IOException, InterruptedException {
        CallPoint any = targets.get(0).point();
        Process process = start(
                ProgramProcess.of(ProgramBatch.class, JVM, ProgramBatch.AT_ONCE),
                List.of(any.call()),
                List.of("-e", "inject=" + any.call() + ":delay_enter=" + HELD_SECONDS + "s:when=" + any.ordinal()));
        List<CallPoint> points = points(targets, owner(process, host), 0);
        List<Boolean> held;
        try (OutputStream in = process.getOutputStream()) {
            tell(in, paths(points));
            held = hold(targets, points, in);
            killWithTracer(process);
        }
        Ran ran = new Ran(process.waitFor(), "", Files.readString(file("errors")));
        List<TracedCall> calls = TracedCall.in(logged());
        List<Optional<Ran>> runs = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            boolean killed =
                    held.get(i) && !points.get(i).madeIn(calls).orElseThrow().isAnswered();
            runs.add(killed ? Optional.of(ran) : Optional.empty());
        }
        return runs;
    }

    private List<Boolean> hold(List<Target> targets, List<CallPoint> points, OutputStream in)
            throws IOException, InterruptedException {
        List<Boolean> held = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            int ended = (int) held.stream().filter(each -> !each).count();
            tell(in, ProgramBatch.line(targets.get(i).words()));
            held.add(isHeld(points.get(i), ended));
        }
        return held;
    }

    /** Waits until the call is made, or the run has ended without it, or has got stuck. */
    private boolean isHeld(CallPoint point, int endedBefore) throws IOException, InterruptedException {
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(HELD_SECONDS / 10);
        while (System.nanoTime() < deadline) {
            if (point.madeIn(TracedCall.in(logged())).isPresent()) {
                return true;
            }
            if (Files.readAllLines(file("said")).size() > endedBefore) {
                return false;
            }
            Thread.sleep(2);
        }
        return false;
    }

    /** Strace does not get over the end of a call that it holds up; without it the call would be let go. */
    private static void killWithTracer(Process process) throws IOException {
        long tracer = Files.readAllLines(Path.of("/proc/" + process.pid() + "/status")).stream()
                .filter(line -> line.startsWith("TracerPid:"))
                .mapToLong(line ->
                        Long.parseLong(line.substring("TracerPid:".length()).strip()))
                .filter(pid -> pid > 0)
                .findFirst()
                .orElseThrow();
        process.destroyForcibly();
        ProcessHandle.of(tracer).ifPresent(ProcessHandle::destroyForcibly);
    }

    private Ended batch(Process process, String told, List<List<String>> lines)
            throws IOException, InterruptedException {
        try (OutputStream in = process.getOutputStream()) {
            tell(in, told + lines.stream().map(ProgramBatch::line).collect(Collectors.joining()));
        }
        if (!process.waitFor(30, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new AssertionError("still running after half an hour: " + Files.readString(file("errors")));
        }
        assertThat(process.exitValue()).as(Files.readString(file("errors"))).isZero();
        List<Ran> runs = ProgramBatch.read(Files.readString(file("said")));
        assertThat(runs).hasSameSizeAs(lines);
        return new Ended(runs, log(process.pid()));
    }

    /** As it stands in names of files. The process has it already when it is but the shell. */
    private static String owner(Process process, String host) {
        long start = process.toHandle().info().startInstant().orElseThrow().toEpochMilli();
        return process.pid() + "." + start + "." + host;
    }

    /** As the process makes them, whose groups of outputs are counted on by so many in each run. */
    private static List<CallPoint> points(List<Target> targets, String owner, int groups) {
        List<CallPoint> points = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            points.add(targets.get(i).point().by(owner, i * groups));
        }
        return points;
    }

    private static String paths(List<CallPoint> points) {
        return points.stream().map(point -> point.path() + "\n").distinct().collect(Collectors.joining()) + "\n";
    }

    private Process start(ProcessBuilder program, List<String> calls, List<String> options) throws IOException {
        Files.deleteIfExists(file("log"));
        List<String> before =
                new ArrayList<>(List.of("sh", "-c", SHELL, file("log").toString()));
        before.addAll(List.of("-e", "trace=" + String.join(",", calls) + FIRST_OF_A_THREAD));
        before.addAll(options);
        classes.of(program).command().addAll(0, before);
        return program.redirectOutput(file("said").toFile())
                .redirectError(file("errors").toFile())
                .start();
    }

    private static void tell(OutputStream in, String lines) throws IOException {
        in.write(lines.getBytes(StandardCharsets.UTF_8));
        in.flush();
    }

    /** The log is whole when it says that the process has ended, which may be a moment later. */
    private List<String> log(long pid) throws IOException, InterruptedException {
        for (int tries = 0; tries < 3_000; tries++) {
            List<String> lines = logged();
            if (lines.stream().anyMatch(line -> line.matches(pid + " +\\+\\+\\+ .*"))) {
                return lines;
            }
            Thread.sleep(10);
        }
        throw new AssertionError("strace did not say that process " + pid + " has ended");
    }

    private List<String> logged() throws IOException {
        return Files.exists(file("log"))
                ? Files.readString(file("log"), StandardCharsets.ISO_8859_1)
                        .lines()
                        .toList()
                : List.of();
    }

    private Path file(String name) {
        return scratch.resolve(name);
    }
}
