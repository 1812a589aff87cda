package org.duskloom.effects.morph;

import java.util.Arrays;
import org.duskloom.engine.effect.Patch;

/**
 * The light of every pixel of a canvas, premultiplied. Where dots meet, each channel has the greatest of their lights:
 * the same in whatever order they come, and never more than any of them. For one thread.
 */
final class Light {
    private final float[] red;
    private final float[] green;
    private final float[] blue;
    private final float[] alpha;

    private float takenRed;
    private float takenGreen;
    private float takenBlue;
    private float takenAlpha;

    Light(int pixelCount) {
        red = new float[pixelCount];
        green = new float[pixelCount];
        blue = new float[pixelCount];
        alpha = new float[pixelCount];
    }

    void clear() {
        Arrays.fill(red, 0f);
        Arrays.fill(green, 0f);
        Arrays.fill(blue, 0f);
        Arrays.fill(alpha, 0f);
    }

    /** Takes up a colour, premultiplied. */
    void take(float ofRed, float ofGreen, float ofBlue, float ofAlpha) {
        takenRed = ofRed;
        takenGreen = ofGreen;
        takenBlue = ofBlue;
        takenAlpha = ofAlpha;
    }

    /** Lights a pixel with the colour taken up, at a level in [0, 1]. */
    void add(int pixel, float level) {
        red[pixel] = Math.max(red[pixel], level * takenRed);
        green[pixel] = Math.max(green[pixel], level * takenGreen);
        blue[pixel] = Math.max(blue[pixel], level * takenBlue);
        alpha[pixel] = Math.max(alpha[pixel], level * takenAlpha);
    }

    void paint(int firstPixel, Patch patch) {
        patch.load(red, firstPixel, patch.red);
        patch.load(green, firstPixel, patch.green);
        patch.load(blue, firstPixel, patch.blue);
        patch.load(alpha, firstPixel, patch.alpha);
    }
}
