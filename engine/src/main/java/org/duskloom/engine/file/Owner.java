package org.duskloom.engine.file;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Who is making an output: one group of files of one process. A number of a process is given again after its end, so
 * the time at which it began belongs to it.
 *
 * @param process the number of the process, 0 for nobody
 * @param startMillis when it began, in milliseconds since 1970, 0 where the system does not tell
 * @param host the machine, by letters that a file name may have
 * @param number the group, counted within the process
 */
record Owner(long process, long startMillis, String host, long number) {
    private static final Pattern WORD = Pattern.compile("(\\d{1,18})\\.(\\d{1,18})\\.([\\w-]{1,40})\\.(\\d{1,18})");
    private static final Path HOST_NAME = Path.of("/etc/hostname");

    /** Systems reckon the start from their clock, which may be set in the meantime by a little. */
    private static final long SLACK_MILLIS = 2_000;

    /** The process that runs this. */
    static Owner current() {
        return Current.OWNER;
    }

    /** Looked up once, when it is needed. */
    private static final class Current {
        private static final Owner OWNER = of(ProcessHandle.current());

        private static Owner of(ProcessHandle self) {
            return new Owner(self.pid(), startMillis(self), hostName(), 0);
        }
    }

    static Optional<Owner> parse(String word) {
        Matcher parts = WORD.matcher(word);
        if (!parts.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Owner(
                Long.parseLong(parts.group(1)),
                Long.parseLong(parts.group(2)),
                parts.group(3),
                Long.parseLong(parts.group(4))));
    }

    /** As it stands in the name of a file. */
    String word() {
        return process + "." + startMillis + "." + host + "." + number;
    }

    Owner withNumber(long group) {
        return new Owner(process, startMillis, host, group);
    }

    /** In place of an owner that gave up. */
    Owner nobody() {
        return new Owner(0, 0, host, number);
    }

    boolean isOnHostOf(Owner other) {
        return host.equals(other.host);
    }

    boolean isOfProcessOf(Owner other) {
        return process == other.process && startMillis == other.startMillis && isOnHostOf(other);
    }

    /** Whether it may still be at work. Of other machines nothing is known, so theirs may. */
    boolean mayRun() {
        if (process == 0) {
            return false;
        }
        if (!host.equals(hostName())) {
            return true;
        }
        Optional<ProcessHandle> found = ProcessHandle.of(process).filter(ProcessHandle::isAlive);
        return found.isPresent() && mayHaveBegunThen(startMillis(found.get()));
    }

    private boolean mayHaveBegunThen(long otherMillis) {
        return startMillis == 0 || otherMillis == 0 || Math.abs(startMillis - otherMillis) <= SLACK_MILLIS;
    }

    private static long startMillis(ProcessHandle process) {
        return process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
    }

    private static String hostName() {
        return HostName.WORD;
    }

    /** Looked up once, when it is needed. */
    private static final class HostName {
        private static final String WORD = word(find());

        private static String find() {
            try {
                return Files.isReadable(HOST_NAME)
                        ? Files.readString(HOST_NAME).strip()
                        : InetAddress.getLocalHost().getHostName();
            } catch (IOException nameless) {
                return "";
            }
        }

        private static String word(String name) {
            String plain = name.replaceAll("[^A-Za-z0-9-]", "_");
            return plain.isEmpty() ? "here" : plain.substring(0, Math.min(40, plain.length()));
        }
    }
}
