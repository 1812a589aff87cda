package org.duskloom.effects.assign;

import java.util.Arrays;
import java.util.Optional;

/**
 * Minimum-cost bipartite assignment: as many rows as can be, each to a column of its own, at the least total cost, in
 * O(rows² · columns). Holds its working memory, so that many small tables can be solved in a row. For one thread.
 */
public final class Assignment {
    private final AugmentingPaths paths = new AugmentingPaths();

    /** A solver without a table. */
    public Assignment() {}

    /**
     * Solves a table.
     *
     * @param table costs, row after row; positive infinity forbids
     * @return the column of each row, or -1 for the rows that go without where there are more rows than columns; empty
     *     if a forbidden pair cannot be avoided
     * @throws IllegalArgumentException if a cost is NaN or negative infinity, or if the table is too short
     */
    public Optional<int[]> solve(double[] table, int rows, int columns) {
        check(table, rows, columns);
        if (rows > columns) {
            paths.start(turned(table, rows, columns), columns, rows);
            return paths.addRows() ? Optional.of(Arrays.copyOf(paths.rowOfColumn(), rows)) : Optional.empty();
        }
        paths.start(table, rows, columns);
        return paths.addRows() ? Optional.of(Arrays.copyOf(paths.columnOfRow(), rows)) : Optional.empty();
    }

    private static void check(double[] table, int rows, int columns) {
        if (rows < 0 || columns < 0 || (long) rows * columns > table.length) {
            throw new IllegalArgumentException(rows + " by " + columns + " of " + table.length);
        }
        for (int i = 0; i < rows * columns; i++) {
            if (!(table[i] > Double.NEGATIVE_INFINITY)) {
                throw new IllegalArgumentException("no cost: " + table[i]);
            }
        }
    }

    private static double[] turned(double[] table, int rows, int columns) {
        double[] turned = new double[rows * columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                turned[column * rows + row] = table[row * columns + column];
            }
        }
        return turned;
    }
}
