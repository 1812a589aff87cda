package org.duskloom.engine.meter;

import java.util.Arrays;

/**
 * A line of pixels in blocks of a few, of which each begins where the one before ends: what the pixels of each draw,
 * and what that drops on the wire from its first pixel on. Blocks do not wait for each other, as sums along the whole
 * of a line would. Not safe for use by several threads.
 */
final class LineBlocks {
    /** So many pixels have a block at most: fewer are more blocks, more tell less of what is between their ends. */
    static final int MOST = 21;

    /** What resists behind each pixel, there and back; nothing behind the last. */
    private final double[] segmentOhms;

    /** Of each block its first pixel; and the last pixel of the line. */
    private final int[] first;

    /** Of each block the pixel behind its last one. */
    private final int[] end;

    /** From the first pixel of its block to each pixel, and from there to the first of the next block. */
    private final double[] ohmsWithin;

    private final double[] ohmsOnward;

    /** From the first pixel of the line to the first of each block; and to the last pixel. */
    private final double[] ohmsBefore;

    /** What the pixels of each block draw, and all before it. */
    private final double[] amps;

    private final double[] ampsBefore;

    /** Over the segments before each block, and all: the sum of resistance times the current of all pixels before. */
    private final double[] momentBefore;

    /** What the pixels draw. */
    private double[] drawn = {};

    /**
     * Blocks of a line.
     *
     * @param segments what resists from each pixel to the next; one fewer than there are pixels
     * @param starts pixels with which a block is to begin, rising
     */
    LineBlocks(double[] segments, int[] starts) {
        int pixels = segments.length + 1;
        segmentOhms = Arrays.copyOf(segments, pixels);
        first = cut(pixels, starts);
        end = Arrays.copyOfRange(first, 1, first.length);
        end[end.length - 1] = pixels;
        ohmsWithin = new double[pixels];
        ohmsOnward = new double[pixels];
        ohmsBefore = new double[first.length];
        for (int block = 0; block < end.length; block++) {
            ohmsBefore[block + 1] = ohmsBefore[block] + measure(block);
        }
        amps = new double[end.length];
        ampsBefore = new double[first.length];
        momentBefore = new double[first.length];
    }

    private double measure(int block) {
        double ohms = 0;
        for (int i = first[block]; i < end[block]; i++) {
            ohmsWithin[i] = ohms;
            ohms += segmentOhms[i];
        }
        for (int i = first[block]; i < end[block]; i++) {
            ohmsOnward[i] = ohms - ohmsWithin[i];
        }
        return ohms;
    }

    private static int[] cut(int pixels, int[] starts) {
        int[] cuts = new int[pixels + 1];
        int count = 0;
        int next = 0;
        for (int i = 0; i < pixels; i++) {
            while (next < starts.length && starts[next] < i) {
                next++;
            }
            boolean wanted = next < starts.length && starts[next] == i;
            if (wanted || count == 0 || i - cuts[count - 1] == MOST) {
                cuts[count++] = i;
            }
        }
        cuts[count++] = pixels - 1;
        return Arrays.copyOf(cuts, count);
    }

    /** How many blocks there are. */
    int count() {
        return end.length;
    }

    int pixelCount() {
        return segmentOhms.length;
    }

    /** The first pixel of a block; of the block behind the last one the last pixel of the line. */
    int first(int block) {
        return first[block];
    }

    /** The pixel behind the last one of a block. */
    int end(int block) {
        return end[block];
    }

    /** Which block begins with a pixel; below 0 where none does. */
    int startingWith(int pixel) {
        return Arrays.binarySearch(first, 0, count(), pixel);
    }

    /** The block that a pixel belongs to. */
    int of(int pixel) {
        int found = startingWith(pixel);
        return found < 0 ? -found - 2 : found;
    }

    /**
     * Takes what the pixels draw.
     *
     * @param currents of each pixel, in amperes; not to be changed before others are taken
     * @return what they draw together
     */
    double take(double[] currents) {
        drawn = currents;
        double all = 0;
        double moments = 0;
        for (int block = 0; block < amps.length; block++) {
            double sum = 0;
            double moment = 0;
            for (int i = first[block], behind = end[block]; i < behind; i++) {
                sum += currents[i];
                moment += ohmsOnward[i] * currents[i];
            }
            amps[block] = sum;
            moments += all * ohms(block) + moment;
            all += sum;
            ampsBefore[block + 1] = all;
            momentBefore[block + 1] = moments;
        }
        return all;
    }

    /** What resists from the first pixel of a block to the first of the next. */
    double ohms(int block) {
        return ohmsBefore[block + 1] - ohmsBefore[block];
    }

    /** What resists from the first pixel of the line to the first of a block. */
    double ohmsBefore(int block) {
        return ohmsBefore[block];
    }

    /** What resists from the first pixel of its block to a pixel. */
    double ohmsWithin(int pixel) {
        return ohmsWithin[pixel];
    }

    double amps(int block) {
        return amps[block];
    }

    double ampsBefore(int block) {
        return ampsBefore[block];
    }

    double momentBefore(int block) {
        return momentBefore[block];
    }

    /** What the pixel draws. */
    double drawn(int pixel) {
        return drawn[pixel];
    }

    /** What resists behind a pixel. */
    double segmentOhms(int pixel) {
        return segmentOhms[pixel];
    }
}
