package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaneTest {
    private static Plane plane(int width, int height, int... codes) {
        Plane plane = new Plane(new PictureSize(width, height));
        for (int dot = 0; dot < plane.codes.length; dot++) {
            plane.codes[dot] = (byte) codes[dot % codes.length];
        }
        return plane;
    }

    /** Linear light of sRGB codes: IEC 61966-2-1, V / 12.92 up to 0.04045, ((V + 0.055) / 1.055)^2.4 above. */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "1, 0.000303526983549",
        "10, 0.00303526983549",
        "11, 0.0033465357639",
        "64, 0.051269458374",
        "128, 0.215860500114",
        "188, 0.502886458033",
        "254, 0.991102097114",
        "255, 1"
    })
    void takesCodesForSrgb(int code, double light) {
        Plane plane = plane(1, 1, code);
        assertThat((double) plane.light(0)).isCloseTo(light, within(1e-7));
        assertThat(plane.code(0)).isEqualTo(code);
        assertThat((double) Plane.light((byte) code)).isCloseTo(light, within(1e-7));
        assertThat((double) plane.lightAt(0, 0)).isCloseTo(light, within(1e-6));
    }

    /** Up to code 10 every code is 1 / (12.92 * 255) of light; from 254 to 255 it is 1 - 0.991102. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.000303526984",
        "0.0005, 0.000303526984",
        "1, 0.008897902886",
        "7, 0.008897902886",
        "-3, 0.000303526984"
    })
    void knowsHowMuchLightACodeIs(double light, double perCode) {
        assertThat(Plane.lightPerCode(light)).isCloseTo(perCode, within(1e-7));
    }

    @Test
    void isTheDotsThemselvesWhereTheseAre() {
        Plane plane = plane(5, 4, 3, 200, 17, 90, 255, 40, 120);
        for (int y = 0; y < 4; y++) {
            for (int x = 0; x < 5; x++) {
                assertThat(plane.lightAt(x, y)).isCloseTo(plane.light(y * 5 + x), within(1e-6f));
            }
        }
    }

    /**
     * Half-way between dots the cubic of Catmull and Rom, "A Class of Local Interpolating Splines" (1974), weighs the
     * four nearest -1/16, 9/16, 9/16 and -1/16, here of one row that is the same in all rows.
     */
    @Test
    void liesOnTheCubicBetweenDots() {
        Plane plane = plane(6, 5, 0, 60, 250, 180, 20, 90);
        double expected = (-plane.light(1) + 9 * plane.light(2) + 9 * plane.light(3) - plane.light(4)) / 16;
        assertThat((double) plane.lightAt(2.5, 2)).isCloseTo(expected, within(1e-6));
        assertThat((double) plane.lightAt(2.5, 1.3)).isCloseTo(expected, within(1e-6));
    }

    /** The spline goes through straight lines, so it is what a ramp is; 0, 1 and 2 are on the straight part of sRGB. */
    @ParameterizedTest
    @CsvSource({"1.25, 1", "2.5, 1.5", "3.75, 2.2"})
    void followsARamp(double x, double y) {
        Plane plane = plane(6, 5, 1, 2, 3, 4, 5, 6);
        assertThat((double) plane.lightAt(x, y)).isCloseTo((1 + x) / 12.92 / 255, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"-9, 0.5", "-9, -9", "30, 30", "1, 50", "-0.4, 2"})
    void goesOnBeyondItsEdges(double x, double y) {
        Plane grey = plane(4, 3, 128);
        assertThat((double) grey.lightAt(x, y)).isCloseTo(0.215860500114, within(1e-6));
    }

    @Test
    void knowsItsSize() {
        PictureSize size = new PictureSize(4, 3);
        assertThat(new Plane(size).codes).hasSize(12).containsOnly(0);
        assertThat(size).hasToString("4 x 3");
        assertThat(size.isUpright()).isFalse();
        assertThat(new PictureSize(3, 4).isUpright()).isTrue();
        assertThat(new PictureSize(3, 3).isUpright()).isFalse();
    }

    /** Cameras and JPEG leave a few codes below 255 where a light has no room for more. */
    @Test
    void someCodesBelowWhiteAreBurntOut() {
        assertThat(Plane.light((byte) 251)).isGreaterThan(Plane.BURNT_LIGHT);
        assertThat(Plane.light((byte) 249)).isLessThan(Plane.BURNT_LIGHT);
    }

    @Test
    void findsKeptDotsByTheirPlace() {
        int[] dots = {0, 3, 4, 7, 11};
        KeptDots kept = new KeptDots(4, dots);
        assertThat(kept.count()).isEqualTo(5);
        for (int dot = 0; dot < 12; dot++) {
            int index = Arrays.binarySearch(dots, dot);
            assertThat(kept.at(dot % 4, dot / 4)).isEqualTo(index < 0 ? -1 : index);
        }
        assertThat(kept.x(3)).isEqualTo(3);
        assertThat(kept.y(3)).isEqualTo(1);
        assertThat(kept.dot(4)).isEqualTo(11);
    }

    /** What is left of the left edge is not what is at the right edge of the row above. */
    @Test
    void noDotIsBeyondTheEdge() {
        KeptDots all = new KeptDots(2, new int[] {0, 1, 2, 3});
        assertThat(all.at(-1, 1)).isEqualTo(-1);
        assertThat(all.at(2, 0)).isEqualTo(-1);
        assertThat(all.at(0, -1)).isEqualTo(-1);
        assertThat(all.at(0, 2)).isEqualTo(-1);
    }
}
