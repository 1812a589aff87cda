package org.duskloom.effects.image;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Finds out what kind of picture a file is, and decodes it. */
final class ImageFile {
    private static final String SAVE_AS = "save it as PNG; an animation as GIF or animated PNG";

    /** What the first bytes of other kinds of pictures are, from their start or from a place behind it. */
    private static final Map<String, String> NOT_READ = new LinkedHashMap<>();

    private static final int SNIFFED_BYTES = 64;

    static {
        NOT_READ.put("RIFF....WEBP", "WebP");
        NOT_READ.put("BM", "BMP");
        NOT_READ.put("II\\*\0", "TIFF");
        NOT_READ.put("MM\0\\*", "TIFF");
        NOT_READ.put("....ftyp", "HEIC or AVIF picture, or a video");
        NOT_READ.put("8BPS", "layered picture (PSD)");
        NOT_READ.put("\\s*<", "SVG or other text with tags");
    }

    private ImageFile() {}

    /** The bytes of a file. */
    static byte[] bytes(Path file) throws ImageException {
        try {
            if (Files.size(file) > (long) ImageLimits.MOST_FILE_MEGABYTES << 20) {
                throw new ImageException(
                        "is larger than " + ImageLimits.MOST_FILE_MEGABYTES + " MB", "make it smaller");
            }
            return Files.readAllBytes(file);
        } catch (AccessDeniedException e) {
            throw new ImageException("cannot be read: there is no right to", "");
        } catch (IOException e) {
            throw new ImageException("cannot be read: " + e.getMessage(), "");
        }
    }

    /** Decodes a file. */
    static Film film(byte[] file) throws ImageException {
        if (PngChunks.isPng(file)) {
            return PngFile.read(file);
        }
        if (GifFile.isGif(file)) {
            return GifFile.read(file);
        }
        if (JpegFile.isJpeg(file)) {
            return JpegFile.read(file);
        }
        throw file.length == 0
                ? new ImageException("is empty", "")
                : new ImageException("is " + kind(file) + ", not a PNG, GIF or JPEG", SAVE_AS);
    }

    private static String kind(byte[] file) {
        String start = new String(file, 0, Math.min(SNIFFED_BYTES, file.length), StandardCharsets.ISO_8859_1);
        return NOT_READ.entrySet().stream()
                .filter(kind -> start.matches("(?s)" + kind.getKey() + ".*"))
                .map(kind -> "a " + kind.getValue())
                .findFirst()
                .orElse("no picture that is known here");
    }
}
