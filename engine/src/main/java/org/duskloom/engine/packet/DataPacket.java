package org.duskloom.engine.packet;

import java.nio.ByteBuffer;
import java.util.Arrays;
import org.duskloom.engine.wire.UniverseRun;

/**
 * The data packet of one universe (ANSI E1.31-2018, Tables 4-1, 4-2 and 4-3). One object serves for all frames: slots
 * and sequence number are changed in place.
 */
public final class DataPacket {
    /** Where the slots start. */
    public static final int SLOTS_AT = 126;

    private static final int ROOT_VECTOR = 4;
    private static final int FRAMING_VECTOR = 2;
    private static final int SEQUENCE_AT = 111;
    private static final int OPTIONS_AT = 112;
    private static final byte STREAM_TERMINATED = 0x40;
    private static final int PROPERTIES_AT = 115;
    private static final int SET_PROPERTY = 2;
    private static final int ADDRESS_TYPE = 0xA1;

    private final int universe;
    private final int slotCount;
    private final int start;
    private final byte[] bytes;

    /**
     * A packet of dark slots with sequence number 0.
     *
     * @param source who sends it
     * @param universe 1 to {@value UniverseRun#LAST_UNIVERSE}
     * @param slotCount 0 to {@value UniverseRun#SLOTS}
     * @param start how many bytes the array leaves before the packet, for the headers of other layers
     * @throws IllegalArgumentException if the universe or the count is out of range
     */
    public DataPacket(StreamSource source, int universe, int slotCount, int start) {
        if (universe < 1 || universe > UniverseRun.LAST_UNIVERSE || slotCount < 0 || slotCount > UniverseRun.SLOTS) {
            throw new IllegalArgumentException("universe " + universe + ", " + slotCount + " slots");
        }
        this.universe = universe;
        this.slotCount = slotCount;
        this.start = start;
        this.bytes = new byte[start + SLOTS_AT + slotCount];
        fill(ByteBuffer.wrap(bytes).position(start).slice(), source);
    }

    private void fill(ByteBuffer packet, StreamSource source) {
        int length = length();
        Layers.putRoot(packet, length, ROOT_VECTOR, source);
        Layers.putLength(packet, length, Layers.FRAMING_AT);
        packet.putInt(FRAMING_VECTOR);
        Layers.putName(packet, source);
        packet.put((byte) source.priority()).putShort((short) source.syncUniverse());
        packet.put((byte) 0).put((byte) 0).putShort((short) universe);
        Layers.putLength(packet, length, PROPERTIES_AT);
        packet.put((byte) SET_PROPERTY)
                .put((byte) ADDRESS_TYPE)
                .putShort((short) 0)
                .putShort((short) 1);
        packet.putShort((short) (1 + slotCount)).put((byte) 0);
    }

    /** Its universe. */
    public int universe() {
        return universe;
    }

    /** The array that holds the packet, the same every time. */
    public byte[] bytes() {
        return bytes;
    }

    /** Where it starts in the array. */
    public int start() {
        return start;
    }

    /** How many bytes it has. */
    public int length() {
        return SLOTS_AT + slotCount;
    }

    /** Where the first slot stands in the array. */
    public int firstSlotAt() {
        return start + SLOTS_AT;
    }

    /** Sets the sequence number: the lowest eight bits of a count of the universe's packets. */
    public void sequence(long number) {
        bytes[start + SEQUENCE_AT] = (byte) number;
    }

    /** Sets all slots to 0. */
    public void darken() {
        Arrays.fill(bytes, firstSlotAt(), firstSlotAt() + slotCount, (byte) 0);
    }

    /** Makes it one of the three that end a stream: clause 6.2.6. */
    public void terminate() {
        bytes[start + OPTIONS_AT] |= STREAM_TERMINATED;
    }
}
