package org.duskloom.effects.image;

/**
 * Unpacks the colour indices of a GIF image: the variable-length codes of Graphics Interchange Format, Version 89a,
 * CompuServe 1990, Appendix F, after T. A. Welch, "A Technique for High-Performance Data Compression", Computer 17(6),
 * 1984. A code stands for the indices of an earlier code and one more.
 */
final class GifCodes {
    private static final int MOST_BITS = 12;
    private static final int MOST_CODES = 1 << MOST_BITS;

    private final byte[] data;
    private final int firstBits;
    private final int clear;
    private final int end;
    private final int[] prefix = new int[MOST_CODES];
    private final byte[] last = new byte[MOST_CODES];
    private final byte[] reversed = new byte[MOST_CODES];

    private int bitAt;
    private int bits;
    private int codes;

    private GifCodes(byte[] data, int indexBits) {
        this.data = data;
        firstBits = indexBits + 1;
        clear = 1 << indexBits;
        end = clear + 1;
        for (int index = 0; index < clear; index++) {
            last[index] = (byte) index;
        }
        restart();
    }

    /** The indices of an image of so many pixels. */
    static byte[] indices(byte[] data, int indexBits, int count) throws ImageException {
        if (indexBits < 1 || indexBits >= MOST_BITS) {
            throw ImageException.damaged("an image has codes of " + indexBits + " bits, which no GIF has");
        }
        return new GifCodes(data, indexBits).indices(count);
    }

    private void restart() {
        bits = firstBits;
        codes = end + 1;
    }

    private byte[] indices(int count) throws ImageException {
        byte[] indices = new byte[count];
        int done = 0;
        int before = -1;
        while (done < count) {
            int code = nextCode();
            if (code == clear) {
                restart();
                before = -1;
                continue;
            }
            if (code == end || code > codes || code == codes && before < 0) {
                throw ImageException.damaged("the codes of an image make no sense");
            }
            done = write(code, before, indices, done);
            before = code;
        }
        return indices;
    }

    /** Writes what a code stands for, as far as there is room, and learns a new code from it. */
    private int write(int code, int before, byte[] indices, int done) {
        int length = 0;
        for (int rest = code == codes ? before : code; rest >= 0; rest = rest < clear ? -1 : prefix[rest]) {
            reversed[length++] = last[rest];
        }
        byte first = reversed[length - 1];
        int at = done;
        while (length > 0 && at < indices.length) {
            indices[at++] = reversed[--length];
        }
        if (code == codes && at < indices.length) {
            indices[at++] = first;
        }
        if (before >= 0 && codes < MOST_CODES) {
            prefix[codes] = before;
            last[codes] = first;
            codes++;
            bits = codes == 1 << bits && bits < MOST_BITS ? bits + 1 : bits;
        }
        return at;
    }

    private int nextCode() throws ImageException {
        int code = 0;
        for (int bit = 0; bit < bits; bit++, bitAt++) {
            if (bitAt >> 3 >= data.length) {
                throw ImageException.damaged("the data of an image end before its last row");
            }
            code |= (data[bitAt >> 3] >> (bitAt & 7) & 1) << bit;
        }
        return code;
    }
}
