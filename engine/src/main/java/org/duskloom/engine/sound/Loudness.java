package org.duskloom.engine.sound;

import java.util.OptionalDouble;

/**
 * Integrated loudness by Recommendation ITU-R BS.1770-4, Annex 1: blocks of 400 ms that overlap by three quarters,
 * those at -70 LUFS or under left out, then those 10 LU or more under the mean of the rest.
 */
final class Loudness {
    /** So many steps a second are measured. */
    static final int STEPS_PER_SECOND = 10;

    /** What is not louder is silence. */
    static final double SILENCE_LUFS = -70;

    private static final int STEPS_PER_BLOCK = 4;
    private static final double GATE_LU = 10;
    private static final double OFFSET = -0.691;

    private Loudness() {}

    /** The loudness of a weighted mean power, in LUFS; minus infinity without any. */
    static double lufs(double power) {
        return OFFSET + 10 * StrictMath.log10(power);
    }

    /**
     * The loudness of a whole sound, in LUFS.
     *
     * @param stepPowers K-weighted power of each whole step, channels summed with their weights
     * @return nothing where no block is louder than silence
     */
    static OptionalDouble integrated(double[] stepPowers) {
        int blocks = Math.max(0, stepPowers.length - STEPS_PER_BLOCK + 1);
        double[] powers = new double[blocks];
        for (int i = 0; i < blocks; i++) {
            for (int k = 0; k < STEPS_PER_BLOCK; k++) {
                powers[i] += stepPowers[i + k] / STEPS_PER_BLOCK;
            }
        }
        double ungated = meanAbove(powers, SILENCE_LUFS);
        double gated = meanAbove(powers, Math.max(SILENCE_LUFS, lufs(ungated) - GATE_LU));
        return gated > 0 ? OptionalDouble.of(lufs(gated)) : OptionalDouble.empty();
    }

    private static double meanAbove(double[] powers, double thresholdLufs) {
        double sum = 0;
        int count = 0;
        for (double power : powers) {
            if (lufs(power) > thresholdLufs) {
                sum += power;
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }
}
