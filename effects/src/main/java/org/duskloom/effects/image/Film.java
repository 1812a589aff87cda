package org.duskloom.effects.image;

import java.util.List;
import org.duskloom.effects.kit.area.LightImage;
import org.duskloom.effects.kit.area.Reel;
import org.duskloom.engine.color.Srgb;

/**
 * The decoded images of a file, one or more, all of one size. Immutable; the arrays must not be written to.
 *
 * @param width in pixels
 * @param height in pixels
 * @param images pixels row by row from the top, {@code 0xAARRGGBB}
 * @param seconds how long each image is seen; of no meaning if there is only one
 */
record Film(int width, int height, List<int[]> images, double[] seconds) implements Reel {

    /** A picture that does not move. */
    static Film still(int width, int height, int[] pixels) {
        return new Film(width, height, List.of(pixels), new double[] {0});
    }

    @Override
    public int count() {
        return images.size();
    }

    @Override
    public LightImage image(int index) {
        int[] pixels = images.get(index);
        float[] light = new float[pixels.length * LightImage.CHANNELS];
        for (int i = 0, at = 0; i < pixels.length; i++, at += LightImage.CHANNELS) {
            int pixel = pixels[i];
            float alpha = (pixel >>> 24) / 255f;
            light[at] = Srgb.decode(pixel >> 16 & 255) * alpha;
            light[at + 1] = Srgb.decode(pixel >> 8 & 255) * alpha;
            light[at + 2] = Srgb.decode(pixel & 255) * alpha;
            light[at + 3] = alpha;
        }
        return new LightImage(width, height, light);
    }
}
