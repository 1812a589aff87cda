package org.duskloom.engine.wire;

import java.util.Objects;

/**
 * A round copper wire. Resistance is that of annealed copper, 1/58 ohm mm2/m at 20 degrees Celsius (NBS Handbook 100,
 * Copper Wire Tables, 1966), and changes by 0.00393 of that for every kelvin (from memory); stranded wire has a few per
 * cent more.
 *
 * @param name how people call its size: {@code "18 AWG"}, {@code "1.5 mm2"}
 * @param squareMillimetres the area of its cross-section, above 0
 */
public record Conductor(String name, double squareMillimetres) {
    /** The temperature at which copper is taken to be unless something else is said, in degrees Celsius. */
    public static final double USUAL_CELSIUS = 20;

    private static final double OHM_SQUARE_MILLIMETRES_PER_METRE = 1.0 / 58;
    private static final double MORE_PER_KELVIN = 0.00393;
    private static final double MILLIMETRES_OF_GAUGE_36 = 0.127;

    /**
     * @throws IllegalArgumentException if it has no thickness
     */
    public Conductor {
        Objects.requireNonNull(name, "name");
        if (!(squareMillimetres > 0)) {
            throw new IllegalArgumentException(squareMillimetres + " mm2");
        }
    }

    /** A wire of an American wire gauge: its diameter is 0.005 in times 92 to the power (36 - n)/39 (ASTM B258). */
    public static Conductor ofGauge(int awg) {
        double diameter = MILLIMETRES_OF_GAUGE_36 * StrictMath.pow(92, (36 - awg) / 39.0);
        return new Conductor(awg + " AWG", Math.PI / 4 * diameter * diameter);
    }

    /** What a metre of one wire resists, in ohms, when the copper is that warm. */
    public double ohmsPerMetre(double celsius) {
        double warmer = 1 + MORE_PER_KELVIN * (celsius - USUAL_CELSIUS);
        return OHM_SQUARE_MILLIMETRES_PER_METRE / squareMillimetres * warmer;
    }
}
