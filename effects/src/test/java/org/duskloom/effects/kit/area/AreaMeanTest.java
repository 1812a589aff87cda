package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.duskloom.effects.kit.area.AreaKernel.Style;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Means of four opaque pixels in a row, with red 0, 1/4, 1/2 and 1, and of their like. */
class AreaMeanTest {
    private static final LightImage ROW = row(0, 0.25f, 0.5f, 1);
    private static final Style SHARP = new Style(false, true);
    private static final Style SMOOTH = new Style(false, false);
    private static final Style REPEATING = new Style(true, true);
    private static final Offset<Float> ROUNDING = within(1e-6f);

    /** A cell of one pixel, all of the row's height. Where it sticks out, what is beyond the edge is transparent. */
    @ParameterizedTest
    @CsvSource({
        "0.125, 0, 1",
        "0.625, 0.5, 1",
        // Half of the second pixel and half of the third.
        "0.5, 0.375, 1",
        // A quarter of the third, three quarters of the fourth: 1/8 + 3/4.
        "0.8125, 0.875, 1",
        // Half on the last pixel, half beyond: half of its light, half transparent.
        "1, 0.5, 0.5",
        "1.0625, 0.25, 0.25",
        "1.125, 0, 0",
        "7, 0, 0",
        "-0.125, 0, 0"
    })
    void isTheMeanOfACell(double shareX, float red, float alpha) {
        float[] light = light(ROW, new Footprint(1, 1), SHARP, shareX);
        assertThat(light[0]).isCloseTo(red, ROUNDING);
        assertThat(light[3]).isCloseTo(alpha, ROUNDING);
        assertThat(light[1]).isZero();
    }

    /**
     * A light on a hundredth of a pixel: sharp, it is in one pixel; smooth, half-way between two middles it has half of
     * each.
     */
    @ParameterizedTest
    @CsvSource({"0.51, 0.5", "0.74, 0.5", "0.49, 0.25"})
    void isSharpWithinAPixel(double shareX, float red) {
        assertThat(light(ROW, new Footprint(0.01, 0.01), SHARP, shareX)[0]).isCloseTo(red, ROUNDING);
    }

    /** Bilinear: 1/4 + (4·shareX - 3/2)/4 between the middles of the second pixel, at 3/8, and the third, at 5/8. */
    @ParameterizedTest
    @CsvSource({"0.375, 0.25", "0.5, 0.375", "0.4375, 0.3125", "0.625, 0.5", "0.01, 0", "0.99, 1"})
    void isSmoothBetweenPixels(double shareX, float red) {
        float[] light = light(ROW, new Footprint(0.01, 0.01), SMOOTH, shareX);
        assertThat(light[0]).isCloseTo(red, ROUNDING);
        assertThat(light[3]).isEqualTo(1);
    }

    /**
     * Over the edge it goes on with the other end: half of the last and half of the first; whole pictures away all is
     * alike.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.5", "-3, 0.5", "0.125, 0", "1.125, 0", "-0.125, 1", "12.375, 0.25"})
    void canRepeat(double shareX, float red) {
        float[] light = light(ROW, new Footprint(1, 1), REPEATING, shareX);
        assertThat(light[0]).isCloseTo(red, ROUNDING);
        assertThat(light[3]).isEqualTo(1);
    }

    /** A cell of 8 by 2 pixels about the whole picture of 4 by 1: a quarter of it is covered, with the mean 7/16. */
    @Test
    void canBeLargerThanThePicture() {
        float[] light = light(ROW, new Footprint(8, 2), SHARP, 0.5);
        assertThat(light[3]).isCloseTo(0.25f, ROUNDING);
        assertThat(light[0]).isCloseTo(0.4375f / 4, ROUNDING);
        assertThat(light(ROW, new Footprint(8, 2), REPEATING, 0.3)[0]).isCloseTo(0.4375f, ROUNDING);
    }

    /**
     * 1000 pixels that rise evenly, (i + 1/2)/1000: the mean of a cell is the value at its middle, but for the steps
     * that its edges cut. Over a share f of a step of length p the steps are f(1 - f)p²/2 short of the slope, so at
     * most p²/8, of a cell of the length c: p²/8c.
     */
    @ParameterizedTest
    @CsvSource({"1", "3.7", "8", "8.5", "50", "100", "333"})
    void isTheMiddleOfARisingCell(double cell) {
        float[] rising = new float[1000];
        for (int i = 0; i < rising.length; i++) {
            rising[i] = (i + 0.5f) / 1000;
        }
        double most = 1 / (8 * cell) / 1000;
        for (double shareX = 0.2; shareX < 0.8; shareX += 0.0371) {
            float red = light(row(rising), new Footprint(cell, 1), SHARP, shareX)[0];
            assertThat((double) red).isCloseTo(shareX, within(most + 1e-6));
        }
    }

    /** A column is to the height what a row is to the width, from the top. */
    @Test
    void countsRowsFromTheTop() {
        LightImage column = new LightImage(1, 4, ROW.light());
        float[] light = new float[4];
        AreaMean mean = new AreaMean(1, 4, SHARP);
        mean.begin(1, 1);
        mean.light(SummedLight.plain(column, false), 0.5, 0.8125, light);
        assertThat(light[0]).isCloseTo(0.875f, ROUNDING);
    }

    private static float[] light(LightImage image, Footprint footprint, Style style, double shareX) {
        float[] light = {9, 9, 9, 9};
        AreaMean mean = new AreaMean(image.width(), image.height(), style);
        mean.begin(footprint.cellWidth(), footprint.cellHeight());
        mean.light(SummedLight.withTable(image, style.repeats()), shareX, 0.5, light);
        return light;
    }

    private static LightImage row(float... red) {
        float[] light = new float[red.length * 4];
        for (int i = 0; i < red.length; i++) {
            light[4 * i] = red[i];
            light[4 * i + 3] = 1;
        }
        return new LightImage(red.length, 1, light);
    }
}
