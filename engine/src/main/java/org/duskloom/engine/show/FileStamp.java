package org.duskloom.engine.show;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * What the system tells of a file without reading it; through links, of what they lead to. A file whose stamp is
 * another was written, replaced, or has come or gone. A file whose stamp is the same is mostly the same: see {@link
 * #isFreshAt}.
 *
 * @param isReadable whether it is there and may be read
 * @param modified when it was last written; the epoch for a file that is not there
 * @param bytes its length; -1 for a file that is not there
 * @param key which file it is, where the system tells them apart: another one may have taken its name; else empty
 */
public record FileStamp(boolean isReadable, FileTime modified, long bytes, String key) {
    private static final FileStamp MISSING = new FileStamp(false, FileTime.from(Instant.EPOCH), -1, "");

    /** FAT has steps of two seconds for the time of writing (common practice, no source); nothing is coarser. */
    private static final Duration COARSEST_CLOCK = Duration.ofSeconds(2);

    public FileStamp {
        Objects.requireNonNull(modified, "modified");
        Objects.requireNonNull(key, "key");
    }

    /** The stamp that a file has now. */
    public static FileStamp of(Path path) {
        try {
            BasicFileAttributes found = Files.readAttributes(path, BasicFileAttributes.class);
            return new FileStamp(
                    Files.isReadable(path),
                    found.lastModifiedTime(),
                    found.size(),
                    found.fileKey() == null ? "" : found.fileKey().toString());
        } catch (IOException missing) {
            return MISSING;
        }
    }

    /**
     * Whether the file was written so shortly before an instant that it may be written once more, at the same length,
     * without getting another stamp.
     */
    public boolean isFreshAt(Instant instant) {
        return !modified.toInstant().plus(COARSEST_CLOCK).isBefore(instant);
    }
}
