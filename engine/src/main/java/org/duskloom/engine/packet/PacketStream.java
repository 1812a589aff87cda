package org.duskloom.engine.packet;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.wire.PortEncoder;
import org.duskloom.engine.wire.PortFrames;
import org.duskloom.engine.wire.UniverseLayout;

/** The data packets of all universes of a display, filled anew for each frame in the same arrays. For one thread. */
public final class PacketStream {
    private final PortFrames frames;
    private final List<UniverseLayout> universes;
    private final List<DataPacket> packets;

    /**
     * The packets of a display.
     *
     * @param encoders of its ports; other threads may use them too
     * @param universes of its ports
     * @param source who sends
     * @param start how many bytes each array leaves before its packet
     */
    public PacketStream(List<PortEncoder> encoders, List<UniverseLayout> universes, StreamSource source, int start) {
        this.frames = new PortFrames(encoders);
        this.universes = List.copyOf(universes);
        this.packets = packets(universes, source, start);
    }

    /** Dark packets of some universes, in their order. */
    public static List<DataPacket> packets(List<UniverseLayout> universes, StreamSource source, int start) {
        List<DataPacket> packets = new ArrayList<>();
        for (UniverseLayout universe : universes) {
            packets.add(new DataPacket(source, universe.universe(), universe.slotCount(), start));
        }
        return List.copyOf(packets);
    }

    /** The packets in the order of their universes; the same objects every time. */
    public List<DataPacket> packets() {
        return packets;
    }

    /**
     * Puts a frame into the packets; their sequence numbers stay as they are.
     *
     * @param frame its number in the timeline
     * @param rgb holds sRGB codes of all pixels of the map in wiring order
     * @param rgbOffset where they start
     */
    public void fill(long frame, byte[] rgb, int rgbOffset) {
        frames.encode(frame, rgb, rgbOffset);
        for (int i = 0; i < packets.size(); i++) {
            DataPacket packet = packets.get(i);
            frames.copy(universes.get(i), packet.bytes(), packet.firstSlotAt());
        }
    }
}
