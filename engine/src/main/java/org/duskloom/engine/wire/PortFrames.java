package org.duskloom.engine.wire;

import java.util.List;
import org.duskloom.engine.map.PixelMap;

/** The bytes of all ports, frame by frame, in arrays that stay the same. For one thread. */
public final class PortFrames {
    private final PortEncoder[] encoders;
    private final byte[][] bytes;

    /** The ports of a display on its map. */
    public PortFrames(Ports ports, PixelMap map) {
        List<Port> list = ports.ports();
        SentLevels levels = new SentLevels();
        encoders = new PortEncoder[list.size()];
        bytes = new byte[encoders.length][];
        for (int i = 0; i < encoders.length; i++) {
            encoders[i] = new PortEncoder(list.get(i), map, levels);
            bytes[i] = new byte[encoders[i].byteCount()];
        }
    }

    /**
     * Encodes one frame.
     *
     * @param frame its number in the timeline
     * @param rgb sRGB codes of all pixels of the map in wiring order
     */
    public void encode(long frame, byte[] rgb) {
        for (int i = 0; i < encoders.length; i++) {
            encoders[i].encode(frame, rgb, bytes[i], 0);
        }
    }

    /** The bytes of the port at that place; the same array every time, not to be changed. */
    public byte[] bytes(int port) {
        return bytes[port];
    }

    /** Copies what the ports put into a universe; slots that no port uses are not touched. */
    public void copy(UniverseLayout universe, byte[] packet, int firstSlotAt) {
        List<UniverseLayout.Piece> pieces = universe.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            UniverseRun run = pieces.get(i).run();
            int at = firstSlotAt + run.firstSlot() - 1;
            System.arraycopy(bytes[pieces.get(i).port()], run.firstByte(), packet, at, run.byteCount());
        }
    }
}
