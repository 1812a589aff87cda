package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lines fed at one end, at both, in the middle and at many points: against what Kirchhoff's laws give in closed form,
 * and against a dense solution of all node equations by another library.
 */
class LineNetworkTest {
    private static final double CLOSE = 1e-9;

    private static double[] constant(int count, double value) {
        double[] values = new double[count];
        Arrays.fill(values, value);
        return values;
    }

    private static LineNetwork.Source source(int pixelFromOne, double ohms) {
        return new LineNetwork.Source(pixelFromOne - 1, ohms, 12);
    }

    private static double[] drops(LineNetwork network) {
        return IntStream.range(0, network.pixelCount())
                .mapToDouble(network::drop)
                .toArray();
    }

    private static double[] solved(LineNetwork network, double[] amps) {
        assertThat(network.solve(amps)).isCloseTo(Arrays.stream(amps).sum(), within(CLOSE));
        return drops(network);
    }

    /** r i k (2N + 1 - k)/2 with a lead as long as a segment: Kirchhoff, summed by hand. Worst r i N (N + 1)/2. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 50, 400})
    void fedAtOneEnd(int count) {
        LineNetwork network = new LineNetwork(constant(count - 1, 0.02), List.of(source(1, 0.02)));
        double[] drops = solved(network, constant(count, 0.06));
        for (int k = 1; k <= count; k++) {
            assertThat(drops[k - 1]).isCloseTo(0.02 * 0.06 * k * (2 * count + 1 - k) / 2, within(CLOSE));
        }
    }

    /** r i k (N + 1 - k)/2 with such leads at both ends. */
    @ParameterizedTest
    @ValueSource(ints = {2, 5, 50, 401})
    void fedAtBothEnds(int count) {
        LineNetwork network = new LineNetwork(constant(count - 1, 0.02), List.of(source(count, 0.02), source(1, 0.02)));
        double[] drops = solved(network, constant(count, 0.06));
        for (int k = 1; k <= count; k++) {
            assertThat(drops[k - 1]).isCloseTo(0.02 * 0.06 * k * (count + 1 - k) / 2, within(CLOSE));
        }
        assertThat(network.sourceAmps(0)).isCloseTo(0.03 * count, within(CLOSE));
        assertThat(network.sourceAmps(1)).isCloseTo(0.03 * count, within(CLOSE));
    }

    /** Fed directly at a node with n loads beyond it: r i j (2n + 1 - j)/2; 51 loads fed at the 26th drop 325 r i. */
    @Test
    void fedInTheMiddleWithoutALead() {
        LineNetwork network = new LineNetwork(constant(50, 1), List.of(source(26, 0)));
        double[] drops = solved(network, constant(51, 1));
        for (int j = 0; j <= 25; j++) {
            assertThat(drops[25 - j]).isCloseTo(j * (51 - j) / 2.0, within(CLOSE));
            assertThat(drops[25 + j]).isCloseTo(j * (51 - j) / 2.0, within(CLOSE));
        }
        assertThat(network.sourceAmps(0)).isCloseTo(51, within(CLOSE));
    }

    /** 50 pixels of 60 mA over 5 m of 18 AWG fed at one end: V(end) = R' L i (N + 1) = 0.320508 V. */
    @Test
    void theWorkedExampleOfAnEvenlySpacedLoad() {
        double segment = 2 * 0.0209482 * 5 / 50;
        LineNetwork network = new LineNetwork(constant(49, segment), List.of(source(1, segment)));
        assertThat(solved(network, constant(50, 0.06))[49]).isCloseTo(0.320508, within(2e-6));
    }

    /** Drops with segments and leads of 1 ohm and loads of 1 A, and what the feeds give; exact fractions. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1    | 5, 9, 12, 14, 15      | 5
            1, 5 | 2.5, 4, 4.5, 4, 2.5   | 2.5, 2.5
            3    | 8, 7, 5, 7, 8         | 5
            """)
    void fiveLoadsOfOneAmpere(String at, String drops, String feeds) {
        List<LineNetwork.Source> sources = Arrays.stream(numbers(at))
                .mapToObj(pixel -> source((int) pixel, 1))
                .toList();
        LineNetwork network = new LineNetwork(constant(4, 1), sources);
        assertThat(solved(network, constant(5, 1)))
                .usingComparatorWithPrecision(CLOSE)
                .containsExactly(numbers(drops));
        assertThat(IntStream.range(0, sources.size())
                        .mapToDouble(network::sourceAmps)
                        .toArray())
                .usingComparatorWithPrecision(CLOSE)
                .containsExactly(numbers(feeds));
    }

    /** Seven loads of 1 A fed at 1, 4 and 7 through 1 ohm each: 13/6, 10/3, 7/2, 8/3 and back. */
    @Test
    void sevenLoadsFedAtThreePoints() {
        LineNetwork network = new LineNetwork(constant(6, 1), List.of(source(1, 1), source(4, 1), source(7, 1)));
        assertThat(solved(network, constant(7, 1)))
                .usingComparatorWithPrecision(CLOSE)
                .containsExactly(13 / 6.0, 10 / 3.0, 3.5, 8 / 3.0, 3.5, 10 / 3.0, 13 / 6.0);
        assertThat(network.sourceAmps(1)).isCloseTo(8 / 3.0, within(CLOSE));
    }

    /** Three loads of 3/2 A, leads of 1/10, segments of 1/20 ohm; one feed of 12 V, the other of 11.8 V: 35 to 19. */
    @Test
    void feedsOfDifferentVolts() {
        LineNetwork network = new LineNetwork(
                constant(2, 0.05), List.of(new LineNetwork.Source(0, 0.1, 12), new LineNetwork.Source(2, 0.1, 11.8)));
        double[] drops = solved(network, constant(3, 1.5));
        assertThat(network.sourceVolts()).isEqualTo(12);
        assertThat(new double[] {12 - drops[0], 12 - drops[1], 12 - drops[2]})
                .usingComparatorWithPrecision(CLOSE)
                .containsExactly(281 / 24.0, 931 / 80.0, 1397 / 120.0);
        assertThat(network.sourceAmps(0)).isCloseTo(35 / 12.0, within(CLOSE));
        assertThat(network.sourceAmps(1)).isCloseTo(19 / 12.0, within(CLOSE));
    }

    /** Pixels at one place have one voltage, and leads to them are one: 3 A through 1 and 2 ohms, 2 V. */
    @Test
    void pixelsAtOnePlaceAreOneNode() {
        LineNetwork network = new LineNetwork(new double[] {0, 0}, List.of(source(1, 1), source(3, 2)));
        assertThat(solved(network, constant(3, 1)))
                .usingComparatorWithPrecision(CLOSE)
                .containsExactly(2, 2, 2);
        assertThat(network.sourceAmps(0)).isCloseTo(2, within(CLOSE));
        assertThat(network.sourceAmps(1)).isCloseTo(1, within(CLOSE));
    }

    /** What a lead without resistance gives is what the others do not. */
    @Test
    void aFeedWithoutALeadHoldsItsNode() {
        LineNetwork network = new LineNetwork(constant(2, 1), List.of(source(1, 0), source(1, 0), source(3, 1)));
        double[] drops = solved(network, constant(3, 1));
        assertThat(drops[0]).isZero();
        double given = network.sourceAmps(0) + network.sourceAmps(1) + network.sourceAmps(2);
        assertThat(given).isCloseTo(3, within(CLOSE));
        assertThat(network.sourceAmps(0)).isEqualTo(network.sourceAmps(1));
        assertThat(network.sourceAmps(2)).isCloseTo(drops[2], within(CLOSE));
    }

    /** Lines of any make: every node equation written out, and solved by LU decomposition of the full matrix. */
    @Test
    void agreesWithADenseSolutionByAnotherLibrary() {
        SplittableRandom random = new SplittableRandom(13);
        for (int round = 0; round < 120; round++) {
            int pixels = 1 + random.nextInt(90);
            double[] ohms = random.doubles(pixels - 1, 0.0005, 0.05).toArray();
            double[] amps = random.doubles(pixels, 0, 0.08).toArray();
            List<LineNetwork.Source> sources = new ArrayList<>();
            int feeds = 1 + random.nextInt(7);
            for (int i = 0; i < feeds; i++) {
                double volts = round % 2 == 0 ? 12 : 11.5 + random.nextDouble();
                sources.add(new LineNetwork.Source(random.nextInt(pixels), 0.01 + random.nextDouble(), volts));
            }
            LineNetwork network = new LineNetwork(ohms, sources);
            double[] drops = solved(network, amps);
            double[] dense = denseVolts(ohms, sources, amps);
            for (int i = 0; i < pixels; i++) {
                assertThat(network.sourceVolts() - drops[i]).isCloseTo(dense[i], within(CLOSE));
            }
            double given = 0;
            for (int i = 0; i < feeds; i++) {
                given += network.sourceAmps(i);
            }
            assertThat(given).isCloseTo(Arrays.stream(amps).sum(), within(CLOSE));
        }
    }

    private static double[] denseVolts(double[] ohms, List<LineNetwork.Source> sources, double[] amps) {
        int pixels = amps.length;
        RealMatrix siemens = new Array2DRowRealMatrix(pixels, pixels);
        RealVector currents = new ArrayRealVector(amps).mapMultiply(-1);
        for (int i = 0; i + 1 < pixels; i++) {
            double g = 1 / ohms[i];
            siemens.addToEntry(i, i, g);
            siemens.addToEntry(i + 1, i + 1, g);
            siemens.addToEntry(i, i + 1, -g);
            siemens.addToEntry(i + 1, i, -g);
        }
        for (LineNetwork.Source source : sources) {
            siemens.addToEntry(source.pixel(), source.pixel(), 1 / source.ohms());
            currents.addToEntry(source.pixel(), source.volts() / source.ohms());
        }
        return new LUDecomposition(siemens).getSolver().solve(currents).toArray();
    }

    /** A long line fed every hundred pixels: what is summed over the whole of it must not drown what drops. */
    @Test
    void aLineOfTenThousandPixelsStaysExact() {
        int count = 10_000;
        List<LineNetwork.Source> sources = IntStream.rangeClosed(0, 100)
                .mapToObj(i -> new LineNetwork.Source(Math.min(count - 1, 100 * i), 0, 12))
                .toList();
        LineNetwork network = new LineNetwork(constant(count - 1, 0.02), sources);
        double[] drops = solved(network, constant(count, 0.04));
        for (int k = 0; k < 9900; k++) {
            int j = k % 100;
            assertThat(drops[k]).isCloseTo(0.02 * 0.04 * j * (100 - j) / 2, within(CLOSE));
        }
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(",")).mapToDouble(Double::parseDouble).toArray();
    }
}
