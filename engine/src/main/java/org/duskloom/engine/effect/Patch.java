package org.duskloom.engine.effect;

import java.util.Arrays;

/**
 * A few pixels of premultiplied linear light with alpha, one plane of floats for each channel, and three planes of
 * scratch for the brush. The planes are public arrays, because loops over plain arrays under one common index are what
 * the compiler turns into vector instructions; a brush writes the cells {@link #from()} to {@link #to()} of the four
 * channels.
 */
public final class Patch {
    /** How many pixels a patch can hold. Chosen by measurement: large enough to hide the cost of starting a loop. */
    public static final int CAPACITY = 2048;

    /** How many channels a colour has without alpha: red, green, blue. */
    public static final int CHANNELS = 3;

    public final float[] red = new float[CAPACITY];
    public final float[] green = new float[CAPACITY];
    public final float[] blue = new float[CAPACITY];
    public final float[] alpha = new float[CAPACITY];

    /** Scratch that a brush may use while it paints. */
    public final float[] first = new float[CAPACITY];

    /** Scratch that a brush may use while it paints. */
    public final float[] second = new float[CAPACITY];

    /** Scratch that a brush may use while it paints. */
    public final float[] third = new float[CAPACITY];

    private int from;
    private int to;

    /** What the planes do not show yet, so that whoever mixes the patch can do it in one pass with the rest. */
    private boolean opaque;

    private boolean black;
    private boolean flat;
    private float flatRed;
    private float flatGreen;
    private float flatBlue;
    private float[] level;

    /** An empty patch. */
    public Patch() {}

    /** Sets the cells to be painted, and takes them for translucent until a brush says otherwise. */
    public void reset(int fromCell, int toCell) {
        if (fromCell < 0 || toCell > CAPACITY || fromCell > toCell) {
            throw new IndexOutOfBoundsException(fromCell + " to " + toCell);
        }
        from = fromCell;
        to = toCell;
        showPlanes();
    }

    /** The first cell to be painted. */
    public int from() {
        return from;
    }

    /** The cell after the last to be painted. */
    public int to() {
        return to;
    }

    /** Makes every cell opaque: the brush leaves the plane of alpha as it is. */
    public void makeOpaque() {
        opaque = true;
    }

    /**
     * Gives all cells one colour, of which alpha alone says how much is there: the brush fills that plane and leaves
     * the planes of colour as they are.
     *
     * @param red linear light in [0, 1], not multiplied by alpha
     */
    public void makeFlat(float red, float green, float blue) {
        showPlanes();
        flat = true;
        flatRed = red;
        flatGreen = green;
        flatBlue = blue;
    }

    /** Makes every cell opaque black; the planes do not count. */
    public void makeBlack() {
        showPlanes();
        black = true;
        opaque = true;
    }

    /**
     * Multiplies the four channels of every cell by a level.
     *
     * @param levels in [0, 1]; a plane of this patch, but none of its channels, to be left alone until the patch is
     *     mixed
     */
    public void dimBy(float[] levels) {
        if (flat || black || level != null) {
            fill();
        }
        level = levels;
    }

    /** Fills the planes where they do not show the patch yet: then the four channels are all there is. */
    public void fill() {
        if (black) {
            darken();
        }
        if (opaque) {
            Arrays.fill(alpha, from, to, 1f);
        }
        if (flat) {
            for (int channel = 0; channel < CHANNELS; channel++) {
                scaled(alpha, flat(channel), from, to, plane(channel));
            }
        }
        if (level != null) {
            for (int channel = 0; channel < CHANNELS; channel++) {
                multiply(plane(channel), level, from, to);
            }
            multiply(alpha, level, from, to);
            opaque = false;
        }
        black = false;
        flat = false;
        level = null;
    }

    /** Makes every cell transparent black. */
    public void clear() {
        showPlanes();
        darken();
        Arrays.fill(alpha, from, to, 0f);
    }

    private void darken() {
        for (int channel = 0; channel < CHANNELS; channel++) {
            Arrays.fill(plane(channel), from, to, 0f);
        }
    }

    private void showPlanes() {
        opaque = false;
        black = false;
        flat = false;
        level = null;
    }

    /** Whether every cell's alpha is 1, which saves reading it; but for the level where the patch {@link #isDimmed}. */
    public boolean isOpaque() {
        return opaque;
    }

    /** Whether every cell is opaque black, and the planes do not count. */
    public boolean isBlack() {
        return black;
    }

    /** Takes what the planes of colour have come to hold for what the patch shows: it is black no more. */
    public void showColors() {
        black = false;
    }

    /** Whether all cells have one colour, and the planes of colour do not count. */
    public boolean isFlat() {
        return flat;
    }

    /**
     * A channel of colour, for loops over all three: compilers copy what three calls call three times, loops and all.
     *
     * @param channel 0 for red, 1 for green, 2 for blue
     */
    public float[] plane(int channel) {
        return channel == 0 ? red : channel == 1 ? green : blue;
    }

    /** A channel of the one colour of a flat patch, not multiplied by alpha; numbered as in {@link #plane}. */
    public float flat(int channel) {
        return channel == 0 ? flatRed : channel == 1 ? flatGreen : flatBlue;
    }

    /** Whether the four channels are still to be multiplied by {@link #level}. */
    public boolean isDimmed() {
        return level != null;
    }

    /** The level of each cell of a dimmed patch, in [0, 1]. */
    public float[] level() {
        return level;
    }

    private static void scaled(float[] source, float factor, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * factor;
        }
    }

    private static void multiply(float[] plane, float[] by, int from, int to) {
        for (int i = from; i < to; i++) {
            plane[i] *= by[i];
        }
    }

    /** Copies values of the canvas, from {@code firstPixel} on, to the cells to be painted. */
    public void load(float[] canvasValues, int firstPixel, float[] plane) {
        System.arraycopy(canvasValues, firstPixel, plane, from, to - from);
    }
}
