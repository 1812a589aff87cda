package org.duskloom.engine.effect;

/**
 * One thread's way to paint with a kernel. {@link #begin} is called once per frame, then {@link #paint} for any spans
 * of the canvas in any order. What is painted depends on the kernel and the time alone: whatever a brush keeps between
 * frames is a cache of such values.
 */
public interface Brush {
    /** Computes what all pixels of the frame share. */
    void begin(CueTime time);

    /**
     * Paints the canvas pixels from {@code firstPixel} on into the patch's cells from {@link Patch#from()} up to {@link
     * Patch#to()}: premultiplied linear light with alpha, each in [0, 1], finite; or alpha alone, and {@link
     * Patch#makeFlat}.
     */
    void paint(int firstPixel, Patch patch);
}
