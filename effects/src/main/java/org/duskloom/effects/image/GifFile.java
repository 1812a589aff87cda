package org.duskloom.effects.image;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads a GIF with all its images: Graphics Interchange Format, Version 89a, CompuServe 1990. */
final class GifFile {
    private static final int SIGNATURE_BYTES = 6;
    private static final int EXTENSION = 0x21;
    private static final int CONTROL = 0xF9;
    private static final int IMAGE = 0x2C;
    private static final int TRAILER = 0x3B;
    private static final int HAS_COLORS = 0x80;

    private final GifBytes in;
    private final int width;
    private final int height;
    private final int[] colors;
    private final List<GifImage> images = new ArrayList<>();

    private GifFile(byte[] file) throws ImageException {
        in = new GifBytes(file, SIGNATURE_BYTES);
        width = in.nextShort();
        height = in.nextShort();
        int flags = in.next();
        in.skip(2);
        colors = (flags & HAS_COLORS) != 0 ? in.colors(flags) : new int[0];
        ImageLimits.check(width, height, 1);
    }

    static boolean isGif(byte[] file) {
        String start = new String(file, 0, Math.min(SIGNATURE_BYTES, file.length), StandardCharsets.ISO_8859_1);
        return start.equals("GIF87a") || start.equals("GIF89a");
    }

    static Film read(byte[] file) throws ImageException {
        GifFile gif = new GifFile(file);
        gif.readBlocks();
        if (gif.images.isEmpty()) {
            throw ImageException.damaged("it has no image");
        }
        ImageLimits.check(gif.width, gif.height, gif.images.size());
        Easel easel = new Easel(gif.width, gif.height);
        for (GifImage image : gif.images) {
            image.show(easel);
        }
        return easel.film();
    }

    /** A file whose end mark is missing ends with its last image. */
    private void readBlocks() throws ImageException {
        GifControl control = GifControl.NONE;
        while (!in.isAtEnd()) {
            int kind = in.next();
            if (kind == TRAILER) {
                return;
            }
            if (kind == IMAGE) {
                add(GifImage.of(in, control, colors));
                control = GifControl.NONE;
            } else if (kind != EXTENSION) {
                throw ImageException.damaged("it has a block of the kind " + kind + ", which no GIF has");
            } else if (in.next() == CONTROL) {
                control = GifControl.of(in);
            } else {
                in.skipBlocks();
            }
        }
    }

    private void add(GifImage image) throws ImageException {
        images.add(image);
        ImageLimits.check(Math.max(width, image.width()), Math.max(height, image.height()), images.size());
    }
}
