package org.duskloom.engine.packet;

import java.nio.ByteBuffer;

/**
 * The synchronization packet, on which receivers show what they hold (ANSI E1.31-2018, Table 4-1 and clause 6.3). One
 * object serves for all frames.
 */
public final class SyncPacket {
    private static final int LENGTH = 49;
    private static final int ROOT_VECTOR = 8;
    private static final int FRAMING_VECTOR = 1;
    private static final int SEQUENCE_AT = 44;

    private final byte[] bytes = new byte[LENGTH];

    /**
     * A packet with sequence number 0.
     *
     * @throws IllegalArgumentException if the source has no synchronization universe: clause 6.3.3.1
     */
    public SyncPacket(StreamSource source) {
        if (source.syncUniverse() == 0) {
            throw new IllegalArgumentException("synchronization universe 0");
        }
        ByteBuffer packet = ByteBuffer.wrap(bytes);
        Layers.putRoot(packet, LENGTH, ROOT_VECTOR, source);
        Layers.putLength(packet, LENGTH, Layers.FRAMING_AT);
        packet.putInt(FRAMING_VECTOR).put((byte) 0).putShort((short) source.syncUniverse());
    }

    /** Sets the sequence number: the lowest eight bits of a count of these packets. */
    public void sequence(long number) {
        bytes[SEQUENCE_AT] = (byte) number;
    }

    /** The packet; the same array every time. */
    public byte[] bytes() {
        return bytes;
    }
}
