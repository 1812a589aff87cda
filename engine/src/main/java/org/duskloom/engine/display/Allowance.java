package org.duskloom.engine.display;

import org.duskloom.engine.map.PixelMap;

/** How much all shapes of a display may still hold, so that a slip of the pen does not fill the memory. */
final class Allowance {
    /** How many pixels the defined parts of all shapes may list together. */
    static final int MOST_PART_PIXELS = 10_000_000;

    private long pixels = PixelMap.MAX_PIXELS;
    private long partPixels = MOST_PART_PIXELS;

    /** Takes some pixels; false, and takes nothing, where so many are not left. */
    boolean takePixels(long count) {
        boolean enough = count <= pixels;
        pixels -= enough ? count : 0;
        return enough;
    }

    /** The same for pixels listed in parts. */
    boolean takePartPixels(long count) {
        boolean enough = count <= partPixels;
        partPixels -= enough ? count : 0;
        return enough;
    }
}
