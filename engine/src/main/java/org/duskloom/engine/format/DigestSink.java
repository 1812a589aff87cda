package org.duskloom.engine.format;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;

/** Only reads: the SHA-256 of the bytes of all frames, one after the other. */
final class DigestSink implements FrameSink {
    private final MessageDigest digest = sha256();
    private String sha256Hex = "";

    @Override
    public void take(FrameBatch frames) {
        digest.update(frames.rgb(), 0, frames.bytes());
    }

    @Override
    public void finish() {
        sha256Hex = HexFormat.of().formatHex(digest.digest());
    }

    /**
     * The digest in lower-case hexadecimal.
     *
     * @throws IllegalStateException before {@link #finish}
     */
    String sha256Hex() {
        if (sha256Hex.isEmpty()) {
            throw new IllegalStateException("frames are still coming");
        }
        return sha256Hex;
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
