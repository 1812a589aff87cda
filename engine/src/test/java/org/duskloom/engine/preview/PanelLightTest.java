package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.color.Srgb;
import org.junit.jupiter.api.Test;

class PanelLightTest {
    private static final double GLOW_LIMIT = 0.30;

    /** Whoever takes a colour out of the picture takes out the pixel's. */
    @Test
    void aPixelsColourStandsInItsMiddle() {
        for (int code = 0; code < 256; code += 5) {
            int colour = code << 16 | 255 - code << 8 | code / 2;
            PanelLight light = new PanelLight(40, 40, 3);
            add(light, 20.3, 20.8, colour);
            Raster sheet = new Raster(40, 40, Ink.NIGHT);
            light.develop(sheet, 0, 0);
            assertThat(sheet.colourAt(20, 20)).isEqualTo(colour);
        }
    }

    @Test
    void lightFallsOffEvenlyAllRound() {
        PanelLight light = new PanelLight(61, 61, 3);
        add(light, 30.5, 30.5, 0xFFFFFF);
        Raster sheet = new Raster(61, 61, 0);
        light.develop(sheet, 0, 0);
        int before = 256;
        for (int away = 0; away < 25; away++) {
            int right = sheet.colourAt(30 + away, 30) & 0xFF;
            assertThat(sheet.colourAt(30, 30 - away) & 0xFF).isEqualTo(right);
            assertThat(sheet.colourAt(30 - away, 30) & 0xFF).isEqualTo(right);
            assertThat(right).isLessThanOrEqualTo(before);
            before = right;
        }
        assertThat(before).isZero();
    }

    /**
     * Light adds up in linear light and is bounded: a sum of g gives L g / (L + g). Two equal lights therefore give
     * 2 L v / (L + v), where one gives v.
     */
    @Test
    void lightOfTwoPixelsAddsUp() {
        double one = betweenTwo(true, false);
        double both = betweenTwo(true, true);
        assertThat(one).isPositive();
        assertThat(both).isCloseTo(2 * GLOW_LIMIT * one / (GLOW_LIMIT + one), within(0.01));
    }

    @Test
    void neverTurnsADenseDisplayWhite() {
        PanelLight light = new PanelLight(60, 60, 1);
        for (int i = 0; i < 2000; i++) {
            light.addGlow(30, 30, 1, 1, 1);
        }
        Raster sheet = new Raster(60, 60, 0);
        light.develop(sheet, 0, 0);
        // 255 times the sRGB encoding of 0.30, which is 148.7.
        assertThat(sheet.colourAt(30, 30) & 0xFF).isBetween(140, 149);
    }

    @Test
    void glowKeepsItsHue() {
        PanelLight light = new PanelLight(40, 40, 2);
        add(light, 20, 20, 0xFF0000);
        Raster sheet = new Raster(40, 40, 0);
        light.develop(sheet, 0, 0);
        int beside = sheet.colourAt(25, 20);
        assertThat(beside >> 16).isPositive();
        assertThat(beside & 0xFFFF).isZero();
    }

    @Test
    void theBrighterOfTwoInOnePlaceIsSeen() {
        PanelLight light = new PanelLight(20, 20, 3);
        add(light, 10.5, 10.5, 0xC0C0C0);
        add(light, 10.5, 10.5, 0x303030);
        Raster sheet = new Raster(20, 20, 0);
        light.develop(sheet, 0, 0);
        assertThat(sheet.colourAt(10, 10)).isEqualTo(0xC0C0C0);
    }

    @Test
    void clearingLeavesNoTrace() {
        PanelLight light = new PanelLight(20, 20, 3);
        add(light, 10, 10, 0xFFFFFF);
        light.clear();
        Raster sheet = new Raster(20, 20, Ink.NIGHT);
        light.develop(sheet, 0, 0);
        for (int i = 0; i < 400; i++) {
            assertThat(sheet.colourAt(i % 20, i / 20)).isEqualTo(Ink.NIGHT);
        }
    }

    @Test
    void pixelsAtAndBeyondTheEdgesAreCut() {
        PanelLight light = new PanelLight(10, 10, 3);
        for (double place : new double[] {-1000, -0.01, 0, 9.99, 10, 1e6}) {
            add(light, place, 5, 0xFFFFFF);
            add(light, 5, place, 0xFFFFFF);
        }
        Raster sheet = new Raster(12, 12, 0);
        light.develop(sheet, 1, 1);
        assertThat(sheet.colourAt(1, 6)).isEqualTo(0xFFFFFF);
        assertThat(sheet.colourAt(0, 6)).isZero();
    }

    private static double betweenTwo(boolean left, boolean right) {
        PanelLight light = new PanelLight(60, 20, 3);
        if (left) {
            light.addGlow(24.5, 10.5, 1, 1, 1);
        }
        if (right) {
            light.addGlow(34.5, 10.5, 1, 1, 1);
        }
        Raster sheet = new Raster(60, 20, 0);
        light.develop(sheet, 0, 0);
        return Srgb.decode(sheet.colourAt(29, 10) & 0xFF);
    }

    private static void add(PanelLight light, double x, double y, int colour) {
        float red = Srgb.decode(colour >> 16);
        float green = Srgb.decode(colour >> 8 & 0xFF);
        float blue = Srgb.decode(colour & 0xFF);
        light.addDisc(x, y, red, green, blue);
        light.addGlow(x, y, red, green, blue);
    }
}
