package org.duskloom.engine.report;

import java.util.List;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.DataLine;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.UniverseRun;

/**
 * How long the data of a frame take on the line of a port.
 *
 * @param port which
 * @param frameMillis with the pause after a frame
 * @param highestRate how many frames go through in a second
 * @param firstUniverse where its bytes begin
 * @param lastUniverse where they end
 */
public record PortTiming(Port port, double frameMillis, double highestRate, int firstUniverse, int lastUniverse) {
    /** The timing of a port. */
    public static PortTiming of(Port port) {
        DataLine line = port.pixelKind().line();
        int bits = port.signal().bitsPerPixel();
        List<UniverseRun> runs = port.runs();
        return new PortTiming(
                port,
                line.frameMicros(port.pixelCount(), bits) / 1000,
                line.mostFramesPerSecond(port.pixelCount(), bits),
                runs.get(0).universe(),
                runs.get(runs.size() - 1).universe());
    }

    /** Whether the data of every frame get through. */
    public boolean carries(FrameRate rate) {
        return highestRate >= (double) rate.numerator() / rate.denominator();
    }

    /** How many universes it takes. */
    public int universeCount() {
        return lastUniverse - firstUniverse + 1;
    }
}
