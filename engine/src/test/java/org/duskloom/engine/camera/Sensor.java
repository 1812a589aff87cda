package org.duskloom.engine.camera;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;
import java.util.Random;

/** Gathers light in linear levels of three colours, and makes sRGB codes of it: 1 and more is 255. */
final class Sensor {
    private static final int CODES = 1 << 16;
    /** A prime, so that rows do not repeat one below the other. */
    private static final int GRAINS = 1_000_003;

    private final int width;
    private final int height;
    private final double blur;
    private final double bloom;
    private final float[] light;
    private final float[] codes = new float[CODES + 1];
    private final float[] grain;
    private final float background;

    Sensor(int width, int height, Evening evening) {
        this.width = width;
        this.height = height;
        this.blur = evening.blur;
        this.bloom = evening.bloom;
        this.background = (float) evening.ambient;
        this.light = new float[3 * width * height];
        for (int i = 0; i <= CODES; i++) {
            codes[i] = (float) (255 * encoded((double) i / CODES) + 0.5);
        }
        Random random = new Random(evening.seed + 5);
        this.grain = new float[GRAINS];
        for (int i = 0; i < GRAINS; i++) {
            grain[i] = (float) (evening.noise * random.nextGaussian());
        }
    }

    /** The encoding of IEC 61966-2-1. */
    static double encoded(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
    }

    /** Begins a picture. */
    void darken() {
        Arrays.fill(light, background);
    }

    /** A spot with a middle of that level, and the glow round it. */
    void light(Spot spot, double[] shift, double level, double[] tint) {
        double x = spot.x() + shift[0];
        double y = spot.y() + shift[1];
        add(x, y, blur * spot.wide(), blur * spot.high(), level, tint);
        if (bloom > 0) {
            add(x, y, 6 * blur * spot.wide(), 6 * blur * spot.high(), bloom * level, tint);
        }
    }

    private void add(double x, double y, double wide, double high, double level, double[] tint) {
        double faintest = 2e-5;
        if (!(level > faintest)) {
            return;
        }
        double reach = Math.sqrt(2 * Math.log(level / faintest));
        int left = Math.max(0, (int) Math.ceil(x - reach * wide));
        int right = Math.min(width - 1, (int) Math.floor(x + reach * wide));
        int top = Math.max(0, (int) Math.ceil(y - reach * high));
        int bottom = Math.min(height - 1, (int) Math.floor(y + reach * high));
        if (left > right) {
            return;
        }
        float[] across = new float[right - left + 1];
        for (int i = 0; i < across.length; i++) {
            double off = (left + i - x) / wide;
            across[i] = (float) (level * Math.exp(-0.5 * off * off));
        }
        for (int row = top; row <= bottom; row++) {
            double off = (row - y) / high;
            double share = Math.exp(-0.5 * off * off);
            float red = (float) (share * tint[0]);
            float green = (float) (share * tint[1]);
            float blue = (float) (share * tint[2]);
            int at = 3 * (row * width + left);
            for (float value : across) {
                light[at++] += value * blue;
                light[at++] += value * green;
                light[at++] += value * red;
            }
        }
    }

    /** The picture, with noise. */
    BufferedImage read(long noiseSeed) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int grainAt = (int) Math.floorMod(noiseSeed, (long) GRAINS);
        for (int i = 0; i < bytes.length; i++) {
            float level = light[i] < 1 ? light[i] : 1;
            int code = (int) (codes[(int) (level * CODES)] + grain[grainAt]);
            bytes[i] = (byte) (code < 0 ? 0 : Math.min(code, 255));
            grainAt = grainAt + 1 < GRAINS ? grainAt + 1 : 0;
        }
        return image;
    }
}
