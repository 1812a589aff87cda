package org.duskloom.engine.locate;

import java.util.Arrays;

/** Some of a picture's dots, in the order of its rows. Immutable. */
final class KeptDots {
    private final int width;
    private final int[] dots;

    /**
     * @param width of the picture
     * @param dots counted row by row, rising
     */
    KeptDots(int width, int[] dots) {
        this.width = width;
        this.dots = dots;
    }

    int count() {
        return dots.length;
    }

    int dot(int index) {
        return dots[index];
    }

    int x(int index) {
        return dots[index] % width;
    }

    int y(int index) {
        return dots[index] / width;
    }

    /** The index of the dot at a place, or -1 if it is none of these. */
    int at(int x, int y) {
        if (x < 0 || x >= width) {
            return -1;
        }
        int found = Arrays.binarySearch(dots, y * width + x);
        return found < 0 ? -1 : found;
    }
}
