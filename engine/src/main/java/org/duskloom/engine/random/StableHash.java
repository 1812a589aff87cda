package org.duskloom.engine.random;

import java.nio.charset.StandardCharsets;

/**
 * Draws that depend only on their keys. A key is made once, when the plan is compiled, and a draw from it costs a few
 * multiplications:
 *
 * <pre>{@code
 * long prop = StableHash.propKey(seed, cueKey, propName);
 * int pixel = StableHash.pixelKey(prop, pixelNumber);
 * float chance = StableHash.unitFloat(StableHash.draw(pixel, window));
 * }</pre>
 */
public final class StableHash {
    private static final long FNV_OFFSET_BASIS = 0xCBF29CE484222325L;
    private static final long FNV_PRIME = 0x100000001B3L;
    private static final int GOLDEN_GAMMA_32 = 0x9E3779B9;

    private StableHash() {}

    /**
     * A number for a name: FNV-1a of 64 bits over its UTF-8 bytes (G. Fowler, L. C. Noll, K.-P. Vo; IETF
     * draft-eastlake-fnv).
     */
    public static long ofName(String name) {
        long hash = FNV_OFFSET_BASIS;
        for (byte unit : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (unit & 0xFF)) * FNV_PRIME;
        }
        return hash;
    }

    /** A key for the pair of a key and a value; the order of the two matters. */
    public static long combine(long key, long value) {
        return SplitMix64.mix((key ^ SplitMix64.mix(value + SplitMix64.GOLDEN_GAMMA)) + SplitMix64.GOLDEN_GAMMA);
    }

    /**
     * The key of everything that one cue draws on one prop.
     *
     * @param timelineSeed the seed of the timeline
     * @param cueKey the cue's name, or its layer and position where it has none
     * @param propName the prop's name
     */
    public static long propKey(long timelineSeed, String cueKey, String propName) {
        return combine(combine(timelineSeed, ofName(cueKey)), ofName(propName));
    }

    /**
     * The key of everything that one cue draws on one pixel.
     *
     * @param propKey from {@link #propKey}
     * @param pixelNumber the pixel's number within the prop
     */
    public static int pixelKey(long propKey, int pixelNumber) {
        return (int) (combine(propKey, pixelNumber) >>> 32);
    }

    /**
     * 32 bits for a key and a counter, such as the number of a window of time. The result is again a key, so draws for
     * several purposes are {@code draw(draw(pixel, purpose), window)}.
     */
    public static int draw(int key, int counter) {
        return finish(key ^ finish(counter + GOLDEN_GAMMA_32));
    }

    /** The upper 24 bits as a number in [0, 1), a multiple of 2^-24. */
    public static float unitFloat(int bits) {
        return (bits >>> 8) * 0x1p-24f;
    }

    /** The upper 53 bits as a number in [0, 1), a multiple of 2^-53. */
    public static double unitDouble(long bits) {
        return (bits >>> 11) * 0x1p-53;
    }

    /** The 32-bit finaliser of MurmurHash3 (A. Appleby, public domain): a bijection that maps 0 to 0. */
    static int finish(int value) {
        int mixed = (value ^ (value >>> 16)) * 0x85EBCA6B;
        mixed = (mixed ^ (mixed >>> 13)) * 0xC2B2AE35;
        return mixed ^ (mixed >>> 16);
    }
}
