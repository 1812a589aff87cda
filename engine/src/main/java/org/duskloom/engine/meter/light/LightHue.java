package org.duskloom.engine.meter.light;

import java.util.Locale;

/** Coarse names for what colour a light has: by its hue as in HSL, or white where it has little of one. */
public enum LightHue {
    WHITE,
    RED,
    ORANGE,
    YELLOW,
    GREEN,
    CYAN,
    BLUE,
    VIOLET,
    PINK;

    /** What has less than this part of its most as the spread of its codes is white: a fifth. */
    private static final int WHITE_PART = 5;

    private static final int DEGREES_OF_SECTOR = 60;

    /**
     * The name of sRGB codes that are not all 0. In whole numbers, as very many are asked for: where the hue lies from
     * that of the largest code is a part of a sector, and nothing has to be divided to compare that with degrees.
     */
    static LightHue of(int r, int g, int b) {
        int most = Math.max(r, Math.max(g, b));
        int spread = most - Math.min(r, Math.min(g, b));
        if (WHITE_PART * spread < most) {
            return WHITE;
        }
        if (most == r) {
            return ofRed(DEGREES_OF_SECTOR * (g - b), spread);
        }
        return most == g ? ofGreen(DEGREES_OF_SECTOR * (b - r), spread) : ofBlue(DEGREES_OF_SECTOR * (r - g), spread);
    }

    /** By how many degrees, times the spread, it lies from 0. */
    private static LightHue ofRed(int from, int spread) {
        if (from < 15 * spread) {
            return from < -15 * spread ? PINK : RED;
        }
        return from < 45 * spread ? ORANGE : YELLOW;
    }

    /** The same from 120 degrees. */
    private static LightHue ofGreen(int from, int spread) {
        if (from < 45 * spread) {
            return from < -50 * spread ? YELLOW : GREEN;
        }
        return CYAN;
    }

    /** The same from 240 degrees. */
    private static LightHue ofBlue(int from, int spread) {
        if (from < 15 * spread) {
            return from < -40 * spread ? CYAN : BLUE;
        }
        return from < 50 * spread ? VIOLET : PINK;
    }

    /** In small letters. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
