package org.duskloom.cli;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A call of the system by which the program changes what stands in a folder.
 *
 * @param call its name, such as {@code rename}
 * @param path the file that it is about, and of two the first; {@link #OWNER} stands for the process and its start
 * @param ordinal which of the calls of that name that a thread makes on that file, from 1
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

    private static final Pattern LINE = Pattern.compile("(\\d+) +([a-z0-9]+)\\((.*)");
    private static final Pattern DESCRIPTOR = Pattern.compile("\\d+<([^>]*)>.*");
    private static final Pattern NAMED = Pattern.compile("(?:AT_FDCWD<[^>]*>, )?\"([^\"]*)\"(.*)");
    private static final Pattern OWNERS = Pattern.compile("\\d+\\.\\d+\\.([\\w-]+)\\.(\\d+)");

    /** Those of one run in a folder, in the order of the log; {@code strace -f -y} wrote it, of several runs. */
    static List<CallPoint> in(List<String> log, String folder) {
        Set<CallPoint> found = new LinkedHashSet<>();
        Map<String, Integer> counts = new HashMap<>();
        Set<String> written = new LinkedHashSet<>();
        int first = Integer.MAX_VALUE;
        for (String line : log) {
            Matcher parts = LINE.matcher(line);
            if (parts.matches()) {
                String path = path(parts.group(2), parts.group(3), written);
                if (path.equals(folder) || path.startsWith(folder + "/")) {
                    int ordinal = counts.merge(parts.group(1) + parts.group(2) + path, 1, Integer::sum);
                    first = Math.min(first, number(path));
                    found.add(new CallPoint(parts.group(2), path.substring(folder.length()), ordinal));
                }
            }
        }
        int group = first;
        return found.stream().map(point -> point.ofAnyProcess(group)).distinct().toList();
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

    /** Empty for a call that changes nothing: a file that is opened to be read, and what becomes of that. */
    private static String path(String call, String arguments, Set<String> written) {
        Matcher named = NAMED.matcher(arguments);
        if (named.matches()) {
            boolean opens = call.equals("openat");
            if (opens && !named.group(2).contains("O_WRONLY") && !named.group(2).contains("O_RDWR")) {
                return "";
            }
            if (opens) {
                written.add(named.group(1));
            }
            return named.group(1);
        }
        Matcher descriptor = DESCRIPTOR.matcher(arguments);
        if (!descriptor.matches() || call.equals("close") && !written.contains(descriptor.group(1))) {
            return "";
        }
        return descriptor.group(1);
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
