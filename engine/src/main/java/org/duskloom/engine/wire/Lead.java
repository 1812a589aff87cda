package org.duskloom.engine.wire;

import java.util.Objects;

/**
 * The cable between a supply and a pixel: two wires of one size and length, there and back.
 *
 * @param conductor each of the two
 * @param metres how long each of them is, 0 or more
 */
public record Lead(Conductor conductor, double metres) {
    public Lead {
        Objects.requireNonNull(conductor, "conductor");
    }

    /** What both wires together resist, in ohms. */
    public double ohms(double celsius) {
        return 2 * metres * conductor.ohmsPerMetre(celsius);
    }
}
