package org.duskloom.effects.picture;

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

    int next() throws PictureException {
        if (isAtEnd()) {
            throw PictureException.damaged("it ends after " + file.length + " bytes, in the middle of an image");
        }
        return file[at++] & 255;
    }

    /** Two bytes, the lower one first. */
    int nextShort() throws PictureException {
        int low = next();
        return low | next() << 8;
    }

    /** A table of opaque colours; its size is written as a power of two, less 1. */
    int[] colors(int flags) throws PictureException {
        int[] colors = new int[2 << (flags & 7)];
        for (int i = 0; i < colors.length; i++) {
            colors[i] = 0xFF000000 | next() << 16 | next() << 8 | next();
        }
        return colors;
    }

    void skip(int bytes) throws PictureException {
        for (int i = 0; i < bytes; i++) {
            next();
        }
    }

    /** Passes over blocks of bytes, up to the empty one. */
    void skipBlocks() throws PictureException {
        for (int length = next(); length > 0; length = next()) {
            skip(length);
        }
    }

    /** The contents of blocks of bytes, up to the empty one. */
    byte[] blocks() throws PictureException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int length = next(); length > 0; length = next()) {
            for (int i = 0; i < length; i++) {
                bytes.write(next());
            }
        }
        return bytes.toByteArray();
    }
}
