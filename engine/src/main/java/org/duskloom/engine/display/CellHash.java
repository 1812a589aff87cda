package org.duskloom.engine.display;

/** Numbers for the cells of a grid without bounds. */
final class CellHash {
    private CellHash() {}

    /** A number of which all bits depend on all three. */
    static int of(long x, long y, long z) {
        long bits = x * 0x9E3779B97F4A7C15L + y;
        bits = (bits ^ bits >>> 29) * 0xBF58476D1CE4E5B9L + z;
        bits = (bits ^ bits >>> 32) * 0x94D049BB133111EBL;
        return (int) (bits >>> 32);
    }
}
