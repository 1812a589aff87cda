package org.duskloom.engine.random;

/**
 * The SplitMix64 sequence of pseudorandom numbers (G. L. Steele, D. Lea, C. H. Flood, "Fast Splittable Pseudorandom
 * Number Generators", OOPSLA 2014). For work that is done once and in order, such as a shuffle when the plan is
 * compiled; what is drawn for a frame comes from {@link StableHash}. Not safe for use by several threads.
 */
public final class SplitMix64 {
    static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

    private long state;

    /** The sequence of this seed; all 2^64 seeds are good. */
    public SplitMix64(long seed) {
        state = seed;
    }

    /** The next 64 bits. */
    public long nextLong() {
        state += GOLDEN_GAMMA;
        return mix(state);
    }

    /** The next number in [0, 1), a multiple of 2^-53. */
    public double nextDouble() {
        return StableHash.unitDouble(nextLong());
    }

    /** The sequence's output function: a bijection of the 64-bit numbers that maps 0 to 0. */
    static long mix(long value) {
        long mixed = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }
}
