package org.duskloom.engine.digest;

import java.util.Objects;

/**
 * A SHA-256 (FIPS 180-4) of a value in its canonical form. Two values with the same fingerprint are the same value, as
 * far as anybody will ever see.
 *
 * @param hex 64 lower-case hexadecimal digits
 */
public record Fingerprint(String hex) {
    public Fingerprint {
        Objects.requireNonNull(hex, "hex");
    }

    @Override
    public String toString() {
        return hex;
    }
}
