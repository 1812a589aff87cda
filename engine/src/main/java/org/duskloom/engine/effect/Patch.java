package org.duskloom.engine.effect;

import java.util.Arrays;

/**
 * A few pixels of premultiplied linear light with alpha, one plane of floats for each channel, and three planes of scratch
 * for the brush. The planes are public arrays, because loops over plain arrays under one common index are what the
 * compiler turns into vector instructions; a brush writes the cells {@link #from()} to {@link #to()} of the four channels.
 */
public final class Patch {
    /** How many pixels a patch can hold. Chosen by measurement: large enough to hide the cost of starting a loop. */
    public static final int CAPACITY = 2048;

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
    private boolean opaque;
    private boolean flat;
    private float flatRed;
    private float flatGreen;
    private float flatBlue;

    /** An empty patch. */
    public Patch() {}

    /** Sets the cells to be painted, and takes them for translucent until a brush says otherwise. */
    public void reset(int fromCell, int toCell) {
        if (fromCell < 0 || toCell > CAPACITY || fromCell > toCell) {
            throw new IndexOutOfBoundsException(fromCell + " to " + toCell);
        }
        from = fromCell;
        to = toCell;
        opaque = false;
        flat = false;
    }

    /** The first cell to be painted. */
    public int from() {
        return from;
    }

    /** The cell after the last to be painted. */
    public int to() {
        return to;
    }

    /** Whether every cell's alpha is 1, which saves reading it. */
    public boolean isOpaque() {
        return opaque;
    }

    /** Makes every cell opaque. */
    public void makeOpaque() {
        Arrays.fill(alpha, from, to, 1f);
        opaque = true;
    }

    /**
     * Gives all cells one colour, of which alpha alone says how much is there: the brush fills that plane and leaves the
     * planes of colour as they are.
     *
     * @param red linear light in [0, 1], not multiplied by alpha
     */
    public void makeFlat(float red, float green, float blue) {
        flat = true;
        flatRed = red;
        flatGreen = green;
        flatBlue = blue;
        opaque = false;
    }

    /** Whether all cells have one colour, and the planes of colour do not count. */
    public boolean isFlat() {
        return flat;
    }

    /** Red of a flat patch, not multiplied by alpha. */
    public float flatRed() {
        return flatRed;
    }

    /** Green of a flat patch, not multiplied by alpha. */
    public float flatGreen() {
        return flatGreen;
    }

    /** Blue of a flat patch, not multiplied by alpha. */
    public float flatBlue() {
        return flatBlue;
    }

    /** Fills the planes of colour of a flat patch; it is no longer flat then. */
    public void fillFlat() {
        if (flat) {
            scaled(alpha, flatRed, from, to, red);
            scaled(alpha, flatGreen, from, to, green);
            scaled(alpha, flatBlue, from, to, blue);
            flat = false;
        }
    }

    private static void scaled(float[] source, float factor, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * factor;
        }
    }

    /** Makes every cell opaque black, in a patch that was opaque before or is new. */
    public void blacken() {
        Arrays.fill(red, from, to, 0f);
        Arrays.fill(green, from, to, 0f);
        Arrays.fill(blue, from, to, 0f);
        opaque = true;
        flat = false;
    }

    /** Makes every cell transparent black. */
    public void clear() {
        Arrays.fill(red, from, to, 0f);
        Arrays.fill(green, from, to, 0f);
        Arrays.fill(blue, from, to, 0f);
        Arrays.fill(alpha, from, to, 0f);
        opaque = false;
        flat = false;
    }

    /** Copies values of the canvas, from {@code firstPixel} on, to the cells to be painted. */
    public void load(float[] canvasValues, int firstPixel, float[] plane) {
        System.arraycopy(canvasValues, firstPixel, plane, from, to - from);
    }
}
