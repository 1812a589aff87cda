package org.duskloom.engine.packet;

import java.nio.ByteBuffer;

/**
 * The headers that carry a packet over Ethernet: Ethernet II, IPv4 (RFC 791) and UDP (RFC 768), from port to port of
 * E1.31, to the group of a universe, one hop far.
 */
final class UdpHeaders {
    /** How many bytes they take before the packet. */
    static final int LENGTH = 42;

    /** Of the block that is kept for documentation (RFC 5737), so that it is nobody's. */
    private static final byte[] SOURCE_IPV4 = {(byte) 192, 0, 2, 10};

    /** Locally administered, of nobody's making. */
    private static final byte[] SOURCE_ETHERNET = {2, 0, 0, 0, 0, 1};

    private static final int IPV4_AT = 14;
    private static final int UDP_AT = 34;
    private static final int IPV4_BYTES = 20;
    private static final int UDP_BYTES = 8;
    private static final int TYPE_IPV4 = 0x0800;
    private static final int VERSION_AND_WORDS = 0x45;
    private static final int HOPS = 1;
    private static final int PROTOCOL_UDP = 17;

    private UdpHeaders() {}

    /** Writes the headers of a packet of so many bytes; the checksum of UDP stays 0. */
    static void put(byte[] bytes, int at, int universe, int packetBytes) {
        int udpBytes = UDP_BYTES + packetBytes;
        ByteBuffer headers = ByteBuffer.wrap(bytes).position(at).slice();
        headers.put(GroupAddress.ethernet(universe)).put(SOURCE_ETHERNET).putShort((short) TYPE_IPV4);
        headers.put((byte) VERSION_AND_WORDS).put((byte) 0).putShort((short) (IPV4_BYTES + udpBytes));
        headers.putInt(0).put((byte) HOPS).put((byte) PROTOCOL_UDP).putShort((short) 0);
        headers.put(SOURCE_IPV4).put(GroupAddress.ipv4(universe));
        headers.putShort(IPV4_AT + 10, (short) Checksum.of(Checksum.sum(bytes, at + IPV4_AT, IPV4_BYTES)));
        headers.putShort((short) GroupAddress.UDP_PORT).putShort((short) GroupAddress.UDP_PORT);
        headers.putShort((short) udpBytes).putShort((short) 0);
    }

    /** Sets the checksum of UDP to what fits the packet as it is now. */
    static void seal(byte[] bytes, int at, int packetBytes) {
        int checksumAt = at + UDP_AT + 6;
        int udpBytes = UDP_BYTES + packetBytes;
        bytes[checksumAt] = 0;
        bytes[checksumAt + 1] = 0;
        long pseudoHeader = Checksum.sum(bytes, at + IPV4_AT + 12, 8) + PROTOCOL_UDP + udpBytes;
        int checksum = Checksum.of(pseudoHeader + Checksum.sum(bytes, at + UDP_AT, udpBytes));
        int sent = checksum == 0 ? 0xFFFF : checksum;
        bytes[checksumAt] = (byte) (sent >>> 8);
        bytes[checksumAt + 1] = (byte) sent;
    }
}
