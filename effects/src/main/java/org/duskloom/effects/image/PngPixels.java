package org.duskloom.effects.image;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;

/**
 * What the samples of a PNG mean, as {@code 0xAARRGGBB}. Samples of 16 bits are rounded to the nearest of 8: W3C
 * Portable Network Graphics, Third Edition, "Sample depth rescaling". Gamma and colour profiles do not count: samples
 * are sRGB.
 */
final class PngPixels {
    private static final int OPAQUE = 0xFF000000;

    private final PngHeader header;
    /** The colours of all indices of a palette; those that the file does not have are missing at its end. */
    private final int[] palette;
    /** The grey or red, green and blue that are transparent, at full depth; empty if there is none. */
    private final int[] transparent;

    private PngPixels(PngHeader header, int[] palette, int[] transparent) {
        this.header = header;
        this.palette = palette;
        this.transparent = transparent;
    }

    static PngPixels of(PngHeader header, Optional<PngChunks.Chunk> plte, Optional<PngChunks.Chunk> trns)
            throws ImageException {
        if (header.colorType() == PngHeader.PALETTE) {
            return new PngPixels(header, palette(plte, trns), new int[0]);
        }
        if (trns.isEmpty() || header.channels() == 2 || header.channels() == 4) {
            return new PngPixels(header, new int[0], new int[0]);
        }
        trns.get().need(2 * header.channels());
        ByteBuffer data = trns.get().data();
        int[] transparent = new int[header.channels()];
        Arrays.setAll(transparent, i -> data.getShort() & 0xFFFF);
        return new PngPixels(header, new int[0], transparent);
    }

    private static int[] palette(Optional<PngChunks.Chunk> plte, Optional<PngChunks.Chunk> trns) throws ImageException {
        int bytes = plte.map(PngChunks.Chunk::length).orElse(0);
        if (bytes == 0 || bytes % 3 != 0 || bytes > 768) {
            throw ImageException.damaged("its palette has " + bytes + " bytes");
        }
        ByteBuffer colors = plte.orElseThrow().data();
        int[] palette = new int[bytes / 3];
        Arrays.setAll(
                palette,
                i -> OPAQUE
                        | (colors.get(3 * i) & 255) << 16
                        | (colors.get(3 * i + 1) & 255) << 8
                        | colors.get(3 * i + 2) & 255);
        if (trns.isPresent()) {
            ByteBuffer alphas = trns.get().data();
            for (int i = 0; i < Math.min(palette.length, alphas.limit()); i++) {
                palette[i] = palette[i] & ~OPAQUE | alphas.get(i) << 24;
            }
        }
        return palette;
    }

    /** The pixel of a row, whose bytes stand from 1 on. */
    int pixel(byte[] row, int index) throws ImageException {
        int channels = header.channels();
        int first = sample(row, index * channels);
        if (header.colorType() == PngHeader.PALETTE) {
            if (first >= palette.length) {
                throw ImageException.damaged("a pixel has colour " + first + " of a palette of " + palette.length);
            }
            return palette[first];
        }
        int second = channels > 1 ? sample(row, index * channels + 1) : first;
        if (channels < 3) {
            int alpha = channels == 2 ? code(second) : alpha(first);
            return alpha << 24 | code(first) * 0x010101;
        }
        int third = sample(row, index * channels + 2);
        int alpha = channels == 4 ? code(sample(row, index * channels + 3)) : alpha(first, second, third);
        return alpha << 24 | code(first) << 16 | code(second) << 8 | code(third);
    }

    private int alpha(int... samples) {
        return Arrays.equals(samples, transparent) ? 0 : 255;
    }

    private int code(int sample) {
        int most = (1 << header.bitDepth()) - 1;
        return (sample * 255 + most / 2) / most;
    }

    private int sample(byte[] row, int index) {
        int depth = header.bitDepth();
        if (depth == 8) {
            return row[1 + index] & 255;
        }
        if (depth == 16) {
            return (row[1 + 2 * index] & 255) << 8 | row[2 + 2 * index] & 255;
        }
        int bit = index * depth;
        return row[1 + bit / 8] >> 8 - depth - bit % 8 & (1 << depth) - 1;
    }
}
