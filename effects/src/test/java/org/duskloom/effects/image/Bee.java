package org.duskloom.effects.image;

import org.duskloom.effects.PngBuilder;

/**
 * Draws the bee of the garden show: an animated picture of a bee that flies to the right. Only sums and products go
 * into it, so it is the same everywhere.
 */
final class Bee {
    static final int WIDTH = 48;
    static final int HEIGHT = 36;

    /** Each pixel is looked at in this many rows and columns. */
    private static final int SAMPLES = 4;

    private static final int GOLD = 0xFFFFB400;
    private static final int BROWN = 0xFF3A1600;
    private static final int LIGHT_BROWN = 0xFFA8601C;
    private static final int WHITE = 0xFFFFFFFF;
    private static final int WING = 0xB8CFEFFF;

    /** Where the tips of the wings are, image after image: how far behind the shoulder, and how far above it. */
    private static final double[][] WING_TIPS = {{5, 17}, {13, 13}, {17, 6}, {13, 13}};

    private Bee() {}

    /** The file: 20 images a second, the wings up, half way, down, half way. */
    static byte[] file() {
        PngBuilder.Frame[] frames = new PngBuilder.Frame[WING_TIPS.length];
        for (int frame = 0; frame < frames.length; frame++) {
            frames[frame] = PngBuilder.Frame.whole(WIDTH, HEIGHT, 1, 20, image(frame));
        }
        return PngBuilder.animation(WIDTH, HEIGHT, frames);
    }

    /** The pixels of an image, {@code 0xAARRGGBB}. */
    static int[] image(int frame) {
        int[] pixels = new int[WIDTH * HEIGHT];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = pixel(i % WIDTH, i / WIDTH, WING_TIPS[frame]);
        }
        return pixels;
    }

    private static int pixel(int column, int row, double[] wing) {
        int[] sums = new int[4];
        for (int i = 0; i < SAMPLES * SAMPLES; i++) {
            int color = color(column + (i % SAMPLES + 0.5) / SAMPLES, row + (i / SAMPLES + 0.5) / SAMPLES, wing);
            int alpha = color >>> 24;
            sums[0] += alpha;
            sums[1] += alpha * (color >> 16 & 255);
            sums[2] += alpha * (color >> 8 & 255);
            sums[3] += alpha * (color & 255);
        }
        int alpha = sums[0] / (SAMPLES * SAMPLES);
        return alpha == 0 ? 0 : alpha << 24 | sums[1] / sums[0] << 16 | sums[2] / sums[0] << 8 | sums[3] / sums[0];
    }

    private static int color(double x, double y, double[] wing) {
        if (inEllipse(x - 40.5, y - 21, 1.6, 2)) {
            return WHITE;
        }
        if (isWing(x - 24, y - 17, wing[0], wing[1]) || isWing(x - 28, y - 17, wing[0] - 4, wing[1])) {
            return WING;
        }
        if (inEllipse(x - 38, y - 22.5, 6, 6) || isFeeler(x - 41, y - 18) || isFeeler(x - 36, y - 17)) {
            return LIGHT_BROWN;
        }
        if (inEllipse(x - 21, y - 25, 16, 9)) {
            return Math.floorMod((int) Math.floor((x - 4) / 7.5), 2) == 0 ? GOLD : BROWN;
        }
        return x > 1 && Math.abs(y - 25) < (x - 1) * 0.45 && x < 8 ? LIGHT_BROWN : 0;
    }

    private static boolean inEllipse(double x, double y, double radiusX, double radiusY) {
        return x * x / (radiusX * radiusX) + y * y / (radiusY * radiusY) < 1;
    }

    /** An ellipse from the shoulder to the tip, half as wide as long. */
    private static boolean isWing(double x, double y, double behind, double above) {
        double length = behind * behind + above * above;
        double along = (-x * behind - y * above) / length - 0.5;
        double across = (-x * above + y * behind) / length;
        return along * along * 4 + across * across * 16 < 1;
    }

    private static boolean isFeeler(double x, double y) {
        return y < 0.5 && y > -7 && Math.abs(x + y * 0.55) < 1;
    }
}
