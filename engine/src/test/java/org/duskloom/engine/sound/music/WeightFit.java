package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A conditional logit (D. McFadden, 1974): of the rows of each song one is chosen, each with a chance that grows as e
 * to the sum of its weighted traits. The weights make it likeliest that the chosen ones are right, less a penalty on
 * their squares, by which traits that say the same share what they say. The greatest likelihood is climbed with a
 * step for each weight, which grows as long as the slope keeps its sign (Rprop, M. Riedmiller and H. Braun, 1993).
 */
final class WeightFit {
    private static final double PENALTY = 3;
    private static final int STEPS = 400;

    private final int traits;
    private final List<double[][]> songs = new ArrayList<>();
    private final List<boolean[]> rights = new ArrayList<>();

    WeightFit(int traits) {
        this.traits = traits;
    }

    /** Adds a song; one without any right row teaches nothing and is left out. */
    void add(List<double[]> rows, List<Boolean> right) {
        if (right.contains(true)) {
            songs.add(rows.toArray(new double[0][]));
            boolean[] flags = new boolean[right.size()];
            for (int i = 0; i < flags.length; i++) {
                flags[i] = right.get(i);
            }
            rights.add(flags);
        }
    }

    double[] weights() {
        double[] deviations = deviations();
        double[] weights = new double[traits];
        double[] steps = new double[traits];
        double[] before = new double[traits];
        Arrays.fill(steps, 0.05);
        for (int k = 0; k < STEPS; k++) {
            double[] slope = slope(weights, deviations);
            for (int t = 0; t < traits; t++) {
                steps[t] = Math.min(1, Math.max(1e-5, steps[t] * (slope[t] * before[t] > 0 ? 1.2 : 0.5)));
                weights[t] += Math.signum(slope[t]) * steps[t];
                before[t] = slope[t];
            }
        }
        for (int t = 0; t < traits; t++) {
            weights[t] /= deviations[t];
        }
        return weights;
    }

    /** The share of songs whose likeliest row is right. */
    double chosenRight(double[] weights) {
        int right = 0;
        for (int s = 0; s < songs.size(); s++) {
            double[] chances = chances(songs.get(s), weights);
            int best = 0;
            for (int i = 0; i < chances.length; i++) {
                best = chances[i] > chances[best] ? i : best;
            }
            right += rights.get(s)[best] ? 1 : 0;
        }
        return (double) right / songs.size();
    }

    /** How far each trait is spread over all rows, so that all are penalized alike. */
    private double[] deviations() {
        double[] deviations = new double[traits];
        for (int t = 0; t < traits; t++) {
            double sum = 0;
            double squares = 0;
            int count = 0;
            for (double[][] rows : songs) {
                for (double[] row : rows) {
                    sum += row[t];
                    squares += row[t] * row[t];
                    count++;
                }
            }
            deviations[t] = Math.sqrt(Math.max(1e-12, squares / count - sum / count * (sum / count)));
        }
        return deviations;
    }

    private double[] slope(double[] weights, double[] deviations) {
        double[] raw = new double[traits];
        double[] slope = new double[traits];
        for (int t = 0; t < traits; t++) {
            raw[t] = weights[t] / deviations[t];
            slope[t] = -2 * PENALTY * weights[t];
        }
        for (int s = 0; s < songs.size(); s++) {
            double[][] rows = songs.get(s);
            double[] chances = chances(rows, raw);
            double right = 0;
            for (int i = 0; i < rows.length; i++) {
                right += rights.get(s)[i] ? chances[i] : 0;
            }
            for (int i = 0; i < rows.length; i++) {
                double pull = (rights.get(s)[i] ? chances[i] / Math.max(1e-300, right) : 0) - chances[i];
                for (int t = 0; t < traits; t++) {
                    slope[t] += pull * rows[i][t] / deviations[t];
                }
            }
        }
        return slope;
    }

    private static double[] chances(double[][] rows, double[] weights) {
        double[] chances = new double[rows.length];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rows.length; i++) {
            for (int t = 0; t < weights.length; t++) {
                chances[i] += weights[t] * rows[i][t];
            }
            most = Math.max(most, chances[i]);
        }
        double sum = 0;
        for (int i = 0; i < rows.length; i++) {
            chances[i] = Math.exp(chances[i] - most);
            sum += chances[i];
        }
        for (int i = 0; i < rows.length; i++) {
            chances[i] /= sum;
        }
        return chances;
    }
}
