package org.duskloom.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.locate.PicturesRefusedException;

/** What a file is that is handed over as a picture, by its first bytes; what is not read is told how to convert. */
enum PhotoFormat {
    JPEG("is a JPEG"),
    PNG("is a PNG"),
    HEIC("is a HEIC picture"),
    RAW("is the raw data of a camera"),
    FILM("is a film"),
    TEXT("is text or a table"),
    EMPTY("is empty"),
    /** By its name it is a picture. */
    UNREAD("is neither JPEG nor PNG"),
    OTHER("is neither JPEG nor PNG");

    private static final int HEAD = 32;

    private static final List<String> RAW_ENDINGS = List.of(
            ".arw", ".cr2", ".cr3", ".dng", ".nef", ".nrw", ".orf", ".pef", ".raf", ".raw", ".rw2", ".srw", ".x3f");

    private static final List<String> READ_ENDINGS = List.of(".jpg", ".jpeg", ".png");

    private static final List<String> UNREAD_ENDINGS =
            List.of(".avif", ".bmp", ".gif", ".jxl", ".tif", ".tiff", ".webp");

    private static final List<String> TEXT_ENDINGS = List.of(".csv", ".json", ".txt");

    private final String what;

    PhotoFormat(String what) {
        this.what = what;
    }

    /** Looks at the start of a file. */
    static PhotoFormat of(Path file) throws IOException {
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
        return ofOther(head, ending(file));
    }

    private static PhotoFormat ofOther(byte[] head, String ending) {
        if (begins(head, 4, "ftyphe") || begins(head, 4, "ftypmif1") || begins(head, 4, "ftypmsf1")) {
            return HEIC;
        }
        if (RAW_ENDINGS.contains(ending) || begins(head, 4, "ftypcrx") || begins(head, 0, "FUJIFILMCCD-RAW")) {
            return RAW;
        }
        if (begins(head, 4, "ftyp") || begins(head, 0, "\u001AE\u00DF\u00A3") || begins(head, 8, "AVI ")) {
            return FILM;
        }
        if (head.length == 0) {
            return EMPTY;
        }
        if (READ_ENDINGS.contains(ending) || UNREAD_ENDINGS.contains(ending)) {
            return UNREAD;
        }
        return TEXT_ENDINGS.contains(ending) ? TEXT : OTHER;
    }

    /** Whether it is a picture that is read; false if it is not there or cannot be read, too. */
    static boolean isPicture(Path file) {
        try {
            return Files.isRegularFile(file) && of(file).isRead();
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** Whether it is read. */
    boolean isRead() {
        return this == JPEG || this == PNG;
    }

    /** Whether nothing in it or in its name speaks of pictures. */
    boolean isNoPicture() {
        return this == TEXT || this == OTHER;
    }

    /** What it is, in words that follow the name of the file. */
    String what() {
        return what;
    }

    /** By which the JDK knows it. */
    String readerName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Refuses a file of this format. */
    PicturesRefusedException refusal(Path file) {
        String suffix = switch (this) {
            case HEIC, RAW -> "; JPEG and PNG are read";
            case FILM -> "; its pictures are read";
            case TEXT -> ", and no picture";
            default -> "";
        };
        return new PicturesRefusedException(file.toString(), what + suffix, hint(file));
    }

    private String hint(Path file) {
        String name = typed(file, file.getFileName().toString());
        return switch (this) {
            case HEIC ->
                "convert it and all of its kind: heif-convert -q 95 " + name + " " + typed(file, base(file) + ".jpg")
                        + "; on a Mac: sips -s format jpeg " + name + " --out " + typed(file, base(file) + ".jpg");
            case RAW ->
                "convert it and all of its kind, with the same settings: dcraw -c -W " + name + " | pnmtopng > "
                        + typed(file, base(file) + ".png");
            case FILM ->
                "take them out of it, into a folder of their own: mkdir film, then ffmpeg -i " + name
                        + " -fps_mode passthrough -q:v 2 film/%05d.jpg";
            case TEXT ->
                "the pictures come first, the display behind --display, and -o names the table to be written:"
                        + " duskloom locate photos -o measured.csv --display display.json";
            case EMPTY -> "copy it from the camera again";
            default ->
                READ_ENDINGS.contains(ending(file))
                        ? "copy it from the camera again"
                        : "convert it: ffmpeg -i " + name + " " + typed(file, base(file) + ".png")
                                + "; or leave it out if it is no picture of the run";
        };
    }

    /** How a file beside another one is typed in a command. */
    private static String typed(Path file, String name) {
        String path = file.resolveSibling(name).toString();
        return path.indexOf(' ') < 0 ? path : '"' + path + '"';
    }

    /** The name of a file without its ending. */
    static String base(Path file) {
        String name = file.getFileName().toString();
        return name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name;
    }

    private static String ending(Path file) {
        return file.getFileName().toString().substring(base(file).length()).toLowerCase(Locale.ROOT);
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
}
