package org.duskloom.engine.frame;

import java.util.Arrays;

/** Bytes that grow as they are made. The memory is used again for later frames. */
public final class EncodedBytes {
    private byte[] bytes = new byte[0];
    private int length;

    /** No bytes. */
    public EncodedBytes() {}

    /** The array that holds them, from its start on; another one after {@link #reserve} or {@link #put}. */
    public byte[] array() {
        return bytes;
    }

    /** How many there are. */
    public int length() {
        return length;
    }

    /**
     * Makes room for more bytes, which count as made; what they hold is not defined until they are set in {@link
     * #array}.
     *
     * @return where they start
     */
    public int reserve(int more) {
        int start = length;
        int needed = Math.addExact(length, more);
        if (needed > bytes.length) {
            int roomy = (int) Math.min(Integer.MAX_VALUE - 8L, bytes.length + (bytes.length >> 1));
            bytes = Arrays.copyOf(bytes, Math.max(needed, roomy));
        }
        length = needed;
        return start;
    }

    /** Appends bytes. */
    public void put(byte[] source, int offset, int count) {
        int start = reserve(count);
        System.arraycopy(source, offset, bytes, start, count);
    }

    /** Forgets them all. */
    public void clear() {
        length = 0;
    }
}
