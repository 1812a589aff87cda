package org.duskloom.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** What a film can be; the ending of its name says which. */
enum FilmKind {
    /** A page that plays the show. */
    PAGE(".html"),
    /** An animated PNG. */
    ANIMATION(".png"),
    /** Video for an encoder. */
    VIDEO(".y4m");

    private final String ending;

    FilmKind(String ending) {
        this.ending = ending;
    }

    /**
     * The kind of a file.
     *
     * @throws MisuseException if the ending is another one
     */
    static FilmKind of(Path output) {
        String name = output.toString().toLowerCase(Locale.ROOT);
        for (FilmKind kind : values()) {
            if (name.endsWith(kind.ending)) {
                return kind;
            }
        }
        // What is no file may have any name; programs that read from a pipe want video.
        boolean special = Files.exists(output) && !Files.isRegularFile(output) && !Files.isDirectory(output);
        if (OutputNames.isStandardOutput(output) || special) {
            return VIDEO;
        }
        throw new MisuseException("-o " + output + ": the ending says what is made: .html a page that plays the show, "
                + ".png an animated picture, .y4m video for an encoder");
    }
}
