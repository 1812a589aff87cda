package org.duskloom.engine.show;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
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

    /** A file as it is now; its bytes are read once through. */
    static InputFile of(Path path, String shownName) throws IOException {
        try (InputStream file = Files.newInputStream(path);
                DigestInputStream bytes = new DigestInputStream(file, MessageDigest.getInstance("SHA-256"))) {
            bytes.transferTo(OutputStream.nullOutputStream());
            return new InputFile(
                    path,
                    shownName,
                    HexFormat.of().formatHex(bytes.getMessageDigest().digest()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
