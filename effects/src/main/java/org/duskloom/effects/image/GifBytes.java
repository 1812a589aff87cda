package org.duskloom.effects.image;

import java.io.ByteArrayOutputStream;

/** A GIF file while it is read. */
final class GifBytes {
    private final byte[] file;
    private int at;

    GifBytes(byte[] file, int at) {
        this.file = file;
        this.at = at;
    }

    boolean isAtEnd() {
        return at >= file.length;
    }

    int next() throws ImageException {
        if (isAtEnd()) {
            throw ImageException.damaged("it ends after " + file.length + " bytes, in the middle of an image");
        }
        return file[at++] & 255;
    }

    /** Two bytes, the lower one first. */
    int nextShort() throws ImageException {
        int low = next();
        return low | next() << 8;
    }

    /** A table of opaque colours; its size is written as a power of two, less 1. */
    int[] colors(int flags) throws ImageException {
        int[] colors = new int[2 << (flags & 7)];
        for (int i = 0; i < colors.length; i++) {
            colors[i] = 0xFF000000 | next() << 16 | next() << 8 | next();
        }
        return colors;
    }

    void skip(int bytes) throws ImageException {
        for (int i = 0; i < bytes; i++) {
            next();
        }
    }

    /** Passes over blocks of bytes, up to the empty one. */
    void skipBlocks() throws ImageException {
        for (int length = next(); length > 0; length = next()) {
            skip(length);
        }
    }

    /** The contents of blocks of bytes, up to the empty one. */
    byte[] blocks() throws ImageException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int length = next(); length > 0; length = next()) {
            for (int i = 0; i < length; i++) {
                bytes.write(next());
            }
        }
        return bytes.toByteArray();
    }
}
