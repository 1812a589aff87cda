package org.duskloom.effects.bench;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * sRGB codes by arithmetic alone, for comparison with the exact table of the engine: a polynomial of degree 6 in the
 * square root, fitted at Chebyshev nodes over the curved part of the transfer function (IEC 61966-2-1), off by up to
 * 0.057 of a code. So it rounds some values the wrong way.
 */
final class RootEncoder {
    private static final VarHandle INTS = MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);
    private static final float ROUNDER = 12_582_912f;

    /** The code at which the straight part of the function ends. */
    private static final float LINEAR_END = 10.3147f;

    private RootEncoder() {}

    /** Overwrites the planes; writes one byte beyond the last pixel. */
    static void encode(float[] red, float[] green, float[] blue, int count, byte[] rgb) {
        codes(red, count);
        codes(green, count);
        codes(blue, count);
        pack(red, green, blue, count);
        for (int i = 0, at = 0; i < count; i++, at += 3) {
            INTS.set(rgb, at, (int) red[i]);
        }
    }

    /** The codes of a plane in place, as whole floats. */
    static void codes(float[] plane, int count) {
        for (int i = 0; i < count; i++) {
            float linear = plane[i];
            float root = (float) Math.sqrt(linear);
            float curved = 704.575f + root * -188.952106f;
            curved = -1072.41357f + root * curved;
            curved = 875.535095f + root * curved;
            curved = -450.64972f + root * curved;
            curved = 397.486938f + root * curved;
            curved = -10.6016665f + root * curved;
            plane[i] = Math.max(curved, Math.min(linear * 3294.6f, LINEAR_END));
        }
        for (int i = 0; i < count; i++) {
            plane[i] = (plane[i] + ROUNDER) - ROUNDER;
        }
    }

    private static void pack(float[] red, float[] green, float[] blue, int count) {
        for (int i = 0; i < count; i++) {
            red[i] = red[i] + green[i] * 256f + blue[i] * 65_536f;
        }
    }
}
