package org.duskloom.engine.sound.music;

import java.util.Arrays;

/** Takes away beats before the music begins and after it ends, where nothing is on them. */
final class Trimming {
    private static final int STRETCH = 8;
    private static final double ENOUGH = 0.5;
    private static final int REACH = 3;

    private Trimming() {}

    /** @param keepStart whether the first beat was told and stays */
    static double[] of(double[] frames, Onsets onsets, boolean keepStart) {
        double[] on = new double[frames.length];
        double mean = 0;
        for (int i = 0; i < on.length; i++) {
            on[i] = Windows.peak(onsets.strength(), frames[i], REACH);
            mean += on[i] / on.length;
        }
        int from = 0;
        while (!keepStart && from < on.length && !begins(on, from, 1, mean)) {
            from++;
        }
        int last = on.length - 1;
        while (last > from && !begins(on, last, -1, mean)) {
            last--;
        }
        return from > last ? new double[0] : Arrays.copyOfRange(frames, from, last + 1);
    }

    /** Whether there is something on a beat, and on those that follow in a direction. */
    private static boolean begins(double[] on, int at, int direction, double mean) {
        double sum = 0;
        int count = 0;
        for (int k = 0; k < STRETCH && at + k * direction >= 0 && at + k * direction < on.length; k++) {
            sum += on[at + k * direction];
            count++;
        }
        return on[at] >= ENOUGH * mean && sum >= ENOUGH * mean * count;
    }
}
