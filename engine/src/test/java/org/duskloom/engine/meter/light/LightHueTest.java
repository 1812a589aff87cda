package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.duskloom.engine.meter.light.LightHue.BLUE;
import static org.duskloom.engine.meter.light.LightHue.CYAN;
import static org.duskloom.engine.meter.light.LightHue.GREEN;
import static org.duskloom.engine.meter.light.LightHue.ORANGE;
import static org.duskloom.engine.meter.light.LightHue.PINK;
import static org.duskloom.engine.meter.light.LightHue.RED;
import static org.duskloom.engine.meter.light.LightHue.VIOLET;
import static org.duskloom.engine.meter.light.LightHue.WHITE;
import static org.duskloom.engine.meter.light.LightHue.YELLOW;

import java.awt.Color;
import java.util.Map;
import java.util.NavigableMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of colours, by hues as the Java class library works them out ({@code java.awt.Color.RGBtoHSB}). */
class LightHueTest {
    /** From which hue on, in degrees, a name holds: choices of our own. */
    private static final NavigableMap<Double, LightHue> FROM_DEGREES = new TreeMap<>(Map.of(
            0.0, RED, 15.0, ORANGE, 45.0, YELLOW, 70.0, GREEN, 165.0, CYAN, 200.0, BLUE, 255.0, VIOLET, 290.0, PINK,
            345.0, RED));

    @Test
    void namesByHue() {
        SplittableRandom random = new SplittableRandom(3);
        int looked = 0;
        for (int i = 0; i < 20_000; i++) {
            int r = random.nextInt(256);
            int g = random.nextInt(256);
            int b = random.nextInt(256);
            float[] hsb = Color.RGBtoHSB(r, g, b, null);
            double degrees = 360.0 * hsb[0];
            if (isFarFromEdges(degrees, hsb[1])) {
                LightHue expected =
                        hsb[1] < 0.2 ? WHITE : FROM_DEGREES.floorEntry(degrees).getValue();
                assertThat(LightHue.of(r, g, b)).as("%d %d %d", r, g, b).isEqualTo(expected);
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(19_000);
    }

    /** Whole degrees, which codes with a spread of 60 have exactly: an edge belongs to what begins there. */
    @Test
    void namesEveryDegree() {
        for (int degree = 0; degree < 360; degree++) {
            int[] codes = codesOf(degree);
            assertThat(LightHue.of(codes[0], codes[1], codes[2]))
                    .as("%d degrees", degree)
                    .isEqualTo(FROM_DEGREES.floorEntry((double) degree).getValue());
        }
    }

    /** The colour of a hue with all of its saturation and codes up to 60. */
    private static int[] codesOf(int degree) {
        int[] codes = new int[3];
        int sector = degree / 60;
        int part = degree % 60;
        int most = (sector + 1) / 2 % 3;
        codes[most] = 60;
        int beside = sector % 2 == 0 ? (most + 1) % 3 : (most + 2) % 3;
        codes[beside] = sector % 2 == 0 ? part : 60 - part;
        return codes;
    }

    /** A fifth of the largest code is enough of a spread. */
    @Test
    void isWhiteWithLittleSpread() {
        assertThat(LightHue.of(200, 160, 160)).isEqualTo(RED);
        assertThat(LightHue.of(200, 161, 161)).isEqualTo(WHITE);
    }

    private static boolean isFarFromEdges(double degrees, double saturation) {
        return Math.abs(saturation - 0.2) > 1e-4
                && FROM_DEGREES.keySet().stream().allMatch(edge -> edge == 0 || Math.abs(edge - degrees) > 1e-3);
    }

    /** CSS colours as people know them. */
    @ParameterizedTest
    @CsvSource({
        "255, 165, 0, orange",
        "255, 215, 0, yellow",
        "0, 128, 0, green",
        "64, 224, 208, cyan",
        "65, 105, 225, blue",
        "138, 43, 226, violet",
        "255, 20, 147, pink",
        "220, 20, 60, red",
        "255, 99, 71, red",
        "255, 250, 240, white",
        "128, 128, 128, white"
    })
    void namesColoursThatPeopleKnow(int r, int g, int b, String word) {
        assertThat(LightHue.of(r, g, b).word()).isEqualTo(word);
    }
}
