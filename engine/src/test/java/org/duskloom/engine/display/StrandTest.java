package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What steps lay their pixels into, how much of it there may be, and where it came from. */
class StrandTest {
    private static Strand strand(int pixels) {
        Strand strand = new Strand(pixels);
        for (int i = 0; i < pixels; i++) {
            strand.add(i, -i, 0);
        }
        return strand;
    }

    /** A line that the wire goes through backwards still begins at its own beginning. */
    @Test
    void linesRunTheirOwnWay() {
        Strand strand = new Strand(7);
        for (int i = 0; i < 7; i++) {
            int first = i < 3 ? 0 : i < 6 ? 3 : 6;
            strand.add(new Point(i, 0, 0));
            if (i == 2 || i == 5 || i == 6) {
                strand.closeLine(first, i == 5);
            }
        }
        assertThat(strand.lines()).extracting(Arrays::toString).containsExactly("[0, 1, 2]", "[5, 4, 3]", "[6]");
    }

    /** One zero only (IEEE 754 has two), or equal places would not be equal to the bit. */
    @Test
    void aPlaceHasNoNegativeZero() {
        Strand strand = new Strand(2);
        strand.add(-0.0, -0.0, -0.0);
        strand.add(new Point(-0.0, 3, -0.0));
        for (double[] along : List.of(strand.x, strand.z)) {
            assertThat(Double.doubleToRawLongBits(along[0])).isZero();
            assertThat(Double.doubleToRawLongBits(along[1])).isZero();
        }
        assertThat(Double.doubleToRawLongBits(strand.y[0])).isZero();
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0, false", "10, -10, 10, false", "10.1, 0, 0, true", "0, -10.1, 0, true", "0, 0, 1e300, true"})
    void everyAxisMayReachTooFar(double x, double y, double z, boolean beyond) {
        Strand strand = strand(3);
        assertThat(strand.reachesBeyond(10)).isFalse();
        Strand far = new Strand(2);
        far.add(0, 0, 0);
        far.add(x, y, z);
        assertThat(far.reachesBeyond(10)).isEqualTo(beyond);
    }

    /** What is too much takes nothing away, so that smaller shapes behind it are still read. */
    @Test
    void anAllowanceIsKeptWhereItDoesNotSuffice() {
        Allowance allowance = new Allowance();
        assertThat(allowance.takePixels(PixelMap.MAX_PIXELS - 10)).isTrue();
        assertThat(allowance.takePixels(11)).isFalse();
        assertThat(allowance.takePixels(Long.MAX_VALUE)).isFalse();
        assertThat(allowance.takePixels(10)).isTrue();
        assertThat(allowance.takePixels(1)).isFalse();
        assertThat(allowance.takePixels(0)).isTrue();
        // Pixels listed in parts are counted apart.
        assertThat(allowance.takePartPixels(Allowance.MOST_PART_PIXELS + 1L)).isFalse();
        assertThat(allowance.takePartPixels(Allowance.MOST_PART_PIXELS)).isTrue();
        assertThat(allowance.takePartPixels(1)).isFalse();
    }

    /** Pixels of a file stand in lines of their own; pixels of a step where the step stands. */
    @Test
    void aPixelIsFoundWhereItWasWritten() {
        Shape.Run file = new Shape.Run("pixels", 10, 3, new Location("fence.csv", 2, 1), List.of(4, 2, 9));
        assertThat(file.locationOf(10)).hasToString("fence.csv:4:1");
        assertThat(file.locationOf(12)).hasToString("fence.csv:9:1");
        Shape.Run step = new Shape.Run("ring", 10, 3, new Location("garden.json", 7, 12));
        assertThat(step.locationOf(12)).hasToString("garden.json:7:12");
    }

    /** An inch is exactly 25.4 mm (international yard and pound agreement of 1959; ISO 80000-3, from memory). */
    @ParameterizedTest
    @CsvSource({"mm, 1", "cm, 10", "m, 1000", "in, 25.4"})
    void unitsAreWhatTheirWordsSay(String word, double millimetres) {
        assertThat(Units.values())
                .filteredOn(units -> units.word().equals(word))
                .extracting(Units::millimetres)
                .containsExactly(millimetres);
    }
}
