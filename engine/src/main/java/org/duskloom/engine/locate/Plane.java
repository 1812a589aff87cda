package org.duskloom.engine.locate;

import org.duskloom.engine.color.Srgb;

/** The brightness of all dots of a picture, as sRGB codes. Not safe for use by several threads. */
final class Plane {
    /** From this code on a dot is taken to be burnt out: sensors and JPEG leave some codes below 255. */
    static final int BURNT = 250;

    /** The light of {@link #BURNT}. */
    static final float BURNT_LIGHT = Srgb.decode(BURNT);

    final PictureSize size;
    final int width;
    final int height;
    final byte[] codes;

    Plane(PictureSize size) {
        this.size = size;
        this.width = size.width();
        this.height = size.height();
        this.codes = new byte[size.dots()];
    }

    int code(int dot) {
        return codes[dot] & 0xFF;
    }

    /** Linear light of a dot. */
    float light(int dot) {
        return Srgb.decode(codes[dot] & 0xFF);
    }

    static float light(byte code) {
        return Srgb.decode(code & 0xFF);
    }

    /** By how much light changes from one code to the next, about a level of linear light. */
    static double lightPerCode(double light) {
        int code = (int) (255 * Srgb.encode(Math.min(1, Math.max(0, light))));
        int from = Math.min(code, 254);
        return Srgb.decode(from + 1) - Srgb.decode(from);
    }

    /**
     * Linear light between the dots, by a cubic through the four nearest ones each way (E. Catmull and R. Rom, 1974).
     * Beyond the edge the picture goes on as at the edge.
     */
    float lightAt(double x, double y) {
        int left = (int) StrictMath.floor(x);
        int top = (int) StrictMath.floor(y);
        float fx = (float) (x - left);
        float fy = (float) (y - top);
        float sum = 0;
        for (int row = -1; row <= 2; row++) {
            int from = width * clamped(top + row, height);
            float across = weight(-1, fx) * light(from + clamped(left - 1, width))
                    + weight(0, fx) * light(from + clamped(left, width))
                    + weight(1, fx) * light(from + clamped(left + 1, width))
                    + weight(2, fx) * light(from + clamped(left + 2, width));
            sum += weight(row, fy) * across;
        }
        return sum;
    }

    private static int clamped(int at, int size) {
        return at < 0 ? 0 : Math.min(at, size - 1);
    }

    private static float weight(int tap, float f) {
        return switch (tap) {
            case -1 -> 0.5f * f * (-1 + f * (2 - f));
            case 0 -> 1 + 0.5f * f * f * (-5 + 3 * f);
            case 1 -> 0.5f * f * (1 + f * (4 - 3 * f));
            default -> 0.5f * f * f * (f - 1);
        };
    }
}
