package org.duskloom.effects.image;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Puts the images of an animation together from pieces, each of which covers a part of the one before. Where a
 * translucent pixel goes over another one they are mixed as codes, not as light, as viewers do: W3C Portable Network
 * Graphics, Third Edition, "fcTL: frame control chunk", blend operation {@code over}.
 */
final class Easel {
    /** What becomes of a piece when its time is over. */
    enum Afterwards {
        STAYS,
        IS_CLEARED,
        GIVES_WAY_TO_WHAT_WAS_BEFORE
    }

    /**
     * A piece and its place.
     *
     * @param left first column, at least 0
     * @param top first row, at least 0
     * @param pixels {@code 0xAARRGGBB}, row by row
     */
    record Piece(int left, int top, int width, int height, int[] pixels) {}

    private final int width;
    private final int height;
    private final int[] pixels;
    private final List<int[]> images = new ArrayList<>();
    private final List<Double> seconds = new ArrayList<>();

    Easel(int width, int height) {
        this.width = width;
        this.height = height;
        pixels = new int[width * height];
    }

    /** Adds the image that a piece makes of the one before; what lies outside of the picture is cut off. */
    void show(Piece piece, boolean over, Afterwards afterwards, double forSeconds) {
        int[] before = afterwards == Afterwards.GIVES_WAY_TO_WHAT_WAS_BEFORE ? pixels.clone() : pixels;
        int right = Math.min(width, piece.left + piece.width);
        int bottom = Math.min(height, piece.top + piece.height);
        for (int y = piece.top; y < bottom; y++) {
            for (int x = piece.left; x < right; x++) {
                int at = y * width + x;
                int pixel = piece.pixels[(y - piece.top) * piece.width + x - piece.left];
                pixels[at] = over ? over(pixel, pixels[at]) : pixel;
            }
        }
        images.add(pixels.clone());
        seconds.add(forSeconds);
        if (afterwards == Afterwards.IS_CLEARED) {
            for (int y = piece.top; y < bottom && piece.left < right; y++) {
                Arrays.fill(pixels, y * width + piece.left, y * width + right, 0);
            }
        }
        System.arraycopy(before, 0, pixels, 0, pixels.length);
    }

    Film film() {
        return new Film(
                width,
                height,
                images,
                seconds.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static int over(int above, int below) {
        int alphaAbove = above >>> 24;
        if (alphaAbove == 255 || below >>> 24 == 0) {
            return above;
        }
        if (alphaAbove == 0) {
            return below;
        }
        int shareAbove = alphaAbove * 255;
        int shareBelow = (255 - alphaAbove) * (below >>> 24);
        int both = shareAbove + shareBelow;
        int mixed = (both + 127) / 255 << 24;
        for (int shift = 0; shift < 24; shift += 8) {
            int sum = (above >> shift & 255) * shareAbove + (below >> shift & 255) * shareBelow;
            mixed |= (sum + both / 2) / both << shift;
        }
        return mixed;
    }
}
