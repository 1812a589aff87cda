package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Round lights whose places are known, in pictures without noise. */
class AlignerTest {
    private static final PictureSize SIZE = new PictureSize(160, 120);
    private static final double BLUR = 1.6;
    private static final int LIGHTS = 20;

    /** Not in rows, so that no shift but the right one lays lights on lights. */
    private static double x(int light) {
        return 20 + light * 37 % 120 + 0.31 * light % 1;
    }

    private static double y(int light) {
        return 20 + light * 53 % 80 + 0.17 * light % 1;
    }

    private static Plane picture(double dx, double dy, double peak, IntPredicate isLit) {
        Plane plane = new Plane(SIZE);
        for (int dot = 0; dot < plane.codes.length; dot++) {
            double sum = 0;
            for (int light = 0; light < LIGHTS; light++) {
                double ax = dot % SIZE.width() - x(light) - dx;
                double ay = dot / SIZE.width() - y(light) - dy;
                sum += isLit.test(light) ? peak * Math.exp(-(ax * ax + ay * ay) / (2 * BLUR * BLUR)) : 0;
            }
            plane.codes[dot] = code(sum);
        }
        return plane;
    }

    /** IEC 61966-2-1. */
    private static byte code(double light) {
        double code = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (byte) Math.round(255 * Math.min(1, code));
    }

    private static Aligner aligner(Plane dark) {
        return Aligner.of(Reference.of(SIZE, dark, picture(0, 0, 0.5, light -> true), LIGHTS));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "3, -2", "0.4, -0.3", "-1.5, 2.25", "6.2, 0", "9, 0", "-13.5, 12.25"})
    void findsHowFarThePictureIsMoved(double dx, double dy) {
        Shift shift = aligner(new Plane(SIZE)).of(picture(dx, dy, 0.5, light -> true));
        assertThat(shift.dx()).isCloseTo(dx, within(0.06));
        assertThat(shift.dy()).isCloseTo(dy, within(0.06));
    }

    /** In the picture of a bit half of the lights are dark, and it may be exposed otherwise. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.5", "1, 0.1", "0, 0.9"})
    void doesWithHalfOfTheLights(int rest, double peak) {
        Shift shift = aligner(new Plane(SIZE)).of(picture(2.3, -1.2, peak, light -> light % 2 == rest));
        assertThat(shift.dx()).isCloseTo(2.3, within(0.1));
        assertThat(shift.dy()).isCloseTo(-1.2, within(0.1));
    }

    /** A lamp that flickers, brighter in the lit picture than in the dark one, would hold all pictures where it is. */
    @Test
    void leavesLampsOut() {
        Plane dark = new Plane(SIZE);
        Plane moved = picture(3, 0, 0.5, light -> light % 2 == 0);
        for (int y = 3; y < 12; y++) {
            for (int x = 60; x < 75; x++) {
                dark.codes[y * SIZE.width() + x] = (byte) 200;
                moved.codes[y * SIZE.width() + x] = (byte) 255;
            }
        }
        Plane lit = picture(0, 0, 0.5, light -> true);
        for (int dot = 0; dot < lit.codes.length; dot++) {
            lit.codes[dot] = (byte) (dark.code(dot) > 0 ? 255 : lit.code(dot));
        }
        Shift shift = Aligner.of(Reference.of(SIZE, dark, lit, LIGHTS)).of(moved);
        assertThat(shift.dx()).isCloseTo(3, within(0.1));
        assertThat(shift.dy()).isCloseTo(0, within(0.1));
    }

    @Test
    void doesNotMoveAPictureWithoutLights() {
        Plane dark = new Plane(SIZE);
        assertThat(Aligner.of(Reference.of(SIZE, dark, dark, LIGHTS)).of(picture(3, 3, 0.5, light -> true)))
                .isEqualTo(Shift.NONE);
    }
}
