package org.duskloom.engine.meter;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.wire.Port;

/**
 * Currents and voltages of a run.
 *
 * @param supplies in the order of the display
 * @param ports in the order of the display
 */
public record PowerFigures(List<SupplyFigures> supplies, List<PortFigures> ports) {
    public PowerFigures {
        supplies = List.copyOf(supplies);
        ports = List.copyOf(ports);
    }

    /** The figures of a supply that feeds a port; nothing where none does. */
    public Optional<SupplyFigures> supplyOf(Port port) {
        return supplies.stream()
                .filter(figures -> figures.supply().feeds(port.name()))
                .findFirst();
    }
}
