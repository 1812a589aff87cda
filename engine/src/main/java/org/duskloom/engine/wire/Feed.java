package org.duskloom.engine.wire;

import java.util.Objects;
import java.util.Optional;

/**
 * A place at which a supply feeds the line of a port.
 *
 * @param port the name of the port
 * @param pixel which pixel of its chain, from 0
 * @param lead the cable that leads there; nothing where none is written, and nothing is lost on the way
 */
public record Feed(String port, int pixel, Optional<Lead> lead) {
    public Feed {
        Objects.requireNonNull(port, "port");
        Objects.requireNonNull(lead, "lead");
    }

    /** What there and back together resist, in ohms. */
    public double ohms(double celsius) {
        return lead.map(cable -> cable.ohms(celsius)).orElse(0.0);
    }
}
