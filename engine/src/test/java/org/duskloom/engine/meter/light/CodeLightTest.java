package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Relative luminance as WCAG 2.2 defines it, and R - G - B, of colours by their sRGB codes, worked out from these. */
class CodeLightTest {
    /** To a whole number in 33 millions, of three that are rounded. */
    private static final double CLOSE = 2.5 / CodeLight.ONE;

    @ParameterizedTest
    @CsvSource({
        "000000, 0, 0",
        "ffffff, 1, -1",
        "ff0000, 0.2126, 1",
        "00ff00, 0.7152, -1",
        "0000ff, 0.0722, -1",
        "800000, 0.045891942, 0.215860500",
        "ff6347, 0.30638613, 0.812218164",
        "ffa500, 0.48170267, 0.62373788"
    })
    void tellsLuminanceAndExcessOfRed(String hex, double luminance, double excess) {
        byte[] rgb = rgb(hex);

        long light = CodeLight.of(rgb, 1);

        assertThat((double) CodeLight.luminance(light) / CodeLight.ONE).isCloseTo(luminance, within(CLOSE));
        assertThat((double) CodeLight.redExcess(light) / CodeLight.ONE).isCloseTo(excess, within(CLOSE + 1e-8));
    }

    /** What is told of a colour by three whole numbers is that colour. */
    @ParameterizedTest
    @CsvSource({"000000", "ffffff", "ff0000", "12c4f0", "dc143c", "0000ff"})
    void goesBackToLinearLight(String hex) {
        byte[] rgb = rgb(hex);
        double[] exact = new double[3];
        double[] back = new double[3];
        CodeLight.linear(rgb, 1, exact);

        long light = CodeLight.of(rgb, 1);
        int red = (int) CodeLight.red(rgb, 1, 1);
        CodeLight.linear(CodeLight.luminance(light), CodeLight.redExcess(light), red, back);

        for (int i = 0; i < 3; i++) {
            assertThat(back[i]).isCloseTo(exact[i], within(4 * CLOSE));
        }
    }

    /** No code but 0 is dark: that a sum is 0 says that nothing is lit. */
    @Test
    void knowsTheLeastLight() {
        for (int channel = 0; channel < 3; channel++) {
            byte[] rgb = new byte[3];
            rgb[channel] = 1;
            assertThat(CodeLight.luminance(CodeLight.of(rgb, 0))).isPositive();
        }
    }

    private static byte[] rgb(String hex) {
        int code = Integer.parseInt(hex, 16);
        return new byte[] {77, (byte) (code >> 16), (byte) (code >> 8), (byte) code};
    }
}
