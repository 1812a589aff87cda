package org.duskloom.engine.sound;

import java.util.Arrays;

/** The mean power of samples in steps of a fixed time, summed over channels. */
final class PowerSteps {
    private final double samplesPerStep;
    private final double shift;
    private double[] sums = new double[1024];
    private int begun;

    /**
     * @param stepsPerSecond how many steps a second has
     * @param centred whether step k lies round the instant k; else it begins there
     */
    PowerSteps(double rateHz, int stepsPerSecond, boolean centred) {
        this.samplesPerStep = rateHz / stepsPerSecond;
        this.shift = centred ? 0.5 : 0;
    }

    /**
     * Adds a channel's samples.
     *
     * @param firstIndex which sample of the sound the first one is
     */
    void add(double[] samples, long firstIndex, int count, double weight) {
        int step = stepOf(firstIndex);
        int from = 0;
        while (from < count) {
            long end = start(step + 1);
            int to = (int) Math.min(count, end - firstIndex);
            double sum = 0;
            for (int i = from; i < to; i++) {
                sum += samples[i] * samples[i];
            }
            if (step >= sums.length) {
                sums = Arrays.copyOf(sums, 2 * sums.length);
            }
            sums[step] += sum * weight;
            begun = Math.max(begun, step + 1);
            from = to;
            step++;
        }
    }

    /**
     * The mean powers.
     *
     * @param samples how many samples of each channel there were
     * @param wholeOnly whether a last step that is not complete is left out
     */
    double[] means(long samples, boolean wholeOnly) {
        int count = wholeOnly && start(begun) > samples ? Math.max(0, begun - 1) : begun;
        double[] means = new double[count];
        for (int i = 0; i < count; i++) {
            means[i] = sums[i] / (Math.min(samples, start(i + 1)) - start(i));
        }
        return means;
    }

    private int stepOf(long index) {
        int step = (int) Math.floor(index / samplesPerStep + shift);
        while (start(step) > index) {
            step--;
        }
        return start(step + 1) > index ? step : step + 1;
    }

    /** The first sample of a step. */
    private long start(int step) {
        return Math.max(0, (long) Math.ceil((step - shift) * samplesPerStep));
    }
}
