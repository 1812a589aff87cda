package org.duskloom.engine.packet;

import java.util.List;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.UniverseLayout;

/** What a stream asks of the lines that carry it. */
public final class NetworkLoad {
    /** What Ethernet adds to a packet: 42 bytes of headers, 4 of check, 8 of preamble and 12 of gap. */
    private static final int AROUND_PACKET = UdpHeaders.LENGTH + 4 + 8 + 12;

    private static final int BREAK_AND_MARK_MICROS = 92 + 12;
    private static final int SLOT_MICROS = 44;
    private static final int SHORTEST_FRAME_MICROS = 1204;

    private NetworkLoad() {}

    /** Bits in a second on the Ethernet line, with preambles and gaps. */
    public static double bitsPerSecond(List<UniverseLayout> universes, FrameRate rate) {
        long bytes = universes.stream()
                .mapToLong(universe -> DataPacket.SLOTS_AT + universe.slotCount() + AROUND_PACKET)
                .sum();
        return 8.0 * bytes * rate.numerator() / rate.denominator();
    }

    /**
     * How many frames in a second a DMX512 line carries: 92 us of break, 12 us of mark, and 44 us for the START code
     * and each slot, but 1204 us at least (ANSI E1.11-2008).
     */
    public static double mostFramesPerSecond(int slotCount) {
        return 1e6 / Math.max(SHORTEST_FRAME_MICROS, BREAK_AND_MARK_MICROS + SLOT_MICROS * (slotCount + 1));
    }

    /** How many slots a DMX512 line carries at a rate, at most 512. */
    public static int mostSlots(FrameRate rate) {
        double micros = 1e6 * rate.denominator() / rate.numerator();
        return micros < SHORTEST_FRAME_MICROS
                ? 0
                : (int) Math.min(512, Math.floor((micros - BREAK_AND_MARK_MICROS) / SLOT_MICROS) - 1);
    }
}
