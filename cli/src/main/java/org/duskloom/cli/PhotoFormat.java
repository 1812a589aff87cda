package org.duskloom.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.locate.PicturesRefusedException;

/** What a picture is written as, by its first bytes; whatever else is handed over is told how to convert. */
enum PhotoFormat {
    JPEG,
    PNG;

    private static final int HEAD = 32;

    /**
     * A small film or a second picture may stand behind the end mark, and ends with one of its own or in other bytes.
     */
    private static final int TAIL = 16_000_000;

    private static final List<String> RAW = List.of(
            ".arw", ".cr2", ".cr3", ".dng", ".nef", ".nrw", ".orf", ".pef", ".raf", ".raw", ".rw2", ".srw", ".x3f");

    /** By which the JDK knows it. */
    String readerName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Looks at the start of a file.
     *
     * @throws PicturesRefusedException if it is neither
     */
    static PhotoFormat of(Path file) throws IOException, PicturesRefusedException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEAD);
        }
        if (begins(head, 0, "\u00FF\u00D8\u00FF")) {
            return JPEG;
        }
        if (begins(head, 0, "\u0089PNG\r\n\u001A\n")) {
            return PNG;
        }
        throw refused(file, head);
    }

    private static PicturesRefusedException refused(Path file, byte[] head) {
        String name = file.getFileName().toString();
        String base = name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name;
        String ending = name.substring(base.length()).toLowerCase(Locale.ROOT);
        if (begins(head, 4, "ftyphe") || begins(head, 4, "ftypmif1") || begins(head, 4, "ftypmsf1")) {
            return refused(
                    file,
                    "is a HEIC picture; JPEG and PNG are read",
                    "convert it, each into another file: heif-convert -q 95 " + name + " " + base
                            + ".jpg; on a Mac: sips -s" + " format jpeg " + name + " --out " + base + ".jpg");
        }
        if (RAW.contains(ending) || begins(head, 4, "ftypcrx") || begins(head, 0, "FUJIFILMCCD-RAW")) {
            return refused(
                    file,
                    "is the raw data of a camera; JPEG and PNG are read",
                    "convert it, all with the same settings: dcraw -c -W " + name + " | pnmtopng > " + base + ".png");
        }
        if (begins(head, 4, "ftyp") || begins(head, 0, "\u001AE\u00DF\u00A3") || begins(head, 8, "AVI ")) {
            return refused(
                    file,
                    "is a film; its pictures are read",
                    "take them out of it: ffmpeg -i " + name + " -fps_mode passthrough -q:v 2 " + base + "-%05d.jpg");
        }
        if (head.length == 0) {
            return refused(file, "is empty", "copy it from the camera again");
        }
        return refused(
                file,
                "is neither JPEG nor PNG",
                "convert it: ffmpeg -i " + name + " " + base + ".png; or leave it out if it is no picture of the run");
    }

    private static PicturesRefusedException refused(Path file, String message, String hint) {
        return new PicturesRefusedException(file.toString(), message, hint);
    }

    private static boolean begins(byte[] head, int at, String signs) {
        byte[] wanted = signs.getBytes(StandardCharsets.ISO_8859_1);
        if (head.length < at + wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if (head[at + i] != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    /** Whether a JPEG has its end mark: a decoder fills up with grey what is missing. */
    static boolean hasJpegEnd(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            int length = (int) Math.min(TAIL, in.length());
            byte[] tail = new byte[length];
            in.seek(in.length() - length);
            in.readFully(tail);
            for (int at = length - 2; at >= 0; at--) {
                if ((tail[at] & 0xFF) == 0xFF && (tail[at + 1] & 0xFF) == 0xD9) {
                    return true;
                }
            }
            return false;
        }
    }
}
