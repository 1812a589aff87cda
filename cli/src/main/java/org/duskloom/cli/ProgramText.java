package org.duskloom.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that stand beside the program's classes. */
final class ProgramText {
    private ProgramText() {}

    /** @param path as seen from this class */
    static String of(String path) {
        try (InputStream in = ProgramText.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException("cannot read " + path, fault);
        }
    }
}
