package org.duskloom.engine.report;

import java.util.List;
import org.duskloom.engine.packet.NetworkLoad;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.UniverseLayout;

/**
 * What the data of a show ask of their lines.
 *
 * @param ports in the order of the display
 * @param universes how many there are
 * @param bitsPerSecond of all of them as E1.31 on the Ethernet line, with preambles and gaps; at the rate of the show
 * @param fullestSlots how many slots the fullest universe has
 * @param dmxRate how many frames a second of the fullest universe a DMX512 line carries (ANSI E1.11-2008)
 * @param dmxSlots how many slots a DMX512 line carries at the rate of the show
 */
public record DataFigures(
        List<PortTiming> ports, int universes, double bitsPerSecond, int fullestSlots, double dmxRate, int dmxSlots) {
    public DataFigures {
        ports = List.copyOf(ports);
    }

    /** The data of a show on these ports. */
    public static DataFigures of(Ports ports, FrameRate rate) {
        List<UniverseLayout> universes = UniverseLayout.of(ports);
        int fullest =
                universes.stream().mapToInt(UniverseLayout::slotCount).max().orElse(0);
        return new DataFigures(
                ports.ports().stream().map(PortTiming::of).toList(),
                universes.size(),
                NetworkLoad.bitsPerSecond(universes, rate),
                fullest,
                NetworkLoad.mostFramesPerSecond(fullest),
                NetworkLoad.mostSlots(rate));
    }
}
