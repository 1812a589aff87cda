package org.duskloom.engine.sound.music;

import java.util.List;

/**
 * How likely a row of beats is the one that people tap: the sum of its traits, weighted. The weights are those of a
 * conditional logit, fitted with a penalty to songs that dice have made; the developers' notes say how it is repeated.
 */
final class RowScore {
    /** What the weights are for. */
    static final List<String> TRAITS = List.of(
            "octaves slower than 120 a minute",
            "their square",
            "octaves of onsets in a beat",
            "square of what they are off from two",
            "repeats",
            "backbeat",
            "every third beat",
            "every fourth",
            "every eighth",
            "every second, high",
            "every eighth, high",
            "all: on",
            "all: half-way",
            "all: first third",
            "all: quarters",
            "low: on",
            "low: half-way",
            "low: first third",
            "low: quarters",
            "middle: on",
            "middle: half-way",
            "middle: first third",
            "middle: quarters",
            "high: on",
            "high: half-way",
            "high: first third",
            "high: quarters",
            "amplitudes: on",
            "amplitudes: half-way",
            "amplitudes: first third",
            "amplitudes: quarters");

    private static final double[] WEIGHTS = {
        -0.87, -1.57, -0.62, -1.01, 2.09, 2.31, 3.10, 3.05, -1.60, 2.69, -2.56, 0.18, -0.63, -1.49, -0.54, 0.33, -0.30,
        -1.74, -0.45, 0.66, -0.66, -1.72, -1.40, 0.27, -0.99, -1.61, -0.60, 0.55, -0.98, -1.68, -1.40
    };

    private RowScore() {}

    static double of(BeatRow row) {
        double sum = 0;
        for (int i = 0; i < WEIGHTS.length; i++) {
            sum += WEIGHTS[i] * row.traits()[i];
        }
        return sum;
    }
}
