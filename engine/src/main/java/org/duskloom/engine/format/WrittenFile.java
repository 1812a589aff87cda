package org.duskloom.engine.format;

import java.util.Objects;

/**
 * A file that belongs to finished frames.
 *
 * @param file its name as seen from the manifest; a folder of files ends with a slash
 * @param bytes how many bytes it has, or all files of the folder together
 */
public record WrittenFile(String file, long bytes) {
    public WrittenFile {
        Objects.requireNonNull(file, "file");
    }
}
