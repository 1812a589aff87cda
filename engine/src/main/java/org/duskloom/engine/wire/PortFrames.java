package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.List;

/** The bytes of all ports, frame by frame, in arrays that stay the same. For one thread. */
public final class PortFrames {
    private final List<PortEncoder> encoders;
    private final byte[][] bytes;

    /** The ports of a display. */
    public PortFrames(PortMap wiring) {
        this(encoders(wiring));
    }

    /** Frames of ports whose encoders other threads use too. */
    public PortFrames(List<PortEncoder> encoders) {
        this.encoders = List.copyOf(encoders);
        this.bytes = new byte[encoders.size()][];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = new byte[encoders.get(i).byteCount()];
        }
    }

    /** An encoder for each port, which any number of threads may share. */
    public static List<PortEncoder> encoders(PortMap wiring) {
        SentLevels levels = new SentLevels();
        List<PortEncoder> encoders = new ArrayList<>();
        wiring.ports().ports().forEach(port -> encoders.add(new PortEncoder(port, wiring.map(), levels)));
        return List.copyOf(encoders);
    }

    /**
     * Encodes one frame.
     *
     * @param frame its number in the timeline
     * @param rgb holds sRGB codes of all pixels of the map in wiring order
     * @param rgbOffset where they start
     */
    public void encode(long frame, byte[] rgb, int rgbOffset) {
        for (int i = 0; i < bytes.length; i++) {
            encoders.get(i).encode(frame, rgb, rgbOffset, bytes[i], 0);
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
