package org.duskloom.engine.wire;

import java.util.Objects;

/**
 * The wire that carries current from pixel to pixel of a port: two wires of one size, there and back.
 *
 * @param conductor each of the two
 * @param segmentMetres how long one wire is from each pixel to the next, 0 or more; shared, not to be changed
 * @param measured whether these are lengths that the display says; else they come from where the pixels hang
 */
public record PowerLine(Conductor conductor, double[] segmentMetres, boolean measured) {
    public PowerLine {
        Objects.requireNonNull(conductor, "conductor");
    }

    /** What both wires of each segment together resist, in ohms. */
    public double[] segmentOhms(double celsius) {
        double[] ohms = new double[segmentMetres.length];
        for (int i = 0; i < ohms.length; i++) {
            ohms[i] = 2 * segmentMetres[i] * conductor.ohmsPerMetre(celsius);
        }
        return ohms;
    }
}
