package org.duskloom.engine.sound;

/**
 * How one sample is written.
 *
 * @param kind of number
 * @param bytes how many bytes a sample takes: 1 to 4 for whole numbers, 4 or 8 for floating point
 * @param bigEndian whether the byte that counts most comes first
 */
record SampleCoding(Kind kind, int bytes, boolean bigEndian) {
    /** Whatever is louder than this, 120 dB over full scale, is no sound. */
    private static final double MOST_MAGNITUDE = 1e6;

    /** What numbers mean. */
    enum Kind {
        /** From 0, with silence in the middle; 8 bits only. */
        UNSIGNED,
        /** Two's complement; fewer bits than the bytes hold are the upper ones. */
        SIGNED,
        /** IEEE 754 with full scale at 1. */
        FLOATING
    }

    /** Such as {@code 24-bit integers}. */
    String words() {
        return 8 * bytes + "-bit " + (kind == Kind.FLOATING ? "floating point" : "integers");
    }

    /**
     * Every so-manyth sample of some bytes.
     *
     * @param raw the bytes
     * @param at where the first sample begins
     * @param stride bytes from one to the next
     * @param into where they go, from 0 on
     * @return how many were no sound (not a number, or beyond all bounds), and are now silence
     */
    int decode(byte[] raw, int at, int stride, double[] into, int count) {
        return kind == Kind.FLOATING
                ? decodeFloating(raw, at, stride, into, count)
                : decodeWhole(raw, at, stride, into, count);
    }

    private int decodeWhole(byte[] raw, int at, int stride, double[] into, int count) {
        double unit = 1.0 / (1L << (8 * bytes - 1));
        int flip = kind == Kind.UNSIGNED ? 0x80 : 0;
        int most = bigEndian ? 0 : bytes - 1;
        int toLess = bigEndian ? 1 : -1;
        for (int i = 0, first = at + most; i < count; i++, first += stride) {
            int value = (byte) (raw[first] ^ flip);
            for (int k = 1; k < bytes; k++) {
                value = value << 8 | raw[first + k * toLess] & 0xFF;
            }
            into[i] = value * unit;
        }
        return 0;
    }

    private int decodeFloating(byte[] raw, int at, int stride, double[] into, int count) {
        int odd = 0;
        for (int i = 0; i < count; i++) {
            long bits = 0;
            for (int k = 0; k < bytes; k++) {
                int place = bigEndian ? k : bytes - 1 - k;
                bits = bits << 8 | raw[at + i * stride + place] & 0xFF;
            }
            double value = bytes == 4 ? Float.intBitsToFloat((int) bits) : Double.longBitsToDouble(bits);
            boolean sound = Math.abs(value) <= MOST_MAGNITUDE;
            into[i] = sound ? value : 0;
            odd += sound ? 0 : 1;
        }
        return odd;
    }
}
