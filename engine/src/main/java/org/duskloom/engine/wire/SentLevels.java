package org.duskloom.engine.wire;

import java.util.HashMap;
import java.util.Map;
import org.duskloom.engine.color.Srgb;

/**
 * What is sent for each sRGB code of one colour, as tables that ports with the same signal share.
 *
 * <p>Where a white light takes its share, the entry of a code stands in the row of the least code of the pixel, which
 * is what the white light shows: the light left is {@code decode(code) - decode(least)}. Otherwise there is only the
 * row of 0.
 */
final class SentLevels {
    /** So many bits of a level of 8-bit bytes stand behind the point. */
    static final int STEP_BITS = 24;

    private static final int CODES = 256;

    private final Map<Key, int[]> tables = new HashMap<>();
    private final double[] light = new double[CODES];

    private record Key(Signal signal, Channel channel) {}

    SentLevels() {
        for (int code = 0; code < CODES; code++) {
            light[code] = Srgb.decode(code / 255.0);
        }
    }

    /**
     * The table of a colour: at 16 bits whole numbers, 0 to 65535; at 8 bits unsigned fixed-point numbers, exact to
     * 2^-25 of a byte, and whole ones if they are not dithered.
     */
    int[] of(Signal signal, Channel channel) {
        return tables.computeIfAbsent(new Key(signal, channel), key -> table(signal, channel));
    }

    private int[] table(Signal signal, Channel channel) {
        if (signal.bits() == 16) {
            return sent(signal, channel, 65_535);
        }
        if (signal.dither()) {
            return sent(signal, channel, 255.0 * (1 << STEP_BITS));
        }
        int[] levels = sent(signal, channel, 255);
        for (int i = 0; i < levels.length; i++) {
            levels[i] <<= STEP_BITS;
        }
        return levels;
    }

    private int[] sent(Signal signal, Channel channel, double full) {
        boolean shares = signal.colors().hasWhite() && channel != Channel.WHITE;
        int[] levels = new int[shares ? CODES * CODES : CODES];
        double factor = signal.brightness().factor(channel);
        for (int row = 0; row < levels.length / CODES; row++) {
            for (int code = row; code < CODES; code++) {
                double sent = signal.curve().sent(factor * (light[code] - light[row]));
                levels[row * CODES + code] = (int) (long) Math.floor(full * sent + 0.5);
            }
        }
        return levels;
    }
}
