package org.duskloom.engine.sheet;

import java.util.StringJoiner;

/** Writes pixel indices as a display writes them: numbers from 1, in ranges that may fall. */
final class PixelRangeText {
    private static final int MOST_RANGES = 12;

    private PixelRangeText() {}

    static String of(int[] pixels) {
        StringJoiner text = new StringJoiner(", ");
        int ranges = 0;
        int start = 0;
        while (start < pixels.length) {
            int end = endOfRange(pixels, start);
            if (ranges++ == MOST_RANGES) {
                return text + ", ...";
            }
            int first = pixels[start] + 1;
            int last = pixels[end - 1] + 1;
            text.add(first == last ? String.valueOf(first) : first + "-" + last);
            start = end;
        }
        return text.toString();
    }

    /** The index after the last that goes on from the start by steps of 1 or of -1. */
    private static int endOfRange(int[] pixels, int start) {
        int end = start + 1;
        if (end == pixels.length || Math.abs(pixels[end] - pixels[start]) != 1) {
            return end;
        }
        int step = pixels[end] - pixels[start];
        while (end < pixels.length && pixels[end] - pixels[end - 1] == step) {
            end++;
        }
        return end;
    }
}
