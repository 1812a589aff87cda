package org.duskloom.engine.film;

/**
 * Colours as video keeps them: Y, Cb and Cr of Recommendation ITU-R BT.601-7, eight bits, limited range: black is 16,
 * white 235, no colour 128. Programs that are told nothing take a video without subsampling for this.
 */
final class StudioColor {
    private static final int SCALE_BITS = 16;
    private static final int HALF = 1 << SCALE_BITS - 1;
    private static final int[] Y = weights(65.481, 128.553, 24.966);
    private static final int[] CB = weights(-37.797, -74.203, 112);
    private static final int[] CR = weights(112, -93.786, -18.214);

    private StudioColor() {}

    /**
     * Turns a picture into three planes.
     *
     * @param rgb red, green and blue of each dot, from {@code from} on
     * @param planes takes all Y, then all Cb, then all Cr, from {@code to} on
     */
    static void planes(byte[] rgb, int from, byte[] planes, int to, int dots) {
        for (int dot = 0; dot < dots; dot++) {
            int red = rgb[from + 3 * dot] & 0xFF;
            int green = rgb[from + 3 * dot + 1] & 0xFF;
            int blue = rgb[from + 3 * dot + 2] & 0xFF;
            planes[to + dot] = code(Y, 16, red, green, blue);
            planes[to + dots + dot] = code(CB, 128, red, green, blue);
            planes[to + 2 * dots + dot] = code(CR, 128, red, green, blue);
        }
    }

    private static byte code(int[] weights, int zero, int red, int green, int blue) {
        int sum = weights[0] * red + weights[1] * green + weights[2] * blue;
        return (byte) (zero + (sum + HALF >> SCALE_BITS));
    }

    /** For codes of 0 to 255 instead of 0 to 1. */
    private static int[] weights(double red, double green, double blue) {
        double scale = (1 << SCALE_BITS) / 255.0;
        return new int[] {(int) Math.rint(red * scale), (int) Math.rint(green * scale), (int) Math.rint(blue * scale)};
    }
}
