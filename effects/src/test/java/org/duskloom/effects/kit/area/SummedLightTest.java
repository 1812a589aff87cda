package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against sums that the test makes of many small parts of each box. */
class SummedLightTest {
    private static final int WIDTH = 23;
    private static final int HEIGHT = 17;
    private static final LightImage IMAGE = noise();

    /**
     * Three by two pixels of a picture that is 1 everywhere hold 6; half of a column more, and a quarter of a row, 3.5
     * · 2.25.
     */
    @Test
    void measuresTheBox() {
        float[] ones = new float[WIDTH * HEIGHT * 4];
        Arrays.fill(ones, 1);
        SummedLight light = SummedLight.withTable(new LightImage(WIDTH, HEIGHT, ones), false);
        assertThat(sums(light, 2, 3, 5, 5)).containsOnly(new double[] {6}, within(1e-12));
        assertThat(sums(light, 2, 3, 5.5, 5.25)).containsOnly(new double[] {3.5 * 2.25}, within(1e-12));
        assertThat(sums(light, 0, 0, WIDTH, HEIGHT)).containsOnly(new double[] {WIDTH * HEIGHT}, within(1e-9));
    }

    /** Boxes of any size and place, small ones that are added up and large ones that are found in the table. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void findsWhatIsInABox(boolean repeats) {
        SplittableRandom random = new SplittableRandom(8);
        SummedLight table = SummedLight.withTable(IMAGE, repeats);
        SummedLight plain = SummedLight.plain(IMAGE, repeats);
        for (int i = 0; i < 400; i++) {
            double wide = random.nextDouble(0.01, WIDTH);
            double high = random.nextDouble(0.01, HEIGHT);
            double left = random.nextDouble(repeats ? -wide : 0, repeats ? WIDTH : WIDTH - wide);
            double top = random.nextDouble(repeats ? -high : 0, repeats ? HEIGHT : HEIGHT - high);
            double[] expected = cutUp(left, top, left + wide, top + high);
            assertThat(sums(table, left, top, left + wide, top + high)).containsExactly(expected, within(1e-9));
            assertThat(sums(plain, left, top, left + wide, top + high)).containsExactly(expected, within(1e-9));
        }
    }

    private static double[] sums(SummedLight light, double left, double top, double right, double bottom) {
        double[] sums = new double[4];
        double area = light.add(left, top, right, bottom, sums);
        assertThat(area).isCloseTo((right - left) * (bottom - top), within(1e-9));
        return sums;
    }

    /** The box cut at all edges of pixels: the parts along each side, then every pair of parts. */
    private static double[] cutUp(double left, double top, double right, double bottom) {
        double[] sums = new double[4];
        for (double y = top; y < bottom; y = Math.floor(y) + 1) {
            double high = Math.min(bottom, Math.floor(y) + 1) - y;
            for (double x = left; x < right; x = Math.floor(x) + 1) {
                double wide = Math.min(right, Math.floor(x) + 1) - x;
                int pixel =
                        Math.floorMod((int) Math.floor(y), HEIGHT) * WIDTH + Math.floorMod((int) Math.floor(x), WIDTH);
                for (int channel = 0; channel < 4; channel++) {
                    sums[channel] += wide * high * IMAGE.light()[4 * pixel + channel];
                }
            }
        }
        return sums;
    }

    private static LightImage noise() {
        SplittableRandom random = new SplittableRandom(3);
        float[] light = new float[WIDTH * HEIGHT * 4];
        for (int i = 0; i < light.length; i++) {
            light[i] = (float) random.nextDouble();
        }
        return new LightImage(WIDTH, HEIGHT, light);
    }
}
