package org.duskloom.engine.meter;

import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.wire.Port;

/**
 * What a port draws over a run.
 *
 * @param port which
 * @param amps its current
 * @param idleAmps what it draws in the dark
 * @param fullAmps what it draws with every colour of every pixel full on, whatever caps them
 * @param volts the voltages along its line; nothing where the display does not say what wire it is or what feeds it
 */
public record PortFigures(Port port, AmpFigures amps, double idleAmps, double fullAmps, Optional<VoltFigures> volts) {
    public PortFigures {
        Objects.requireNonNull(port, "port");
        Objects.requireNonNull(amps, "amps");
    }
}
