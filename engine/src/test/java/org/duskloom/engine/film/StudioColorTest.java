package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;

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
}
