package org.duskloom.effects;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small animation, for effects that need a file. */
final class AnimationFile {
    private static final Path PATH = write();

    private AnimationFile() {}

    /** An animated PNG of 8 by 6 pixels, opaque, translucent and transparent ones, with three images a second. */
    static Path path() {
        return PATH;
    }

    private static Path write() {
        PngBuilder.Frame[] frames = new PngBuilder.Frame[3];
        for (int frame = 0; frame < frames.length; frame++) {
            int[] pixels = new int[48];
            for (int i = 0; i < pixels.length; i++) {
                pixels[i] = new int[] {0xFFE8A020, 0x80407030, 0, 0xFFFFFFFF}[(i + i / 8 + frame) & 3];
            }
            frames[frame] = PngBuilder.Frame.whole(8, 6, 1, 3, pixels);
        }
        try {
            Path path = Files.createTempFile("animation", ".png");
            path.toFile().deleteOnExit();
            return Files.write(path, PngBuilder.animation(8, 6, frames));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
