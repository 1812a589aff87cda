package org.duskloom.effects.kit;

import java.lang.ref.SoftReference;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps what was decoded from files while there is memory, since many cues and canvases use the same file. It is found
 * by the checksum of the file's bytes, so what is kept never differs from what would be decoded. Safe for use by
 * several threads.
 *
 * @param <T> what is decoded; immutable
 */
public final class FileShelf<T> {
    private final Map<String, SoftReference<T>> kept = new ConcurrentHashMap<>();

    /**
     * Decodes a file.
     *
     * @param <T> what is decoded
     * @param <E> what is thrown if it cannot be
     */
    @FunctionalInterface
    public interface Decoder<T, E extends Exception> {
        /** Decodes the bytes of a file. */
        T decode(byte[] bytes) throws E;
    }

    /** An empty shelf. */
    public FileShelf() {}

    /**
     * What is decoded from these bytes, now or earlier.
     *
     * @throws E if the decoder does; then nothing is kept
     */
    public <E extends Exception> T decoded(byte[] bytes, Decoder<T, E> decoder) throws E {
        String key = sha256Hex(bytes);
        SoftReference<T> reference = kept.get(key);
        T found = reference == null ? null : reference.get();
        if (found == null) {
            found = decoder.decode(bytes);
            kept.put(key, new SoftReference<>(found));
        }
        return found;
    }

    private static String sha256Hex(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
