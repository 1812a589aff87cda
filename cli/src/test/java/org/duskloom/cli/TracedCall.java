package org.duskloom.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A call of the system, as {@code strace -f -y} writes it down.
 *
 * @param thread who made it
 * @param name such as {@code rename}
 * @param text what it was asked and, if it has come to its end, what it answered
 */
record TracedCall(String thread, String name, String text) {
    private static final String UNFINISHED = " <unfinished ...>";
    private static final Pattern BEGUN = Pattern.compile("(\\d+) +([a-z0-9_]+)\\((.*)");
    private static final Pattern RESUMED = Pattern.compile("(\\d+) +<\\.\\.\\. [a-z0-9_]+ resumed>(.*)");
    private static final Pattern ANSWERED = Pattern.compile(".*\\) += [-0-9].*");
    private static final Pattern DESCRIPTOR = Pattern.compile("\\d+<([^>]*)>.*");
    private static final Pattern NAMED = Pattern.compile("(?:AT_FDCWD<[^>]*>, )?\"([^\"]*)\"(.*)");
    private static final Pattern SECOND = Pattern.compile(", (?:AT_FDCWD<[^>]*>, )?\"([^\"]*)\".*");

    /** Those of a log in the order in which they were begun. The last line may be written in part. */
    static List<TracedCall> in(List<String> log) {
        List<TracedCall> calls = new ArrayList<>();
        Map<String, Integer> open = new HashMap<>();
        for (String line : log) {
            Matcher begun = BEGUN.matcher(line);
            Matcher resumed = RESUMED.matcher(line);
            if (begun.matches()) {
                open.put(begun.group(1), calls.size());
                calls.add(new TracedCall(
                        begun.group(1), begun.group(2), begun.group(3).replace(UNFINISHED, "")));
            } else if (resumed.matches() && open.containsKey(resumed.group(1))) {
                calls.set(
                        open.get(resumed.group(1)),
                        calls.get(open.get(resumed.group(1))).with(resumed.group(2)));
            }
        }
        return calls;
    }

    /** The files that it is about, none, one or two. */
    List<String> paths() {
        Matcher named = NAMED.matcher(text);
        if (named.matches()) {
            Matcher second = SECOND.matcher(named.group(2));
            return second.matches() ? List.of(named.group(1), second.group(1)) : List.of(named.group(1));
        }
        Matcher descriptor = DESCRIPTOR.matcher(text);
        return descriptor.matches() ? List.of(descriptor.group(1)) : List.of();
    }

    /** Whether a file is opened with the right to change it. */
    boolean opensToWrite() {
        return name.equals("openat") && (text.contains("O_WRONLY") || text.contains("O_RDWR"));
    }

    boolean isAnswered() {
        return ANSWERED.matcher(text).matches();
    }

    /** Whether strace answered in place of the system. */
    boolean isStruck() {
        return text.endsWith("(INJECTED)");
    }

    private TracedCall with(String more) {
        return new TracedCall(thread, name, text + more);
    }
}
