package org.duskloom.engine.wire;

/**
 * Bytes of a port that lie side by side in one universe.
 *
 * @param universe the universe, 1 to {@value #LAST_UNIVERSE}
 * @param firstSlot the slot of the first byte, from 1
 * @param firstByte the first byte, from 0 within the port
 * @param byteCount how many, 1 to {@value #SLOTS}
 */
public record UniverseRun(int universe, int firstSlot, int firstByte, int byteCount) {
    /** How many slots a universe has: ANSI E1.11-2008 and ANSI E1.31-2018. */
    public static final int SLOTS = 512;

    /** The last universe of ANSI E1.31-2018; the first is 1. */
    public static final int LAST_UNIVERSE = 63_999;

    /** The slot of the last byte. */
    public int lastSlot() {
        return firstSlot + byteCount - 1;
    }

    /** Whether it has a slot that the other has too. */
    boolean meets(UniverseRun other) {
        return universe == other.universe && firstSlot <= other.lastSlot() && other.firstSlot <= lastSlot();
    }
}
