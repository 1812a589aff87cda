package org.duskloom.effects.image;

import java.nio.ByteBuffer;

/**
 * The header of a PNG picture.
 *
 * @param bitDepth of a sample: 1, 2, 4, 8 or 16
 * @param colorType 0 grey, 2 colour, 3 palette, 4 grey with alpha, 6 colour with alpha
 * @param interlaced whether the rows come in seven passes
 */
record PngHeader(int width, int height, int bitDepth, int colorType, boolean interlaced) {
    private static final int BYTES = 13;
    static final int PALETTE = 3;

    static PngHeader of(PngChunks.Chunk chunk) throws ImageException {
        chunk.need(BYTES);
        ByteBuffer data = chunk.data();
        int width = data.getInt();
        int height = data.getInt();
        int depth = data.get();
        int colorType = data.get();
        boolean known = data.get() == 0 & data.get() == 0;
        int interlace = data.get();
        if (!known || !isAllowed(colorType, depth) || interlace < 0 || interlace > 1) {
            throw ImageException.damaged(
                    "its header says colour type " + colorType + " with " + depth + " bits, which no PNG has");
        }
        ImageLimits.check(width & 0xFFFFFFFFL, height & 0xFFFFFFFFL, 1);
        return new PngHeader(width, height, depth, colorType, interlace == 1);
    }

    private static boolean isAllowed(int colorType, int depth) {
        return switch (colorType) {
            case 0 -> depth == 1 || depth == 2 || depth == 4 || depth == 8 || depth == 16;
            case PALETTE -> depth == 1 || depth == 2 || depth == 4 || depth == 8;
            case 2, 4, 6 -> depth == 8 || depth == 16;
            default -> false;
        };
    }

    /** Samples of a pixel. */
    int channels() {
        return switch (colorType) {
            case 2 -> 3;
            case 4 -> 2;
            case 6 -> 4;
            default -> 1;
        };
    }

    /** Bytes of so many pixels in a row. */
    int rowBytes(int pixels) {
        return (int) (((long) pixels * channels() * bitDepth + 7) / 8);
    }

    /** How far back the same sample of the pixel before lies, in bytes. */
    int pixelBytes() {
        return Math.max(1, channels() * bitDepth / 8);
    }

    /** The same kind of pixels in another size. */
    PngHeader resized(int newWidth, int newHeight) {
        return new PngHeader(newWidth, newHeight, bitDepth, colorType, interlaced);
    }
}
