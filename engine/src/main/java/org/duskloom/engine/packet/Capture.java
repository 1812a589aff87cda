package org.duskloom.engine.packet;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.duskloom.engine.time.FrameRate;

/**
 * Capture files: pcap with stamps in nanoseconds, Ethernet frames inside, little-endian (IETF draft-ietf-opsawg-pcap).
 * A {@link DataPacket} that leaves {@link #HEADER_BYTES} before it is a whole record with its headers, written in one
 * piece.
 */
public final class Capture {
    /** How many bytes stand before a packet: the record's header and those of Ethernet, IPv4 and UDP. */
    public static final int HEADER_BYTES = 16 + UdpHeaders.LENGTH;

    /** How many bytes stand before the first record. */
    public static final int FILE_HEADER_BYTES = 24;

    private static final int RECORD_BYTES = 16;
    private static final int NANOSECOND_MAGIC = 0xA1B23C4D;
    private static final int LONGEST_PACKET = 0xFFFF;
    private static final int ETHERNET = 1;

    private Capture() {}

    /** What a file starts with. */
    public static byte[] fileHeader() {
        ByteBuffer header = ByteBuffer.allocate(FILE_HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
        header.putInt(NANOSECOND_MAGIC)
                .putShort((short) 2)
                .putShort((short) 4)
                .putInt(0)
                .putInt(0);
        return header.putInt(LONGEST_PACKET).putInt(ETHERNET).array();
    }

    /** Writes the headers that stay the same. */
    public static void address(DataPacket packet) {
        int frameBytes = UdpHeaders.LENGTH + packet.length();
        ByteBuffer.wrap(packet.bytes())
                .order(ByteOrder.LITTLE_ENDIAN)
                .position(8)
                .putInt(frameBytes)
                .putInt(frameBytes);
        UdpHeaders.put(packet.bytes(), RECORD_BYTES, packet.universe(), packet.length());
    }

    /** Sets stamp and checksum to those of a frame, once its slots and its number are in the packet. */
    public static void seal(DataPacket packet, FrameRate rate, long frame) {
        long elapsed = Math.multiplyExact(frame, (long) rate.denominator());
        long rest = elapsed % rate.numerator();
        littleEndian(packet.bytes(), 0, (int) (elapsed / rate.numerator()));
        littleEndian(packet.bytes(), 4, (int) (rest * 1_000_000_000L / rate.numerator()));
        UdpHeaders.seal(packet.bytes(), RECORD_BYTES, packet.length());
    }

    private static void littleEndian(byte[] bytes, int at, int value) {
        for (int i = 0; i < 4; i++) {
            bytes[at + i] = (byte) (value >>> 8 * i);
        }
    }
}
