package org.duskloom.engine.locate;

import java.util.Arrays;
import org.duskloom.engine.map.Positions;

/**
 * How a prop lies in the picture, roughly: each of its own axes as dots across and down, by least squares over all of
 * its pixels that were found. Where it is in the picture is left open, as a prop may bend and sag: that is told by the
 * neighbours of each pixel.
 */
final class PropView {
    /** So little of an axis along which a prop has no extent does not count. */
    private static final double RIDGE = 1e-9;

    private final Candidates candidates;
    private final Positions own;
    private final double[] across;
    private final double[] down;

    private PropView(Candidates candidates, Positions own, double[] across, double[] down) {
        this.candidates = candidates;
        this.own = own;
        this.across = across;
        this.down = down;
    }

    /** @param found the pixels of a prop that were found, not all at one place */
    static PropView of(int[] found, Candidates candidates, Positions own) {
        double[] mean = new double[5];
        for (int pixel : found) {
            double[] at = at(pixel, candidates, own);
            for (int i = 0; i < mean.length; i++) {
                mean[i] += at[i] / found.length;
            }
        }
        double[][] squares = new double[3][5];
        for (int pixel : found) {
            double[] at = at(pixel, candidates, own);
            for (int row = 0; row < 3; row++) {
                for (int column = 0; column < 5; column++) {
                    squares[row][column] += (at[row] - mean[row]) * (at[column] - mean[column]);
                }
            }
        }
        double ridge = RIDGE * (squares[0][0] + squares[1][1] + squares[2][2]);
        for (int axis = 0; axis < 3; axis++) {
            squares[axis][axis] += ridge;
        }
        return new PropView(candidates, own, solve(squares, 3), solve(squares, 4));
    }

    private static double[] at(int pixel, Candidates candidates, Positions own) {
        Blob blob = candidates.of(pixel);
        return new double[] {own.x(pixel), own.y(pixel), own.z(pixel), blob.x, blob.y};
    }

    private static double[] solve(double[][] squares, int rightSide) {
        return Elimination.solve(Arrays.stream(squares)
                .map(row -> new double[] {row[0], row[1], row[2], row[rightSide]})
                .toArray(double[][]::new));
    }

    /** How many dots a pixel is from where most of its neighbours would have it. */
    double strayed(int pixel, int[] near) {
        double[] x = new double[near.length];
        double[] y = new double[near.length];
        for (int i = 0; i < near.length; i++) {
            x[i] = candidates.of(near[i]).x + along(across, near[i], pixel);
            y[i] = candidates.of(near[i]).y + along(down, near[i], pixel);
        }
        return StrictMath.hypot(candidates.of(pixel).x - median(x), candidates.of(pixel).y - median(y));
    }

    private double along(double[] axes, int from, int to) {
        return axes[0] * (own.x(to) - own.x(from))
                + axes[1] * (own.y(to) - own.y(from))
                + axes[2] * (own.z(to) - own.z(from));
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return 0.5 * (values[(values.length - 1) / 2] + values[values.length / 2]);
    }
}
