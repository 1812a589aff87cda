package org.duskloom.engine.wire;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What pixels of one make need.
 *
 * @param name its name in the display; empty for {@link #usual}
 * @param volts for which they are made
 * @param milliamps what each colour draws while it is on, in the order of the port's colours
 * @param idleMilliamps what a pixel draws always
 * @param leastVolts below this a pixel is not promised to work; nothing where that is not known
 * @param line how fast data run through them
 * @param assumed the figures that nobody wrote, in words; they are common practice and have no source
 */
public record PixelKind(
        String name,
        double volts,
        List<Double> milliamps,
        double idleMilliamps,
        OptionalDouble leastVolts,
        DataLine line,
        List<String> assumed) {
    /** What a pixel draws always where nothing is written: common practice, no source. */
    public static final double USUAL_IDLE_MILLIAMPS = 1;

    private static final double USUAL_VOLTS = 5;
    private static final double USUAL_MILLIAMPS = 20;

    public PixelKind {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(leastVolts, "leastVolts");
        Objects.requireNonNull(line, "line");
        milliamps = List.copyOf(milliamps);
        assumed = List.copyOf(assumed);
    }

    /** The pixels of a port that does not say what they are: every figure is common practice, without a source. */
    public static PixelKind usual(int colors) {
        return new PixelKind(
                "",
                USUAL_VOLTS,
                Collections.nCopies(colors, USUAL_MILLIAMPS),
                USUAL_IDLE_MILLIAMPS,
                OptionalDouble.empty(),
                DataLine.USUAL,
                List.of("5 V", "20 mA a colour", "1 mA idle", "800 kbit/s", "280 us between frames"));
    }

    /** What a pixel draws with all colours on, in amperes. */
    public double fullAmps() {
        return (idleMilliamps
                        + milliamps.stream().mapToDouble(Double::doubleValue).sum())
                / 1000;
    }
}
