package org.duskloom.effects.morph;

import java.util.Arrays;

/** Pairs of a dot and a pixel that it may light, as they are found; up to a number of them. */
final class Meetings {
    private final long most;
    private int[] dots = new int[64];
    private int[] pixels = new int[64];
    private int count;
    private boolean crowded;

    Meetings(long most) {
        this.most = Math.min(most, Integer.MAX_VALUE / 4);
    }

    /**
     * Adds a pair.
     *
     * @param pixel by its place in the grid
     */
    void add(int dot, int pixel) {
        if (count >= most) {
            crowded = true;
            return;
        }
        if (count == dots.length) {
            dots = Arrays.copyOf(dots, 2 * count);
            pixels = Arrays.copyOf(pixels, 2 * count);
        }
        dots[count] = dot;
        pixels[count++] = pixel;
    }

    /** How many there are. */
    int count() {
        return count;
    }

    /** Whether there were more than are allowed. */
    boolean isCrowded() {
        return crowded;
    }

    /**
     * The leg on which these pairs may meet.
     *
     * @param pixelCount how many pixels the grid has
     * @param reach how far dots reach at most
     */
    Leg leg(int pixelCount, double reach) {
        int[] next = new int[pixelCount + 1];
        for (int i = 0; i < count; i++) {
            next[pixels[i] + 1]++;
        }
        for (int pixel = 0; pixel < pixelCount; pixel++) {
            next[pixel + 1] += next[pixel];
        }
        LegWriter writer = new LegWriter(count);
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            order[next[pixels[i]]++] = i;
        }
        for (int i : order) {
            writer.add(pixels[i], dots[i]);
        }
        return writer.leg(reach);
    }
}
