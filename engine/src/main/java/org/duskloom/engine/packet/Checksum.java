package org.duskloom.engine.packet;

/** The checksum of the Internet protocols: RFC 1071. */
final class Checksum {
    private Checksum() {}

    /** The sum of 16-bit big-endian words; an odd last byte counts as if a 0 followed. Sums may be added. */
    static long sum(byte[] bytes, int from, int count) {
        long even = 0;
        long odd = 0;
        int endOfPairs = from + (count & -2);
        for (int i = from; i < endOfPairs; i += 2) {
            even += bytes[i] & 0xFF;
            odd += bytes[i + 1] & 0xFF;
        }
        if ((count & 1) != 0) {
            even += bytes[endOfPairs] & 0xFF;
        }
        return (even << 8) + odd;
    }

    /** The one's complement of the one's complement sum, 16 bits. */
    static int of(long sum) {
        long folded = sum;
        while (folded >>> 16 != 0) {
            folded = (folded & 0xFFFF) + (folded >>> 16);
        }
        return (int) ~folded & 0xFFFF;
    }
}
