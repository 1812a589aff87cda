package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single dots of light on black: what is kept of them, and what is taken for usual. */
class ReferenceLightsTest {
    private static final PictureSize SIZE = new PictureSize(120, 90);

    /** @param dots column, row and code of each */
    private static Plane plane(int[]... dots) {
        Plane plane = new Plane(SIZE);
        for (int[] dot : dots) {
            plane.codes[dot[1] * SIZE.width() + dot[0]] = (byte) dot[2];
        }
        return plane;
    }

    private static Reference lit(int lights, int[]... dots) {
        return Reference.of(SIZE, new Plane(SIZE), plane(dots), lights);
    }

    /** Two dots more on every side, none beyond the edge, and none in the row before or after. */
    @ParameterizedTest
    @CsvSource({"50, 40, 25", "0, 40, 15", "119, 40, 15", "50, 0, 15", "50, 89, 15", "0, 0, 9", "119, 89, 9"})
    void theSurroundingsOfALightAreKept(int x, int y, int count) {
        Reference reference = lit(1, new int[] {x, y, 200});
        assertThat(reference.dots.count()).isEqualTo(count);
        for (int i = 0; i < count; i++) {
            assertThat(Math.abs(reference.dots.x(i) - x)).isLessThanOrEqualTo(2);
            assertThat(Math.abs(reference.dots.y(i) - y)).isLessThanOrEqualTo(2);
            boolean isIt = reference.dots.x(i) == x && reference.dots.y(i) == y;
            assertThat(reference.lit[i]).isEqualTo(isIt ? Plane.light((byte) 200) : 0);
            assertThat(reference.dark[i]).isZero();
        }
    }

    /** 16 codes may be noise or what JPEG makes of it. */
    @ParameterizedTest
    @CsvSource({"0, 16, 0", "0, 17, 25", "40, 56, 0", "40, 57, 25"})
    void aDotMustBeClearlyBrighter(int dark, int lit, int kept) {
        Reference reference = Reference.of(SIZE, plane(new int[] {50, 40, dark}), plane(new int[] {50, 40, lit}), 1);
        assertThat(reference.dots.count()).isEqualTo(kept);
        assertThat(reference.peaks).isEqualTo(kept / 25);
    }

    /** Where no light is seen nothing is kept, and nothing is divided by how bright it is. */
    @Test
    void aDarkPictureHasNothing() {
        Reference reference = lit(5);
        assertThat(reference.dots.count()).isZero();
        assertThat(reference.peaks).isZero();
        assertThat(reference.usualPeak).isZero();
        assertThat(new LightSpots(List.of(reference)).usualPeak()).isZero();
    }

    /** What is fainter than a fiftieth of a usual light is glow; code 38 has 0.0194 of white, code 39 has 0.0203. */
    @ParameterizedTest
    @CsvSource({"38, 25", "39, 50"})
    void glowIsNotKept(int code, int kept) {
        assertThat(lit(1, new int[] {20, 40, 255}, new int[] {90, 40, code})
                        .dots
                        .count())
                .isEqualTo(kept);
    }

    /** The median of as many of the brightest as there may be lights: reflections do not make it less. */
    @ParameterizedTest
    @CsvSource({"1, 250", "2, 240", "3, 240", "5, 230", "9, 210", "100, 210"})
    void aUsualLightIsOneInTheMiddle(int lights, int code) {
        int[][] dots = new int[9][];
        for (int i = 0; i < dots.length; i++) {
            dots[i] = new int[] {10 + 12 * (i * 4 % 9), 40, 250 - 10 * i};
        }
        Reference reference = lit(lights, dots);
        assertThat(reference.peaks).isEqualTo(9);
        assertThat(reference.usualPeak).isEqualTo(Plane.light((byte) code));
    }

    /** A light that is burnt out is a plateau, and still one light. */
    @Test
    void aPlateauIsOneLight() {
        int[][] dots = new int[12][];
        for (int i = 0; i < dots.length; i++) {
            dots[i] = new int[] {50 + i % 4, 40 + i / 4, 255};
        }
        assertThat(lit(1, dots).peaks).isEqualTo(1);
    }

    /** A lamp shines in both pictures; what is within six dots of it is told to be near, to all sides alike. */
    @ParameterizedTest
    @CsvSource({"6, 0, true", "-6, 0, true", "0, 6, true", "0, -6, true", "8, 0, false", "0, -8, false", "-8, 8, false"
    })
    void lightsNearALampAreMarked(int dx, int dy, boolean near) {
        int[] lamp = {60, 45, 255};
        int[] light = {60 + dx, 45 + dy, 200};
        Reference reference = Reference.of(SIZE, plane(lamp), plane(lamp, light), 1);
        int at = reference.dots.at(light[0], light[1]);
        assertThat(at).isNotNegative();
        assertThat(reference.nearLamp[at]).isEqualTo(near);
    }

    private static Plane noisy(double sigma, Random random) {
        Plane plane = new Plane(new PictureSize(700, 700));
        for (int dot = 0; dot < plane.codes.length; dot++) {
            plane.codes[dot] = (byte) Math.max(0, Math.min(255, Math.round(60 + sigma * random.nextGaussian())));
        }
        return plane;
    }

    /** Normal noise of so many codes in both; a median of whole codes may be a code too much, but never too low. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 5, 8})
    void noiseIsWhatItIs(double sigma) {
        Random random = new Random(4);
        Plane dark = noisy(sigma, random);
        Reference reference = Reference.of(dark.size, dark, noisy(sigma, random), 10);
        assertThat(reference.noiseCodes).isBetween(sigma - 0.1, sigma + 1 / 0.954);
        assertThat(reference.dots.count()).as("no dot is clear of it").isZero();
        assertThat(reference.noiseAt(1)).isCloseTo(reference.noiseCodes * 0.008897902886, within(1e-6));
    }

    /** Never less than one code, so that pictures without noise are not divided by nothing. */
    @Test
    void picturesWithoutNoiseHaveOneCode() {
        assertThat(lit(1, new int[] {5, 5, 200}).noiseCodes).isEqualTo(1);
    }
}
