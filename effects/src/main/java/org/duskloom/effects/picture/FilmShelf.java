package org.duskloom.effects.picture;

import java.lang.ref.SoftReference;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps decoded films while there is memory, since many cues and canvases show the same file. They are found by the
 * checksum of the file's bytes, so what is kept never differs from what would be decoded.
 */
final class FilmShelf {
    private final Map<String, SoftReference<Film>> films = new ConcurrentHashMap<>();

    /** The film of a file as it is now. */
    Film film(Path file) throws PictureException {
        byte[] bytes = PictureFile.bytes(file);
        String key = sha256Hex(bytes);
        SoftReference<Film> kept = films.get(key);
        Film film = kept == null ? null : kept.get();
        if (film == null) {
            film = PictureFile.film(bytes);
            films.put(key, new SoftReference<>(film));
        }
        return film;
    }

    private static String sha256Hex(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
