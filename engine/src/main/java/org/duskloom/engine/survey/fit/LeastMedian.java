package org.duskloom.engine.survey.fit;

import java.util.Arrays;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.random.SplitMix64;
import org.joml.Matrix3dc;
import org.joml.Vector3d;

/**
 * The similarity of the plane with the least median of squared misfits, among those through two of the points.
 *
 * @param similarity the map
 * @param median the median that it leaves
 */
record LeastMedian(Similarity similarity, double median) {
    private static final long SEED = 20_26_06_21L;
    private static final int TRIALS = 300;

    /**
     * Finds it; the same for the same points. Of very few points all pairs might be drawn, of many chance finds good
     * ones.
     */
    static LeastMedian of(Positions from, Positions to, int[] sample) {
        SplitMix64 draws = new SplitMix64(SEED);
        LeastMedian best =
                new LeastMedian(new Similarity(Rotations.IDENTITY, 1, new Vector3d()), Double.POSITIVE_INFINITY);
        for (int trial = 0; trial < TRIALS; trial++) {
            int a = sample[(int) (draws.nextDouble() * sample.length)];
            int b = sample[(int) (draws.nextDouble() * sample.length)];
            double dx = from.x(b) - from.x(a);
            double dy = from.y(b) - from.y(a);
            if (dx * dx + dy * dy > 0) {
                Similarity through = through(from, to, a, b);
                double median = median(through, from, to, sample);
                best = median < best.median ? new LeastMedian(through, median) : best;
            }
        }
        return best;
    }

    /**
     * Which of so many sorted squares counts as their median: one with which two points that always fit decide nothing.
     */
    static int medianIndex(int count) {
        return Math.min(count - 1, count / 2 + 1);
    }

    static double[] squares(Similarity similarity, Positions from, Positions to) {
        double[] squares = new double[from.size()];
        for (int i = 0; i < squares.length; i++) {
            squares[i] = square(similarity, from, to, i);
        }
        return squares;
    }

    private static double median(Similarity similarity, Positions from, Positions to, int[] sample) {
        double[] squares = new double[sample.length];
        for (int i = 0; i < squares.length; i++) {
            squares[i] = square(similarity, from, to, sample[i]);
        }
        Arrays.sort(squares);
        return squares[medianIndex(squares.length)];
    }

    private static double square(Similarity similarity, Positions from, Positions to, int i) {
        Vector3d mapped = similarity.of(from.x(i), from.y(i), 0);
        double dx = mapped.x - to.x(i);
        double dy = mapped.y - to.y(i);
        return dx * dx + dy * dy;
    }

    /** The quotient of the two differences as complex numbers is the turn and the scale. */
    private static Similarity through(Positions from, Positions to, int a, int b) {
        double fromX = from.x(b) - from.x(a);
        double fromY = from.y(b) - from.y(a);
        double toX = to.x(b) - to.x(a);
        double toY = to.y(b) - to.y(a);
        double squared = fromX * fromX + fromY * fromY;
        double real = (fromX * toX + fromY * toY) / squared;
        double imaginary = (fromX * toY - fromY * toX) / squared;
        double scale = Math.sqrt(real * real + imaginary * imaginary);
        Matrix3dc rotation = scale > 0 ? Rotations.aboutZ(real / scale, imaginary / scale) : Rotations.IDENTITY;
        return Similarity.taking(
                new Vector3d(from.x(a), from.y(a), 0), new Vector3d(to.x(a), to.y(a), 0), rotation, scale);
    }
}
