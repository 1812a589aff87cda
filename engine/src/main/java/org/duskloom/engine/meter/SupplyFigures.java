package org.duskloom.engine.meter;

import java.util.Objects;
import org.duskloom.engine.wire.Supply;

/**
 * What a supply gives over a run: the sum of its ports.
 *
 * @param supply which
 * @param amps its current
 * @param idleAmps what it gives in the dark
 * @param fullAmps what it gives with every colour of every pixel full on, whatever caps them
 * @param wattHours the energy of the run
 */
public record SupplyFigures(Supply supply, AmpFigures amps, double idleAmps, double fullAmps, double wattHours) {
    public SupplyFigures {
        Objects.requireNonNull(supply, "supply");
        Objects.requireNonNull(amps, "amps");
    }

    /** How much of its amperes the peak takes; above its share it is too much. */
    public double peakShare() {
        return amps.peak() / supply.amps();
    }

    /** How much more it could give within its share; below 0 where it gives too much. */
    public double marginAmps() {
        return supply.allowedAmps() - amps.peak();
    }
}
