package org.duskloom.effects.assign;

import java.util.Arrays;

/**
 * The workings of an assignment of rows to as many or more columns. Rows and columns have prices whose sum is at most
 * the cost of every pair, and equal to that of the pairs taken; a column that is free has the price 0, others 0 or
 * less. First every row takes the column that is cheapest for it, where that is free; the others are added along
 * shortest augmenting paths.
 *
 * <p>H. W. Kuhn, Naval Research Logistics Quarterly 2:83-97, 1955; R. Jonker and A. Volgenant, Computing 38:325-340,
 * 1987; the rectangular form after D. F. Crouse, IEEE Transactions on Aerospace and Electronic Systems 52(4):1679-1696,
 * 2016.
 */
final class AugmentingPaths {
    private static final int NONE = -1;

    private double[] costs;
    private int rows;
    private int columns;

    private double[] rowPrice = {};
    private double[] columnPrice = {};
    private int[] columnOfRow = {};
    private int[] rowOfColumn = {};

    /** Of the path to each column, from the row that is being added: how long, and which row comes last. */
    private double[] length = {};

    private int[] rowBefore = {};
    /** The columns whose path is not settled yet, then those whose path is. */
    private int[] open = {};

    /** Begins with a table, with no row added. */
    void start(double[] table, int rowCount, int columnCount) {
        costs = table;
        rows = rowCount;
        columns = columnCount;
        if (columnPrice.length < columns) {
            rowPrice = new double[columns];
            columnPrice = new double[columns];
            columnOfRow = new int[columns];
            rowOfColumn = new int[columns];
            length = new double[columns];
            rowBefore = new int[columns];
            open = new int[columns];
        }
        Arrays.fill(columnPrice, 0, columns, 0);
        Arrays.fill(rowPrice, 0, rows, 0);
        Arrays.fill(rowOfColumn, 0, columns, NONE);
        Arrays.fill(columnOfRow, 0, rows, NONE);
    }

    /** Has a row in a column from the start, at prices that keep the rules. */
    void place(int row, int column, double priceOfRow, double priceOfColumn) {
        columnOfRow[row] = column;
        rowOfColumn[column] = row;
        rowPrice[row] = priceOfRow;
        columnPrice[column] = priceOfColumn;
    }

    /** Gives every row that has none a column; false if there is none for one of them. */
    boolean addRows() {
        for (int row = 0; row < rows; row++) {
            if (columnOfRow[row] == NONE) {
                takeCheapest(row);
            }
        }
        for (int row = 0; row < rows; row++) {
            if (columnOfRow[row] == NONE && !add(row)) {
                return false;
            }
        }
        return true;
    }

    /** The column of each row; may be longer than there are rows. */
    int[] columnOfRow() {
        return columnOfRow;
    }

    /** The row in each column, or -1; may be longer than there are columns. */
    int[] rowOfColumn() {
        return rowOfColumn;
    }

    /** The price of a row, once it is added. */
    double rowPrice(int row) {
        return rowPrice[row];
    }

    /** The price of a column. */
    double columnPrice(int column) {
        return columnPrice[column];
    }

    /** Prices a row at its least cost, and gives it the first free column of that cost, if there is one. */
    private void takeCheapest(int row) {
        int start = row * columns;
        double least = Double.POSITIVE_INFINITY;
        int free = NONE;
        for (int column = 0; column < columns; column++) {
            double cost = costs[start + column] - columnPrice[column];
            if (cost < least || cost == least && free == NONE) {
                least = cost;
                free = rowOfColumn[column] == NONE ? column : NONE;
            }
        }
        if (least == Double.POSITIVE_INFINITY) {
            return;
        }
        rowPrice[row] = least;
        if (free != NONE) {
            columnOfRow[row] = free;
            rowOfColumn[free] = row;
        }
    }

    /** Gives a row a column, moving others on where that is cheaper; false if there is none for it. */
    private boolean add(int row) {
        for (int i = 0; i < columns; i++) {
            open[i] = columns - 1 - i;
        }
        Arrays.fill(length, 0, columns, Double.POSITIVE_INFINITY);
        int openCount = columns;
        int last = row;
        double way = 0;
        while (last != NONE) {
            int next = settle(last, way, openCount);
            int column = open[next];
            way = length[column];
            if (way == Double.POSITIVE_INFINITY) {
                return false;
            }
            open[next] = open[--openCount];
            open[openCount] = column;
            last = rowOfColumn[column];
        }
        reprice(row, way, openCount);
        moveAlong(row, open[openCount]);
        return true;
    }

    /** Shortens the open paths by way of a row; gives the place, among the open, of the column with the shortest. */
    private int settle(int row, double way, int openCount) {
        double base = way - rowPrice[row];
        int start = row * columns;
        double shortest = Double.POSITIVE_INFINITY;
        int nearest = 0;
        for (int i = 0; i < openCount; i++) {
            int column = open[i];
            double through = base + costs[start + column] - columnPrice[column];
            if (through < length[column]) {
                length[column] = through;
                rowBefore[column] = row;
            }
            double now = length[column];
            if (now < shortest || now == shortest && rowOfColumn[column] == NONE) {
                shortest = now;
                nearest = i;
            }
        }
        return nearest;
    }

    private void reprice(int row, double way, int openCount) {
        rowPrice[row] += way;
        for (int i = openCount + 1; i < columns; i++) {
            int column = open[i];
            double saved = way - length[column];
            rowPrice[rowOfColumn[column]] += saved;
            columnPrice[column] -= saved;
        }
    }

    private void moveAlong(int row, int freeColumn) {
        int column = freeColumn;
        int mover = NONE;
        while (mover != row) {
            mover = rowBefore[column];
            int left = columnOfRow[mover];
            rowOfColumn[column] = mover;
            columnOfRow[mover] = column;
            column = left;
        }
    }
}
