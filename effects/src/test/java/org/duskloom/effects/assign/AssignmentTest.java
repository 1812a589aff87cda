package org.duskloom.effects.assign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AssignmentTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final Offset<Double> ROUNDING = within(1e-9);

    /**
     * The tables, and the least total of each, from the documentation and the tests of SciPy's {@code
     * linear_sum_assignment}; the two of products i · j are from its test "test_linear_sum_assignment" too
     * (rearrangement inequality: the factors go together in opposite order).
     */
    static Stream<Arguments> published() {
        return Stream.of(
                Arguments.of(new double[][] {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}}, 5, new int[] {1, 0, 2}),
                Arguments.of(
                        new double[][] {{400, 150, 400}, {400, 450, 600}, {300, 225, 300}}, 850, new int[] {1, 0, 2}),
                Arguments.of(
                        new double[][] {{400, 150, 400, 1}, {400, 450, 600, 2}, {300, 225, 300, 3}},
                        452,
                        new int[] {1, 3, 0}),
                Arguments.of(new double[][] {{10, 10, 8}, {9, 8, 1}, {9, 7, 4}}, 18, new int[] {0, 2, 1}),
                Arguments.of(new double[][] {{10, 10, 8, 11}, {9, 8, 1, 1}, {9, 7, 4, 10}}, 15, new int[] {0, 3, 2}),
                Arguments.of(new double[][] {{10, INF, INF}, {INF, INF, 1}, {INF, 7, INF}}, 18, new int[] {0, 2, 1}),
                Arguments.of(products(4), 20, new int[] {3, 2, 1, 0}),
                Arguments.of(products(5), 35, new int[] {4, 3, 2, 1, 0}));
    }

    private static double[][] products(int size) {
        double[][] table = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                table[i][j] = (i + 1) * (j + 1);
            }
        }
        return table;
    }

    @ParameterizedTest
    @MethodSource("published")
    void findsThePublishedOptimum(double[][] table, double least, int[] columns) {
        assertThat(total(table, solve(table))).isEqualTo(least);
        assertThat(total(table, columns)).isEqualTo(least);
        assertThat(solve(table)).doesNotHaveDuplicates();
    }

    /** Turned, the same pairs cost the same. Asserted by SciPy too. */
    @ParameterizedTest
    @MethodSource("published")
    void findsTheSameCostsInTheTurnedTable(double[][] table, double least, int[] columns) {
        double[][] turned = turned(table);
        int[] rowOfColumn = solve(turned);

        assertThat(costs(turned, rowOfColumn)).containsExactly(costs(table, solve(table)));
        assertThat(IntStream.of(rowOfColumn).filter(row -> row >= 0).toArray()).doesNotHaveDuplicates();
    }

    /** All rows cost the same everywhere: nobody has a reason to leave the first free column. Asserted by SciPy too. */
    @Test
    void keepsTheOrderOfAConstantTable() {
        double[][] table = new double[8][8];
        for (double[] row : table) {
            Arrays.fill(row, 3);
        }
        assertThat(solve(table)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
    }

    /** Against every permutation there is; the numbers are few, so that many pairings tie. */
    @ParameterizedTest
    @CsvSource({"1,1", "2,2", "2,5", "3,3", "4,4", "4,7", "5,5", "6,6", "6,8", "7,7", "8,8", "5,2", "8,3"})
    void agreesWithExhaustiveSearch(int rows, int columns) {
        SplittableRandom random = new SplittableRandom(rows * 100 + columns);
        Assignment assignment = new Assignment();
        for (int round = 0; round < 40; round++) {
            int differentCosts = 2 + round * round;
            double[][] table = new double[rows][columns];
            Arrays.stream(table).forEach(row -> Arrays.setAll(row, j -> random.nextInt(differentCosts) - 3));
            int[] found = assignment.solve(flat(table), rows, columns).orElseThrow();

            assertThat(Arrays.stream(found).filter(column -> column >= 0).toArray())
                    .hasSize(Math.min(rows, columns))
                    .doesNotHaveDuplicates();
            assertThat(total(table, found)).isEqualTo(rows <= columns ? search(table) : search(turned(table)));
        }
    }

    /** The greatest total is the least of the negated table: by exhaustive search as well. */
    @Test
    void findsTheGreatestTotalOfANegatedTable() {
        SplittableRandom random = new SplittableRandom(11);
        double[][] table = new double[6][6];
        Arrays.stream(table).forEach(row -> Arrays.setAll(row, j -> random.nextInt(100)));
        double[][] negated = Arrays.stream(table)
                .map(row -> DoubleStream.of(row).map(cost -> -cost).toArray())
                .toArray(double[][]::new);

        assertThat(total(table, solve(negated))).isEqualTo(-search(negated));
    }

    /**
     * Whatever the size, prices prove an optimum: if no row and column together cost more than their pair, and those
     * paired exactly as much, no other assignment can be cheaper (duality of linear programmes; Kuhn 1955). Columns
     * that are free must have price 0 and others no more.
     */
    @ParameterizedTest
    @CsvSource({"60,60", "60,61", "40,90", "200,200"})
    void isProvenByItsPrices(int rows, int columns) {
        SplittableRandom random = new SplittableRandom(rows + columns);
        double[] table = random.doubles((long) rows * columns).toArray();
        AugmentingPaths paths = new AugmentingPaths();
        paths.start(table, rows, columns);

        assertThat(paths.addRows()).isTrue();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double reduced = table[row * columns + column] - paths.rowPrice(row) - paths.columnPrice(column);
                assertThat(reduced).isGreaterThan(-1e-12);
                if (paths.columnOfRow()[row] == column) {
                    assertThat(reduced).isCloseTo(0, ROUNDING);
                    assertThat(paths.rowOfColumn()[column]).isEqualTo(row);
                }
            }
        }
        for (int column = 0; column < columns; column++) {
            assertThat(paths.columnPrice(column)).isLessThanOrEqualTo(0);
            assertThat(paths.rowOfColumn()[column] < 0 ? paths.columnPrice(column) : 0)
                    .isZero();
        }
    }

    @Test
    void forgetsTheTableBefore() {
        Assignment assignment = new Assignment();
        assignment.solve(flat(products(5)), 5, 5);
        assertThat(assignment
                        .solve(new double[] {4, 1, 3, 2, 0, 5, 3, 2, 2}, 3, 3)
                        .orElseThrow())
                .containsExactly(1, 0, 2);
    }

    /** Asserted by SciPy too: a column, or a row, that nobody may have leaves somebody without. */
    @Test
    void findsNothingWhereForbiddenPairsCannotBeAvoided() {
        assertThat(new Assignment().solve(new double[] {INF, 1, INF, 2}, 2, 2)).isEmpty();
        assertThat(new Assignment().solve(new double[] {INF, INF, 1, 2}, 2, 2)).isEmpty();
        assertThat(new Assignment().solve(new double[] {1, INF, 2, INF, 3, INF}, 3, 2))
                .isEmpty();
        assertThat(new Assignment().solve(new double[] {1, INF, INF, 2, INF, INF, 3, 4, 5}, 3, 3))
                .isEmpty();
    }

    /** Asserted by SciPy too. */
    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoCost(double cost) {
        assertThatThrownBy(() -> new Assignment().solve(new double[] {1, 2, cost, 3}, 2, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(cost));
    }

    @Test
    void refusesATableThatIsTooShort() {
        assertThatThrownBy(() -> new Assignment().solve(new double[3], 2, 2))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Assignment().solve(new double[3], -1, 2))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void givesNothingForAnEmptyTable() {
        assertThat(new Assignment().solve(new double[0], 0, 0).orElseThrow()).isEmpty();
        assertThat(new Assignment().solve(new double[0], 0, 3).orElseThrow()).isEmpty();
        assertThat(new Assignment().solve(new double[0], 2, 0).orElseThrow()).containsExactly(-1, -1);
    }

    private static int[] solve(double[][] table) {
        return new Assignment()
                .solve(flat(table), table.length, table[0].length)
                .orElseThrow();
    }

    private static double[] flat(double[][] table) {
        return Arrays.stream(table).flatMapToDouble(DoubleStream::of).toArray();
    }

    private static double[][] turned(double[][] table) {
        double[][] turned = new double[table[0].length][table.length];
        for (int i = 0; i < table.length; i++) {
            for (int j = 0; j < turned.length; j++) {
                turned[j][i] = table[i][j];
            }
        }
        return turned;
    }

    private static double total(double[][] table, int[] columns) {
        return DoubleStream.of(costs(table, columns)).sum();
    }

    private static double[] costs(double[][] table, int[] columns) {
        return IntStream.range(0, table.length)
                .filter(row -> columns[row] >= 0)
                .mapToDouble(row -> table[row][columns[row]])
                .sorted()
                .toArray();
    }

    private static double search(double[][] table) {
        return search(table, 0, new boolean[table[0].length]);
    }

    private static double search(double[][] table, int row, boolean[] taken) {
        if (row == table.length) {
            return 0;
        }
        double best = INF;
        for (int column = 0; column < taken.length; column++) {
            if (!taken[column]) {
                taken[column] = true;
                best = Math.min(best, table[row][column] + search(table, row + 1, taken));
                taken[column] = false;
            }
        }
        return best;
    }
}
