package org.duskloom.cli;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A call of the system by which the program changes what stands in a folder.
 *
 * @param call its name, such as {@code rename}
 * @param path the file that it is about, and of two the first; {@link #OWNER} stands for the process and its start
 * @param ordinal which of the calls of that name that a thread makes about that file, from 1
 */
record CallPoint(String call, String path, int ordinal) {
    /** What stands in names of files for who makes them: see the engine's {@code Workplace}. */
    static final String OWNER = "OWNER";

    /** Calls that write, sync, rename, link and remove; a call that a system lacks is never seen. */
    static final List<String> CHANGING = List.of(
            "openat",
            "write",
            "pwrite64",
            "writev",
            "ftruncate",
            "fsync",
            "fdatasync",
            "close",
            "chmod",
            "fchmod",
            "mkdir",
            "mkdirat",
            "rename",
            "renameat",
            "renameat2",
            "link",
            "linkat",
            "unlink",
            "unlinkat",
            "rmdir");

    private static final Pattern OWNED = Pattern.compile(OWNER + "\\.(\\d+)");
    private static final Pattern OWNERS = Pattern.compile("\\d+\\.\\d+\\.([\\w-]+)\\.(\\d+)");

    /** Those of one run in a folder, in the order of the log; {@code strace -f -y} wrote it, of several runs. */
    static List<CallPoint> in(List<String> log, String folder) {
        Set<CallPoint> found = new LinkedHashSet<>();
        Map<String, Integer> counts = new HashMap<>();
        Set<String> written = new LinkedHashSet<>();
        int first = Integer.MAX_VALUE;
        for (TracedCall call : TracedCall.in(log)) {
            if (call.opensToWrite()) {
                written.addAll(call.paths());
            }
            for (String path : call.paths()) {
                if (path.equals(folder) || path.startsWith(folder + "/")) {
                    // Strace counts the calls that only read, and those of which this is the second file.
                    int ordinal = counts.merge(call.thread() + call.name() + path, 1, Integer::sum);
                    first = Math.min(first, number(path));
                    if (path.equals(call.paths().get(0)) && changes(call, path, written)) {
                        found.add(new CallPoint(call.name(), path.substring(folder.length()), ordinal));
                    }
                }
            }
        }
        int group = first;
        return found.stream().map(point -> point.ofAnyProcess(group)).distinct().toList();
    }

    /** The call itself in the log of a run that was struck there, if it was made. */
    Optional<TracedCall> madeIn(List<TracedCall> calls) {
        Map<String, Integer> counts = new HashMap<>();
        return calls.stream()
                .filter(made -> made.name().equals(call) && made.paths().contains(path))
                .filter(made -> counts.merge(made.thread(), 1, Integer::sum) == ordinal)
                .findFirst();
    }

    /** The machine as it stands in the names of files. */
    static String host(List<String> log) {
        return log.stream()
                .map(Pattern.compile("/\\.part-\\d+\\.\\d+\\.([\\w-]+)\\.\\d+\"")::matcher)
                .filter(Matcher::find)
                .map(found -> found.group(1))
                .findFirst()
                .orElseThrow();
    }

    /** Whether the name of the file is the same in every run. */
    boolean hasFixedName() {
        return !path.contains(OWNER);
    }

    /** In a folder, as a run writes to it. */
    CallPoint in(Path folder) {
        return new CallPoint(call, folder + path, ordinal);
    }

    /** As a process makes it that has made so many groups of outputs before. */
    CallPoint by(String process, int groups) {
        String named =
                OWNED.matcher(path).replaceAll(owner -> process + "." + (Integer.parseInt(owner.group(1)) + groups));
        return new CallPoint(call, named, ordinal);
    }

    /** With the groups of outputs counted from 0, as the first run of a process counts them. */
    private CallPoint ofAnyProcess(int firstGroup) {
        String any =
                OWNERS.matcher(path).replaceAll(owner -> OWNER + "." + (Integer.parseInt(owner.group(2)) - firstGroup));
        return new CallPoint(call, any, ordinal);
    }

    private static int number(String path) {
        Matcher owner = OWNERS.matcher(path);
        return owner.find() ? Integer.parseInt(owner.group(2)) : Integer.MAX_VALUE;
    }

    /** What the system may answer to it, by the names of errno(3). */
    List<String> errors() {
        return switch (call) {
            case "openat", "mkdir", "mkdirat" -> List.of("ENOSPC", "EACCES");
            case "rename", "renameat", "renameat2" -> List.of("EIO", "EXDEV");
            case "link", "linkat" -> List.of("EPERM", "EMLINK");
            case "unlink", "unlinkat", "rmdir" -> List.of("EIO", "EACCES");
            case "chmod", "fchmod" -> List.of("EPERM");
            case "write", "pwrite64", "writev" -> List.of("ENOSPC", "EIO");
            default -> List.of("EIO");
        };
    }

    /** Not so a file that is opened to be read, and what becomes of that. */
    private static boolean changes(TracedCall call, String path, Set<String> written) {
        return switch (call.name()) {
            case "openat" -> call.opensToWrite();
            case "close" -> written.contains(path);
            default -> true;
        };
    }

    /** What the program tells of such an answer: the words of strerror(3), or its own. */
    static String wordsFor(String error) {
        return switch (error) {
            case "ENOSPC" -> "No space left on device";
            case "EACCES" -> "permission denied";
            case "EXDEV" -> "Invalid cross-device link";
            case "EFBIG" -> "File too large";
            case "EIO" -> "Input/output error";
            default -> "Operation not permitted";
        };
    }
}
