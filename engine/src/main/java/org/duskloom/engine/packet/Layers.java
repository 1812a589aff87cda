package org.duskloom.engine.packet;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Writes the layers that packets of ANSI E1.31-2018 have in common. Numbers are big-endian. */
final class Layers {
    /** Where the framing layer starts: after preamble, identifier, root flags, root vector and CID. */
    static final int FRAMING_AT = 38;

    private static final int ROOT_AT = 16;
    private static final int FLAGS = 0x7000;
    private static final byte[] PREAMBLE = HexFormat.of().parseHex("00100000");
    private static final byte[] IDENTIFIER = "ASC-E1.17\0\0\0".getBytes(StandardCharsets.US_ASCII);

    private Layers() {}

    /** Everything before the framing layer. */
    static void putRoot(ByteBuffer packet, int packetBytes, int vector, StreamSource source) {
        packet.put(PREAMBLE).put(IDENTIFIER);
        putLength(packet, packetBytes, ROOT_AT);
        packet.putInt(vector);
        packet.putLong(source.cid().getMostSignificantBits());
        packet.putLong(source.cid().getLeastSignificantBits());
    }

    /** Flags and length of a layer that starts here and goes on to the packet's end. */
    static void putLength(ByteBuffer packet, int packetBytes, int layerAt) {
        packet.putShort((short) (FLAGS | packetBytes - layerAt));
    }

    /** The source's name in 64 bytes. */
    static void putName(ByteBuffer packet, StreamSource source) {
        byte[] field = new byte[StreamSource.NAME_BYTES + 1];
        byte[] name = source.nameBytes();
        System.arraycopy(name, 0, field, 0, name.length);
        packet.put(field);
    }
}
