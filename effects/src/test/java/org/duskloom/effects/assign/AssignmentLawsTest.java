package org.duskloom.effects.assign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What holds of the cheapest assignment of any table (H. W. Kuhn, "The Hungarian method for the assignment problem",
 * 1955): what is added to all costs of a row is paid once, and the order of rows and columns means nothing.
 */
class AssignmentLawsTest {
    private static final int SIZE = 12;

    private final Random random = new Random(53);
    private final double[] table = random.doubles(SIZE * SIZE, 0, 100).toArray();

    /** One for all tables, smaller and larger ones after each other. */
    private final Assignment assignment = new Assignment();

    private double total(double[] costs, int columns) {
        int rows = costs.length / columns;
        int[] found = assignment.solve(costs, rows, columns).orElseThrow();
        return IntStream.range(0, rows)
                .filter(row -> found[row] >= 0)
                .mapToDouble(row -> costs[row * columns + found[row]])
                .sum();
    }

    @Test
    void whatIsAddedToARowOrAColumnIsPaidOnce() {
        double before = total(table, SIZE);
        for (int line = 0; line < SIZE; line++) {
            double[] dearRow = table.clone();
            double[] dearColumn = table.clone();
            for (int i = 0; i < SIZE; i++) {
                dearRow[line * SIZE + i] += 250;
                dearColumn[i * SIZE + line] -= 40;
            }
            assertThat(total(dearRow, SIZE)).isCloseTo(before + 250, within(1e-9));
            assertThat(total(dearColumn, SIZE)).isCloseTo(before - 40, within(1e-9));
        }
    }

    @Test
    void theOrderOfRowsAndColumnsMeansNothing() {
        List<Integer> rows = new ArrayList<>(IntStream.range(0, SIZE).boxed().toList());
        List<Integer> columns = new ArrayList<>(rows);
        for (int round = 0; round < 20; round++) {
            Collections.shuffle(rows, random);
            Collections.shuffle(columns, random);
            double[] shuffled = new double[SIZE * SIZE];
            for (int i = 0; i < shuffled.length; i++) {
                shuffled[i] = table[rows.get(i / SIZE) * SIZE + columns.get(i % SIZE)];
            }
            assertThat(total(shuffled, SIZE)).isCloseTo(total(table, SIZE), within(1e-9));
        }
    }

    /** A further column may be cheaper for somebody, and is dearer for nobody; a further row has to be paid. */
    @Test
    void moreColumnsAreNoDearer() {
        double before = Double.POSITIVE_INFINITY;
        for (int columns = 5; columns <= SIZE; columns++) {
            double[] some = new double[5 * columns];
            for (int i = 0; i < some.length; i++) {
                some[i] = table[i / columns * SIZE + i % columns];
            }
            double now = total(some, columns);
            assertThat(now).isLessThanOrEqualTo(before);
            before = now;
        }
    }

    /** Of lights that go to each other's places the way there is as long as the way back. */
    @ParameterizedTest
    @CsvSource({"40, 40", "40, 25", "25, 40", "500, 450", "450, 500"})
    void theWayBackIsAsLong(int fromCount, int toCount) {
        Points from = Clouds.disc(fromCount, 1, 5);
        Points to = Clouds.box(toCount, 2);
        double there = new EvenPairing().pairs(from, to).totalSquaredDistance(from, to);
        double back = new EvenPairing().pairs(to, from).totalSquaredDistance(to, from);
        assertThat(back).isCloseTo(there, within(0.02 * there));
    }

    /** What one pairing remembers of other sets changes nothing, in whatever order they were asked for. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatItRemembersIsWhatItWouldFind(long seed) {
        EvenPairing remembering = new EvenPairing();
        List<Points> sets = new ArrayList<>(List.of(
                Clouds.ring(9, 1),
                Clouds.line(9, 0),
                Clouds.disc(9, 1, seed),
                Clouds.grid(16, -1, 2),
                Clouds.box(5, 1)));
        Collections.shuffle(sets, new Random(seed));
        for (int round = 0; round < 2; round++) {
            for (Points from : sets) {
                for (Points to : sets) {
                    Pairs known = remembering.pairs(from, to);
                    Pairs fresh = new EvenPairing().pairs(from, to);
                    assertThat(known.from()).containsExactly(fresh.from());
                    assertThat(known.to()).containsExactly(fresh.to());
                }
            }
        }
    }
}
