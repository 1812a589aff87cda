package org.duskloom.engine.plan;

import java.nio.file.Path;
import java.util.Objects;

/**
 * A file that a show was read from.
 *
 * @param path where it is
 * @param shownName its name as the user would type it
 * @param sha256Hex the SHA-256 of its bytes
 */
public record InputFile(Path path, String shownName, String sha256Hex) {
    public InputFile {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(shownName, "shownName");
        Objects.requireNonNull(sha256Hex, "sha256Hex");
    }
}
