package org.duskloom.engine.packet;

/** Where the packets of a universe go when they go to everybody who wants them: ANSI E1.31-2018, clause 9.3.1. */
public final class GroupAddress {
    /** The UDP port of E1.31. */
    public static final int UDP_PORT = 5568;

    /** The universe that discovery packets are sent to. */
    public static final int DISCOVERY = 64_214;

    private GroupAddress() {}

    /** The four bytes of the IPv4 group 239.255.high.low. */
    public static byte[] ipv4(int universe) {
        return new byte[] {(byte) 239, (byte) 255, (byte) (universe >>> 8), (byte) universe};
    }

    /** The six bytes of the Ethernet group: 01:00:5E and the low 23 bits of the IPv4 group (RFC 1112, section 6.4). */
    public static byte[] ethernet(int universe) {
        byte[] ipv4 = ipv4(universe);
        return new byte[] {0x01, 0x00, 0x5E, (byte) (ipv4[1] & 0x7F), ipv4[2], ipv4[3]};
    }
}
