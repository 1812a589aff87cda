package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudioColorTest {
    /** Recommendation ITU-R BT.601-7, and what ffmpeg 5.1.9 makes of the same colours. */
    @ParameterizedTest
    @CsvSource({
        "255, 0, 0, 81, 90, 240",
        "0, 255, 0, 145, 54, 34",
        "0, 0, 255, 41, 240, 110",
        "255, 255, 255, 235, 128, 128",
        "255, 215, 0, 190, 28, 161",
        "128, 128, 128, 126, 128, 128",
        "0, 0, 0, 16, 128, 128"
    })
    void coloursAreAsPublished(int red, int green, int blue, int y, int cb, int cr) {
        byte[] rgb = {0, 0, 0, (byte) red, (byte) green, (byte) blue, (byte) red, (byte) green, (byte) blue};
        byte[] planes = new byte[7];
        StudioColor.planes(rgb, 3, planes, 1, 2);
        assertThat(planes).containsExactly(0, y, y, cb, cb, cr, cr);
    }

    /**
     * Recommendation ITU-R BT.601-7, 2.5: Y of 0.299 R, 0.587 G and 0.114 B; colour differences over 1.772 and 1.402;
     * 219 and 224 steps. Any colour is within a little more than half a step of that, and within the limited range.
     */
    @Test
    void everyColourIsAsTheFormulaHasIt() {
        byte[] planes = new byte[3];
        for (int code = 0; code < 1 << 24; code += 97) {
            int red = code >> 16;
            int green = code >> 8 & 255;
            int blue = code & 255;
            StudioColor.planes(new byte[] {(byte) red, (byte) green, (byte) blue}, 0, planes, 0, 1);
            double luma = 0.299 * red + 0.587 * green + 0.114 * blue;
            double[] exact = {
                16 + 219 * luma / 255, 128 + 224 * (blue - luma) / 1.772 / 255, 128 + 224 * (red - luma) / 1.402 / 255
            };
            for (int plane = 0; plane < 3; plane++) {
                int value = planes[plane] & 255;
                assertThat(Math.abs(value - exact[plane])).isLessThan(0.505);
                assertThat(value).isBetween(16, plane == 0 ? 235 : 240);
            }
        }
    }

    /** A grey has no colour in it, and the brighter one is never darker. */
    @Test
    void greysStayGrey() {
        int before = 15;
        for (int code = 0; code < 256; code++) {
            byte grey = (byte) code;
            byte[] planes = new byte[3];
            StudioColor.planes(new byte[] {grey, grey, grey}, 0, planes, 0, 1);
            assertThat(planes[1] & 255).isEqualTo(128);
            assertThat(planes[2] & 255).isEqualTo(128);
            assertThat(planes[0] & 255).isGreaterThanOrEqualTo(before);
            before = planes[0] & 255;
        }
    }
}
