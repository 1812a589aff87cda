package org.duskloom.engine.sound.music;

/**
 * Where a song becomes another: a checkerboard with soft edges along the diagonal of how alike its beats are (J.
 * Foote, Automatic Audio Segmentation Using a Measure of Audio Novelty, ICME 2000). The board is sgn i sgn j
 * exp(-(i^2 + j^2) / (2 (L v)^2)), i, j = -L..L, v = 0.5, over the sum of its magnitudes.
 */
final class Novelty {
    private static final double SPREAD = 0.5;

    private Novelty() {}

    static double[][] board(int reach) {
        double[][] board = new double[2 * reach + 1][2 * reach + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++) {
            for (int j = -reach; j <= reach; j++) {
                double width = reach * SPREAD;
                double size = StrictMath.exp(-(i * i + j * j) / (2 * width * width));
                board[i + reach][j + reach] = Integer.signum(i) * Integer.signum(j) * size;
                sum += Math.abs(board[i + reach][j + reach]);
            }
        }
        for (double[] row : board) {
            for (int j = 0; j < row.length; j++) {
                row[j] /= sum;
            }
        }
        return board;
    }

    /** How new what follows is at each row; 0 within the board's reach of both ends, where it would see the ends. */
    static double[] of(double[][] rows, int reach) {
        double[] novelty = new double[rows.length];
        double[][] board = board(reach);
        double[][] alike = alike(rows, 2 * reach);
        for (int n = reach; n < rows.length - reach; n++) {
            for (int i = -reach; i <= reach; i++) {
                for (int j = -reach; j <= reach; j++) {
                    int from = Math.min(n + i, n + j);
                    novelty[n] += board[i + reach][j + reach] * alike[from][Math.abs(i - j)];
                }
            }
        }
        return novelty;
    }

    /** The cosine of each row and those that follow it, as far as the board looks. */
    private static double[][] alike(double[][] rows, int reach) {
        double[][] alike = new double[rows.length][reach + 1];
        for (int n = 0; n < rows.length; n++) {
            for (int k = 0; k <= reach && n + k < rows.length; k++) {
                alike[n][k] = BeatFeatures.cosine(rows[n], rows[n + k]);
            }
        }
        return alike;
    }
}
