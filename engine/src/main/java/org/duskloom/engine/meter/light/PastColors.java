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

    /** The last frame that is kept, and where. */
    private int latest;

    private int latestSlot;

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
        latest = place;
        latestSlot = place % slots;
        System.arraycopy(rgb, offset, frames, start(place), frameBytes);
        if (place > 0) {
            copyMeans(luminance, slot(place - 1), latestSlot);
            copyMeans(redExcess, slot(place - 1), latestSlot);
        }
    }

    private void copyMeans(int[] means, int from, int to) {
        System.arraycopy(means, from * meanCount, means, to * meanCount, meanCount);
    }

    /** Without a division, as most colours of the past are asked for one after the other. */
    private int slot(int place) {
        int slot = latestSlot - (latest - place);
        return slot < 0 ? slot + slots : slot;
    }

    private int start(int place) {
        return slot(place) * frameBytes;
    }

    /** Keeps the mean of a prop or of the whole. */
    void keepMean(int place, int signal, int meanLuminance, int meanRedExcess) {
        int at = slot(place) * meanCount + signal - pixelCount;
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

    /** Whether a signal is known to have the same colour as in the frame before. */
    boolean isStill(int signal, int place) {
        if (signal >= pixelCount || place == 0) {
            return false;
        }
        int now = start(place) + 3 * signal;
        int before = start(place - 1) + 3 * signal;
        return frames[now] == frames[before]
                && frames[now + 1] == frames[before + 1]
                && frames[now + 2] == frames[before + 2];
    }

    /** Red, green and blue of a signal in linear light, 0 to 1; no more than {@link #reach()} frames ago. */
    void read(int signal, int place, double[] color) {
        if (signal < pixelCount) {
            CodeLight.linear(frames, start(place) + 3 * signal, color);
        } else {
            int at = slot(place) * meanCount + signal - pixelCount;
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
