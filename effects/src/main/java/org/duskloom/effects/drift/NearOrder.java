package org.duskloom.effects.drift;

import java.util.Arrays;
import org.duskloom.engine.effect.Canvas;

/**
 * The pixels of a canvas in an order in which near ones follow each other: of each member many thousand at a time,
 * along a curve that goes through each quarter of a square before the next (G. M. Morton, "A computer oriented geodetic
 * data base", 1966).
 */
final class NearOrder {
    private static final int SIDE = 1 << 15;

    /** How many pixels are put in order at once, so that they stay in the processor's cache together. */
    private static final int BLOCK = 1 << 14;

    private NearOrder() {}

    /** The numbers of all pixels. */
    static int[] of(Canvas canvas) {
        int[] memberOf = canvas.memberOf();
        int[] order = new int[memberOf.length];
        for (int from = 0; from < order.length; ) {
            int to = from + 1;
            while (to < order.length && to - from < BLOCK && memberOf[to] == memberOf[from]) {
                to++;
            }
            sort(canvas, from, to, order);
            from = to;
        }
        return order;
    }

    private static void sort(Canvas canvas, int from, int to, int[] order) {
        double lowX = Arrays.stream(canvas.x(), from, to).min().orElse(0);
        double lowY = Arrays.stream(canvas.y(), from, to).min().orElse(0);
        double width = Arrays.stream(canvas.x(), from, to).max().orElse(0) - lowX;
        double height = Arrays.stream(canvas.y(), from, to).max().orElse(0) - lowY;
        double perUnit = (SIDE - 1) / Math.max(Double.MIN_NORMAL, Math.max(width, height));
        long[] keys = new long[to - from];
        for (int pixel = from; pixel < to; pixel++) {
            int column = (int) ((canvas.x()[pixel] - lowX) * perUnit);
            int row = (int) ((canvas.y()[pixel] - lowY) * perUnit);
            keys[pixel - from] = (spread(column) | spread(row) << 1) << Integer.SIZE | pixel;
        }
        Arrays.sort(keys);
        for (int i = 0; i < keys.length; i++) {
            order[from + i] = (int) keys[i];
        }
    }

    /** The bits of a number, a 0 after each. */
    private static long spread(int number) {
        long bits = number;
        bits = (bits | bits << 8) & 0x00FF00FFL;
        bits = (bits | bits << 4) & 0x0F0F0F0FL;
        bits = (bits | bits << 2) & 0x33333333L;
        return (bits | bits << 1) & 0x55555555L;
    }
}
