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

    private static final double WHITE_SATURATION = 0.2;
    private static final double DEGREES_OF_SECTOR = 60;
    private static final LightHue[] HUES = {RED, ORANGE, YELLOW, GREEN, CYAN, BLUE, VIOLET, PINK};

    /** Where each of them ends, in degrees; what is beyond is red again. */
    private static final int[] ENDS = {15, 45, 70, 165, 200, 255, 290, 345};

    /** The name of sRGB codes that are not all 0. */
    static LightHue of(int r, int g, int b) {
        int most = Math.max(r, Math.max(g, b));
        int spread = most - Math.min(r, Math.min(g, b));
        if (spread < WHITE_SATURATION * most) {
            return WHITE;
        }
        double sector = most == r
                ? (double) (g - b) / spread
                : most == g ? 2 + (double) (b - r) / spread : 4 + (double) (r - g) / spread;
        double degrees = (DEGREES_OF_SECTOR * sector + 360) % 360;
        for (int i = 0; i < ENDS.length; i++) {
            if (degrees < ENDS[i]) {
                return HUES[i];
            }
        }
        return RED;
    }

    /** In small letters. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
