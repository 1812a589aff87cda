package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * The colours that all pixels, the props and the whole had within the last second: a ring of frames. Means are kept as
 * whole numbers of {@link CodeLight}; the red of a mean, which few shows ask for, is summed up when it is asked for.
 */
final class PastColors {
    private final SignalLayout layout;
    private final int slots;
    private final int pixelCount;
    private final int frameBytes;
    private final byte[] frames;
    private final int meanCount;
    private final int[] luminance;
    private final int[] redExcess;

    /** @param framesOfSecond how many frames begin within a second; two frames are kept at least */
    PastColors(SignalLayout layout, int framesOfSecond) {
        this.layout = layout;
        slots = Math.max(2, framesOfSecond);
        pixelCount = layout.pixelCount();
        frameBytes = 3 * pixelCount;
        frames = new byte[Math.multiplyExact(slots, frameBytes)];
        meanCount = layout.signalCount() - pixelCount;
        luminance = new int[slots * meanCount];
        redExcess = new int[luminance.length];
    }

    /** How many frames back a colour can be asked for. */
    int reach() {
        return slots - 1;
    }

    /** Keeps a frame. The means of the frame before stay until others are set. */
    void keep(int place, byte[] rgb, int offset) {
        System.arraycopy(rgb, offset, frames, start(place), frameBytes);
        if (place > 0) {
            int from = place - 1;
            copyMeans(luminance, from, place);
            copyMeans(redExcess, from, place);
        }
    }

    private void copyMeans(int[] means, int from, int to) {
        System.arraycopy(means, from % slots * meanCount, means, to % slots * meanCount, meanCount);
    }

    private int start(int place) {
        return place % slots * frameBytes;
    }

    /** Keeps the mean of a prop or of the whole. */
    void keepMean(int place, int signal, int meanLuminance, int meanRedExcess) {
        int at = place % slots * meanCount + signal - pixelCount;
        luminance[at] = meanLuminance;
        redExcess[at] = meanRedExcess;
    }

    /** Whether some pixels have the same colours as in the frame before; not to be asked of the first frame. */
    boolean areSame(int place, int firstPixel, int endPixel) {
        int now = start(place);
        int before = start(place - 1);
        int first = 3 * firstPixel;
        int end = 3 * endPixel;
        return Arrays.equals(frames, now + first, now + end, frames, before + first, before + end);
    }

    /** Red, green and blue of a signal in linear light, 0 to 1; no more than {@link #reach()} frames ago. */
    void read(int signal, int place, double[] color) {
        if (signal < pixelCount) {
            CodeLight.linear(frames, start(place) + 3 * signal, color);
        } else {
            int at = place % slots * meanCount + signal - pixelCount;
            CodeLight.linear(luminance[at], redExcess[at], red(signal, place), color);
        }
    }

    private int red(int signal, int place) {
        int group = layout.group(signal);
        int first = layout.firstPixel(group);
        int pixels = layout.pixelCount(group);
        return (int) (CodeLight.red(frames, start(place) + 3 * first, pixels) / Math.max(1, pixels));
    }
}
