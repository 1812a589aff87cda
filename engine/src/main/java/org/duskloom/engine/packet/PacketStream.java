package org.duskloom.engine.packet;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.wire.PortFrames;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.UniverseLayout;

/**
 * The data packets of all universes of a display, filled anew for each frame in the same arrays. For one thread.
 */
public final class PacketStream {
    private final PortFrames frames;
    private final List<UniverseLayout> universes;
    private final List<DataPacket> packets = new ArrayList<>();

    /**
     * The packets of a display.
     *
     * @param ports its ports, at least one
     * @param map its pixels
     * @param source who sends
     * @param start how many bytes each array leaves before its packet
     */
    public PacketStream(Ports ports, PixelMap map, StreamSource source, int start) {
        this.frames = new PortFrames(ports, map);
        this.universes = UniverseLayout.of(ports);
        for (UniverseLayout universe : universes) {
            packets.add(new DataPacket(source, universe.universe(), universe.slotCount(), start));
        }
    }

    /** The packets in rising order of their universes; the same objects every time. */
    public List<DataPacket> packets() {
        return packets;
    }

    /**
     * Puts a frame into the packets.
     *
     * @param frame its number in the timeline
     * @param sequence its number in the stream
     * @param rgb sRGB codes of all pixels of the map in wiring order
     */
    public void fill(long frame, long sequence, byte[] rgb) {
        frames.encode(frame, rgb);
        for (int i = 0; i < packets.size(); i++) {
            DataPacket packet = packets.get(i);
            packet.sequence(sequence);
            frames.copy(universes.get(i), packet.bytes(), packet.firstSlotAt());
        }
    }
}
