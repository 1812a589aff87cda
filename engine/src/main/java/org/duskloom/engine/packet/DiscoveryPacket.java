package org.duskloom.engine.packet;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells which universes a source sends (ANSI E1.31-2018, clauses 4.3 and 8): every ten seconds to {@link
 * GroupAddress#DISCOVERY}.
 */
public final class DiscoveryPacket {
    /** How often it is to be sent. */
    public static final int EVERY_SECONDS = 10;

    private static final int MOST_ON_PAGE = 512;
    private static final int ROOT_VECTOR = 8;
    private static final int FRAMING_VECTOR = 2;
    private static final int LIST_AT = 112;
    private static final int LIST_VECTOR = 1;
    private static final int UNIVERSES_AT = 120;

    private DiscoveryPacket() {}

    /** The packets that list some universes, given in rising order: a page of 512 in each. */
    public static List<byte[]> of(StreamSource source, List<Integer> universes) {
        int lastPage = Math.max(0, (universes.size() - 1) / MOST_ON_PAGE);
        List<byte[]> pages = new ArrayList<>();
        for (int page = 0; page <= lastPage; page++) {
            int end = Math.min(universes.size(), (page + 1) * MOST_ON_PAGE);
            pages.add(page(source, universes.subList(page * MOST_ON_PAGE, end), page, lastPage));
        }
        return pages;
    }

    private static byte[] page(StreamSource source, List<Integer> universes, int page, int lastPage) {
        int length = UNIVERSES_AT + 2 * universes.size();
        ByteBuffer packet = ByteBuffer.allocate(length);
        Layers.putRoot(packet, length, ROOT_VECTOR, source);
        Layers.putLength(packet, length, Layers.FRAMING_AT);
        packet.putInt(FRAMING_VECTOR);
        Layers.putName(packet, source);
        packet.putInt(0);
        Layers.putLength(packet, length, LIST_AT);
        packet.putInt(LIST_VECTOR).put((byte) page).put((byte) lastPage);
        universes.forEach(universe -> packet.putShort((short) (int) universe));
        return packet.array();
    }
}
