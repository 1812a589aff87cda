package org.duskloom.engine.format;

import java.util.List;
import java.util.Objects;

/**
 * What frames were made by and from.
 *
 * @param version of the program
 * @param inputs the files that were read, in the order of reading
 */
public record Origin(String version, List<Input> inputs) {

    /**
     * One file that was read.
     *
     * @param file its name as seen from the first one's folder
     * @param sha256Hex SHA-256 of its bytes, in lower-case hexadecimal
     */
    public record Input(String file, String sha256Hex) {
        public Input {
            Objects.requireNonNull(file, "file");
            Objects.requireNonNull(sha256Hex, "sha256Hex");
        }
    }

    public Origin {
        Objects.requireNonNull(version, "version");
        inputs = List.copyOf(inputs);
    }
}
