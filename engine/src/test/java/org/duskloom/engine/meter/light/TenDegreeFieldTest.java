package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Areas that flash, as shares of 0.006 steradian (WCAG 2.2): at 10 m 0.6 square metres, in a field that is 2 x
 * 10 m x tan 5 degrees = 1.75 m wide. A grid of pixels 100 mm apart has 0.01 square metres for each of them.
 */
class TenDegreeFieldTest {
    private static final Offset<Double> ROUNDING = within(1e-9);

    /** What is allowed grows with the square of the distance: 0.15, 0.6 and 2.4 square metres. */
    @ParameterizedTest
    @CsvSource({"5, 0.0666666667", "10, 0.0166666667", "20, 0.0041666667"})
    void allowsMoreFromFarther(double metres, double share) {
        assertThat(shareOf(row(3, 100), metres, 1)).isCloseTo(share, ROUNDING);
    }

    /** Pixels 5 mm apart count as 10 mm wide, those 300 mm apart as 100 mm; 40 mm as they are. */
    @ParameterizedTest
    @CsvSource({"5, 0.0001", "10, 0.0001", "40, 0.0016", "100, 0.01", "300, 0.01"})
    void takesPixelsAsSquares(double pitch, double squareMetres) {
        assertThat(shareOf(row(3, pitch), 10, 3)).isCloseTo(3 * squareMetres / 0.6, ROUNDING);
    }

    /** The most of all frames is told, not the last and not the sum. */
    @Test
    void keepsTheMost() {
        TenDegreeField field = new TenDegreeField(row(9, 100), 0.001, 10);
        assertThat(field.mostShare()).isZero();
        field.look(new int[] {0, 4, 8}, 3);
        field.look(new int[] {1, 2, 3, 4, 5}, 2);
        assertThat(field.mostShare()).isCloseTo(0.03 / 0.6, ROUNDING);
        field.look(new int[] {1, 2, 3, 4, 5}, 5);
        assertThat(field.mostShare()).isCloseTo(0.05 / 0.6, ROUNDING);
    }

    /**
     * Two squares of 40 pixels, more together than is allowed: seen in one field up to its width, in two
     * beyond.
     */
    @ParameterizedTest
    @CsvSource({"1, 80", "2.9, 40"})
    void addsUpWhatIsInOneField(double metresApart, int pixels) {
        double[] x = new double[80];
        double[] y = new double[80];
        for (int i = 0; i < 80; i++) {
            x[i] = 100 * (i % 8) + (i < 40 ? 0 : 1000 * metresApart);
            y[i] = 100 * (i / 8 % 5);
        }
        double share = shareOf(new Positions(x, y, new double[80]), 10, 80);
        assertThat(share).isCloseTo(pixels * 0.01 / 0.6, within(1e-9));
    }

    /**
     * Never too little: no less than the sum in a field round any place, and no more than in one half as wide
     * again.
     */
    @Test
    void findsNoLessThanAnyField() {
        SplittableRandom random = new SplittableRandom(11);
        double[] x = random.doubles(700, 0, 5000).toArray();
        double[] y = random.doubles(700, 0, 5000).toArray();
        double share = shareOf(new Positions(x, y, new double[700]), 10, 700);
        double[] side = PixelSpacing.nearest(x, y, 100);
        double most = 0;
        double mostWider = 0;
        for (int cx = 0; cx <= 5000; cx += 50) {
            for (int cy = 0; cy <= 5000; cy += 50) {
                most = Math.max(most, areaAround(cx, cy, 874.8, x, y, side));
                mostWider = Math.max(mostWider, areaAround(cx, cy, 1.5 * 874.8, x, y, side));
            }
        }
        assertThat(share * 0.6).isBetween(most, mostWider);
    }

    private static double areaAround(double cx, double cy, double radius, double[] x, double[] y, double[] side) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            boolean isIn = Math.hypot(x[i] - cx, y[i] - cy) <= radius;
            sum += isIn ? Math.pow(Math.max(10, side[i]) / 1000, 2) : 0;
        }
        return sum;
    }

    private static double shareOf(Positions stage, double metres, int count) {
        TenDegreeField field = new TenDegreeField(stage, 0.001, metres);
        field.look(IntStream.range(0, count).toArray(), count);
        return field.mostShare();
    }

    /** In millimetres. */
    private static Positions row(int count, double pitch) {
        double[] x = IntStream.range(0, count).mapToDouble(i -> i * pitch).toArray();
        return new Positions(x, new double[count], new double[count]);
    }
}
